import { type Asked, askedRow } from '../asked.ts';
import { fieldAt } from '../fields.ts';
import { figure, plainText, settingText, shown, spoken } from '../format.ts';
import { type Grid, overridesAt } from '../grid.ts';
import type { Gap } from '../point.ts';
import { fromSI } from '../units.ts';
import type { FieldPath } from '../variant.ts';
import { capital, type FigureWords, type Sentence, say } from './sentence.ts';

/** A map, or a line, as far as it is computed. */
export interface MapData {
  readonly grid: Grid;
  readonly measure: Asked;
  /** [place] SI; NaN where there is none, or nothing is known yet */
  readonly values: ArrayLike<number>;
  readonly gaps: readonly (Gap | null)[];
  readonly done: number;
  readonly of: number;
}

/** What a map says: from where to where the measure goes, and what has no value. */
export function mapFinding(map: MapData): FigureWords {
  const { grid, measure, values, done, of } = map;
  const { label } = askedRow(measure);
  const ends = endsOf(values);
  const count = done < of ? `the first ${figure(done, 0)} of ${figure(of, 0)}` : figure(of, 0);
  if (done === 0) {
    return {
      heading: say`${capital(label)} by ${axisNames(grid)}: no point is computed yet.`,
      summary: [say`0 of ${figure(of, 0)} points are computed.`],
    };
  }
  if (ends === null) {
    return {
      heading: say`None of ${count} points has a value for ${label}.`,
      summary: [...gapWords(map)],
    };
  }
  const { least, most } = ends;
  const summary = [pointWords(map), ...gapWords(map)];
  const [low, high] = [measured(measure, values[least]), measured(measure, values[most])];
  if (low === high) {
    return {
      heading: say`${capital(label)} is ${low} at each of ${count} points.`,
      summary,
    };
  }
  return {
    heading: say`${capital(label)} goes from ${low} at ${placeWords(grid, least)} to ${high} at ${placeWords(grid, most)}.`,
    summary,
  };
}

function pointWords({ grid, done, of }: MapData): Sentence {
  const between = grid.axes.length > 1 ? 'lines are drawn straight' : 'the line is straight';
  return done < of
    ? say`${figure(done, 0)} of ${figure(of, 0)} points are computed; between them ${between}.`
    : say`All ${figure(of, 0)} points are computed; between them ${between}.`;
}

/** What has no value, kind by kind: how many points, and what is said of the first. */
function gapWords({ gaps, measure }: MapData): Sentence[] {
  const parts = gapKinds.flatMap((kind) => {
    const found = gaps.filter((gap) => gap?.kind === kind);
    const [first] = found;
    if (!first) return [];
    const points = found.length === 1 ? 'point' : 'points';
    return [
      `${capital(gapName(kind, measure))} at ${figure(found.length, 0)} ${points}. The first: ${first.sentences[0] ?? ''}`,
    ];
  });
  return parts.length === 0 ? [] : [say`${parts.join(' ')}`];
}

/** In the order in which they are told. */
export const gapKinds: readonly Gap['kind'][] = ['notReached', 'endedEarly', 'notPossible'];

/** A word or two for points without a value. */
export function gapName(kind: Gap['kind'], measure: Asked): string {
  if (kind === 'endedEarly') return 'ended early';
  if (kind === 'notPossible') return 'not possible';
  return satisfied.has(measure) ? 'not satisfied' : 'no value';
}

/** A value of a measure with its unit. @param value  SI */
export function measured(measure: Asked, value: number | null): string {
  const { unit, digits } = askedRow(measure);
  return shown(value, unit, digits);
}

/** A value of a measure, or why there is none. @param value  SI */
export function placeValueText(measure: Asked, value: number | null, gap: Gap | null): string {
  if (value !== null && Number.isFinite(value)) return measured(measure, value);
  if (gap === null) return 'not computed';
  return `${gapName(gap.kind, measure)}. ${gap.sentences.join(' ')}`;
}

/** The settings of a place: `coil area 0.85 m² and flow target for hot water 70 °C`. */
export function placeWords(grid: Grid, place: number): string {
  return placeText([...overridesAt(grid, place)].reverse());
}

/** Settings with their values, in a sentence. */
export function placeText(settings: readonly (readonly [FieldPath, number | string])[]): string {
  return settings
    .map(([path, value]) => `${axisName(path)} ${axisText(path, value)}`)
    .join(' and ');
}

const axisNames = ({ axes }: Grid) =>
  axes
    .map(({ path }) => axisName(path))
    .reverse()
    .join(' and ');

/** The label of a setting inside a sentence. */
export function axisName(path: FieldPath): string {
  const { label } = fieldAt(path);
  return label.slice(0, 1).toLowerCase() + label.slice(1);
}

/** A value on an axis with its unit, to a tenth of the step of its setting. @param value  SI, or a choice */
export function axisText(path: FieldPath, value: number | string): string {
  const field = fieldAt(path);
  if (field.kind === 'choice') return settingText(path, value);
  return plainText(rounded(path, Number(value)), field.unit);
}

/** The same in words, for those who hear it. */
export function axisSpoken(path: FieldPath, value: number): string {
  const field = fieldAt(path);
  if (field.kind === 'choice') return settingText(path, value);
  const text = String(rounded(path, value));
  return spoken(value, field.unit, text.split('.')[1]?.length ?? 0);
}

/** A value on an axis in its shown unit, to a tenth of the step of its setting. @param value  SI */
export function rounded(path: FieldPath, value: number): number {
  const field = fieldAt(path);
  if (field.kind === 'choice') return value;
  const digits = (String(field.step).split('.')[1]?.length ?? 0) + 1;
  return Number(fromSI(value, field.unit).toFixed(digits));
}

/** The places of the least and the greatest value; null where there is none. */
export function endsOf(values: ArrayLike<number>): { least: number; most: number } | null {
  let least = -1;
  let most = -1;
  for (let place = 0; place < values.length; place += 1) {
    if (Number.isNaN(values[place])) continue;
    if (least < 0 || values[place] < values[least]) least = place;
    if (most < 0 || values[place] > values[most]) most = place;
  }
  return least < 0 ? null : { least, most };
}

const satisfied: ReadonlySet<Asked> = new Set(['recovery', 'usableAtSatisfied']);
