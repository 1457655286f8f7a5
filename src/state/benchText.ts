// What a bench needs to be kept and read, fetched as one piece.
export { benchFromText, benchToText } from '../../shared/codec/bench.ts';
export { problemsOf } from '../../shared/problems.ts';
