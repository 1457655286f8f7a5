import { duration, figure, percent, shown } from '../format.ts';
import { fieldAt } from '../fields.ts';
import type { Spread, UnknownKey } from '../spread.ts';
import type { Seconds } from '../units.ts';
import { type UnknownRange, unknownsOf } from '../unknowns.ts';
import type { FieldPath, Variant } from '../variant.ts';
import { type FigureWords, type Sentence, say } from './sentence.ts';

/** What the unknowns leave open of the answer, in one sentence. */
export function spreadSentence(spread: Spread): string {
  if (spread.firstOrder.length === 0 && spread.of === 1) {
    return 'Nothing is set as uncertain, so the time stands as it is.';
  }
  const matters = mattersWords(spread);
  return `With what is not known for certain: ${bandWords(spread)}${matters === '' ? '' : `; ${matters}`}.`;
}

/** What the figure of the spread says. @param present  the recovery time as set, s */
export function spreadFinding(spread: Spread, present: Seconds | null): FigureWords {
  const { reached, runs, of, variant } = spread;
  const asSet =
    present === null
      ? `as set the stat is not satisfied within ${end(variant)}`
      : `as set it is ${time(present, spread)}`;
  if (of === 1) {
    return {
      heading: say`Nothing is set as uncertain: 1 run says it all, and ${asSet}.`,
      summary: [say`Give a range to what is not known, and the time gets a band.`],
    };
  }
  if (reached === 0) {
    return {
      heading: say`In none of ${figure(runs, 0)} cases is the stat satisfied within ${end(variant)}.`,
      summary: [say`Nothing that is set as uncertain changes that.`],
    };
  }
  const matters = mattersWords(spread);
  return {
    heading: say`The reheat takes ${bandWords(spread)}${matters === '' ? '' : `; ${matters}`}.`,
    summary: [say`${capital(countWords(spread))}; ${asSet}.`, unexplainedWords(spread)],
  };
}

/** How much of the scatter no unknown explains alone. */
function unexplainedWords({ firstOrder, runs }: Spread): Sentence {
  if (firstOrder.length === 0) return say`All take equally long.`;
  const alone = firstOrder.reduce((sum, { share }) => sum + share, 0);
  const left = Math.max(0, 1 - alone);
  return left < 0.005
    ? say`Each by itself, the unknowns explain all of the scatter.`
    : say`Each by itself, the unknowns explain ${percent(1 - left)} of the scatter; the other ${percent(left)} are several acting together, and chance in ${figure(runs, 0)} runs.`;
}

/** `all 256 cases get there`, `243 of 256 cases get there within 2 h`, or so many of those done so far. */
export function countWords({ runs, reached, of, variant }: Spread): string {
  const cases = runs < of ? `the first ${figure(runs, 0)} of ${figure(of, 0)} cases` : '';
  if (reached === runs) {
    return cases === '' ? `all ${figure(runs, 0)} cases get there` : `all of ${cases} get there`;
  }
  const all = cases === '' ? `${figure(runs, 0)} cases` : cases;
  return `${figure(reached, 0)} of ${all} get there within ${end(variant)}`;
}

/** The middle eight of ten cases, and half of them. */
function bandWords(spread: Spread): string {
  const { low, median, high, runs, variant } = spread;
  if (low === null) {
    return spread.reached === 0
      ? `not within ${end(variant)} in any of ${figure(runs, 0)} cases`
      : `within ${end(variant)} in only ${figure(spread.reached, 0)} of ${figure(runs, 0)} cases`;
  }
  const half =
    median === null
      ? `more than half of them not within ${end(variant)}`
      : `half of them under ${time(median, spread)}`;
  if (high === null) {
    return `${time(low, spread)} or more in 9 of 10 cases, ${half}${median === null ? '' : `, more than 1 in 10 not within ${end(variant)}`}`;
  }
  const [from, to] = [time(low, spread), time(high, spread)];
  return from === to
    ? `${from} in 8 of 10 cases`
    : `${sharedUnit(from, to)} to ${to} in 8 of 10 cases, ${half}`;
}

/** What matters most: one, or two that explain about as much. */
function mattersWords({ firstOrder }: Spread): string {
  const [first, second] = firstOrder;
  if (first === undefined || first.share < LITTLE) return '';
  if (second !== undefined && first.share - second.share < ABOUT_AS_MUCH) {
    return `${unknownNames[first.key]} and ${unknownNames[second.key]} matter most`;
  }
  return `${unknownNames[first.key]} matters most`;
}

/** What each of the unknowns is called inside a sentence. */
export const unknownNames: Readonly<Record<UnknownKey, string>> = {
  coil: 'the coil',
  scale: 'the scale',
  primaryFlow: 'the primary flow',
  cold: 'the incoming cold',
  lag: 'the lag of the sensor',
};

/** An unknown with its range and the part of the scatter it explains. */
export interface UnknownRow {
  readonly key: UnknownKey;
  readonly name: string;
  /** One for each thing it moves: `0.5 to 2.0 mm`, and the setting that says so. */
  readonly ranges: readonly { readonly text: string; readonly setting: FieldPath }[];
  /** 0 to 1; null where nothing scatters. */
  readonly share: number | null;
}

/** The unknowns, the one that explains most first. */
export function unknownRows({ variant, firstOrder }: Spread): readonly UnknownRow[] {
  const ranges = unknownsOf(variant);
  const known = [...new Set(ranges.map(({ key }) => key))];
  const keys = firstOrder.length === 0 ? known : firstOrder.map(({ key }) => key);
  return keys.map((key) => ({
    key,
    name: labels[key],
    ranges: ranges
      .filter((range) => range.key === key)
      .map((range) => ({ text: rangeWords(range), setting: range.setting })),
    share: firstOrder.find((one) => one.key === key)?.share ?? null,
  }));
}

function rangeWords({ key, about, low, high }: UnknownRange): string {
  const field = about === null ? null : fieldAt(about);
  if (field?.kind !== 'number') {
    return `${figure(100 * low, 0)} to ${percent(high)} of what ${key === 'coil' ? 'its data give' : 'the network gives'}`;
  }
  const text = (value: number) => shown(value, field.unit);
  const words = `${sharedUnit(text(low), text(high))} to ${text(high)}`;
  const isSecond = about?.startsWith('secondCoil.') ?? false;
  return isSecond ? `second coil ${words}` : words;
}

const labels: Readonly<Record<UnknownKey, string>> = {
  coil: 'Coil',
  scale: 'Scale',
  primaryFlow: 'Primary flow',
  cold: 'Incoming cold',
  lag: 'Sensor lag',
};

/** Whole minutes where the band is wide enough for them. */
function time(seconds: Seconds, { low, high }: Spread): string {
  const isWide = low !== null && (high === null || high - low >= WIDE);
  return duration(seconds, isWide ? 0 : 1);
}

/** A number without its unit where the next has the same. */
function sharedUnit(text: string, next: string): string {
  const [number, ...unit] = text.split('\u00a0');
  const [, ...other] = next.split('\u00a0');
  return unit.length === 1 && unit[0] === other.join('\u00a0') ? number : text;
}

function capital(text: string): string {
  return text[0].toUpperCase() + text.slice(1);
}

function end({ run }: Variant): string {
  return duration(run.duration, 0);
}

const WIDE = 300; // s
const ABOUT_AS_MUCH = 0.1;
const LITTLE = 0.05;
