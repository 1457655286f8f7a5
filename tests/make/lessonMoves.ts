import { celsius, measureText, settingText, shown } from '../../shared/format.ts';
import { lessonNamed, moveVariants } from '../../shared/lessons.ts';
import { type Answer, type Move, plainPassage } from '../../shared/lessons/lesson.ts';
import type { Mark, Measures, Quantity, Result } from '../../shared/result.ts';
import { settingOf } from '../../shared/variant.ts';
import type { FieldPath } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';

/** A move, the option that comes true, and the numbers of its sentences in order. */
export type Expected = readonly [
  lesson: string,
  move: string,
  option: string,
  numbers: (before: Result, after: Result) => readonly string[],
];

/** What a move of a lesson computes; each is run once. */
export function played(lessonKey: string, moveKey: string): Played {
  const key = `${lessonKey} ${moveKey}`;
  const found = runs.get(key) ?? run(lessonKey, moveKey);
  runs.set(key, found);
  return found;
}

interface Played {
  readonly move: Move;
  readonly before: Result;
  readonly after: Result;
  readonly answer: Answer;
}

const runs = new Map<string, Played>();

function run(lessonKey: string, moveKey: string): Played {
  const lesson = lessonNamed(lessonKey);
  const move = lesson?.moves.find(({ key }) => key === moveKey);
  if (!lesson || !move) throw new Error(`no ${moveKey} in ${lessonKey}; expected one`);
  const variants = moveVariants(lesson, move);
  const before = simulateToEnd(variants.before);
  const after = simulateToEnd(variants.after);
  return { move, before, after, answer: move.answer(before, after) };
}

export const wordsOf = ({ passages, look }: Answer, { variant }: Result): string =>
  [...passages, look.passage].map((passage) => plainPassage(passage, variant)).join(' ');

/** Every number of a text, in order. */
export const numbersIn = (text: string): string[] => text.match(/−?\d+(?:\.\d+)?/g) ?? [];

// a second way to what the sentences say, straight from the samples and the marks
export const marked = ({ marks }: Result, kind: Mark['kind'], which = 0) =>
  marks.filter((mark) => mark.kind === kind).at(which)?.at ?? Number.NaN;
export const end = ({ trace, outcome }: Result, quantity: Quantity) => {
  if (trace.time[trace.samples - 1] !== outcome.at)
    throw new Error('the trace ends before the run');
  return trace.of[quantity][trace.samples - 1];
};
/** Straight between the two samples round a moment. */
export function between({ trace }: Result, quantity: Quantity, at: number): number {
  const column = trace.of[quantity];
  const next = trace.time.findIndex((time) => time > at);
  if (next < 0) return column[trace.samples - 1];
  const share = (at - trace.time[next - 1]) / (trace.time[next] - trace.time[next - 1]);
  return column[next - 1] * (1 - share) + column[next] * share;
}
/** Of all layers of the sample at or before a moment. */
export function mean({ trace }: Result, at: number): number {
  const sample = trace.time.findLastIndex((time) => time <= at);
  const layers = trace.layerTemperature.subarray(
    sample * trace.layers,
    (sample + 1) * trace.layers,
  );
  return layers.reduce((sum, T) => sum + T / trace.layers, 0);
}
export const minutesApart = (one: number, other: number) =>
  Math.abs(Number((one / 60).toFixed(1)) - Number((other / 60).toFixed(1))).toFixed(1);
export const set = ({ variant }: Result, path: FieldPath) =>
  settingText(path, settingOf(variant, path));
export const m = ({ measures }: Result, key: keyof Measures) => measureText(key, measures[key]);
export const lost = ({ balance }: Result) => shown(balance.lostByCylinder, 'kilowattHour', 2);
export const recovery = (run: Result) => marked(run, 'statSatisfied');
export const cutIn = ({ variant: { stat } }: Result) => celsius(stat.setPoint - stat.differential);
export const half = (run: Result) => Math.round(recovery(run) / 120) * 60;
