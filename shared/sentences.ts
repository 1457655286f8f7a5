// What a result says in words at first sight: the finding, and the headings and summaries of its two figures. What is
// said in figures that are fetched later is imported from its own file, or it would come with the first load.
export { findingOf, limitWords, plainFinding } from './sentences/bench.ts';
export { paceSaid } from './sentences/pace.ts';
export { reheatFinding, sectionFinding } from './sentences/figures.ts';
export type { FigureWords, Part, Sentence } from './sentences/sentence.ts';
export { plain } from './sentences/sentence.ts';
