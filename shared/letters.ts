/** What the variants of a bench are called, in their order. */
export const letters = ['A', 'B', 'C', 'D'] as const;
export type Letter = (typeof letters)[number];

/** How many variants a bench can hold. */
export const mostVariants = letters.length;
