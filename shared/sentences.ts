// What a result says in words: the bench's finding, and the heading and summary of each figure.
export { findingOf, limitWords, plainFinding } from './sentences/bench.ts';
export { paceSaid } from './sentences/pace.ts';
export { reheatFinding, sectionFinding } from './sentences/figures.ts';
export { plantFinding } from './sentences/plant.ts';
export type { FigureWords, Part, Sentence } from './sentences/sentence.ts';
export { plain } from './sentences/sentence.ts';
export { placementFinding } from './sentences/placement.ts';
export { arrangementFinding, differentialFinding } from './sentences/studies.ts';
