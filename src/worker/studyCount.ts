/** How many studies there are, known before they are fetched. */
export const STUDY_COUNT = 6;
