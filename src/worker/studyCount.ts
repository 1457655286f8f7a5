/** How many studies there are, known before they are fetched. */
export const STUDY_COUNT = 6;
/** The same of those that say why. */
export const WHY_COUNT = 3;
