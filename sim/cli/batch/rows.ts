import { type Asked, askedFileKey, askedFileValue } from '../../../shared/asked.ts';
import { cautionsOf } from '../../../shared/cautions.ts';
import { csvCell } from '../../../shared/codec/csvCell.ts';
import { fieldAt } from '../../../shared/fields.ts';
import { filePathOf } from '../../../shared/fileKeys.ts';
import { withOverrides } from '../../../shared/grid.ts';
import { withoutSayWords } from '../../../shared/mapSettings.ts';
import { gapSentences, type Point } from '../../../shared/point.ts';
import { fromSI } from '../../../shared/units.ts';
import { type FieldPath, settingOf, type Variant } from '../../../shared/variant.ts';
import { pointOf } from '../../run/pointOf.ts';
import { toEnd } from '../../run/toEnd.ts';
import type { RowForm } from './args.ts';
import type { PointRow, Word } from './points.ts';

/** Rows to be computed, by themselves: plain data that can be handed to a worker. */
export interface Task {
  readonly base: Variant;
  /** What each row is called, where its table says. */
  readonly words: readonly Word[];
  /** The settings that change. */
  readonly paths: readonly FieldPath[];
  readonly measures: readonly Asked[];
  readonly form: RowForm;
  /** Of the study and the program, in every row. */
  readonly mark: string;
  /** Number of the first row, from 1. */
  readonly from: number;
  readonly rows: readonly PointRow[];
}

/** Rows as they are written, a line each. */
export interface Done {
  readonly text: string;
  readonly rows: number;
  /** Rows whose run ended early. */
  readonly early: number;
  /** Cautions, and to how many of these rows each applies. */
  readonly cautions: readonly CautionCount[];
}

export interface CautionCount {
  readonly key: string;
  /** Of the first row it applies to. */
  readonly text: string;
  /** Whether it reads otherwise in another row. */
  readonly varies: boolean;
  readonly rows: number;
}

/** Computes rows one after the other. */
export function computeRows(task: Task): Done {
  const cautions = new Map<string, CautionCount>();
  let text = '';
  let early = 0;
  for (const [index, { settings, words }] of task.rows.entries()) {
    const variant = withOverrides(task.base, settings);
    const point = toEnd(pointOf(variant, task.measures));
    const idle = settings.flatMap(([path]) => withoutSayWords(variant, path) ?? []);
    const said = [...gapSentences(point), ...idle].join(' ');
    text += `${rowLine(task, task.from + index, words, variant, point, said)}\n`;
    if (point.gaps.some((gap) => gap?.kind === 'endedEarly')) early++;
    if (point.gaps.some((gap) => gap?.kind === 'notPossible')) continue;
    addCautions(
      cautions,
      cautionsOf(variant, null).map((caution) => ({
        key: caution.key,
        text: `${caution.text} [${caution.source}]`,
        varies: false,
        rows: 1,
      })),
    );
  }
  return { text, rows: task.rows.length, early, cautions: [...cautions.values()] };
}

/** Counts cautions on top of those that were counted. */
export function addCautions(
  counted: Map<string, CautionCount>,
  more: readonly CautionCount[],
): void {
  for (const one of more) {
    const before = counted.get(one.key);
    if (!before) counted.set(one.key, one);
    else {
      const varies = before.varies || one.varies || before.text !== one.text;
      counted.set(one.key, { ...before, varies, rows: before.rows + one.rows });
    }
  }
}

/** The first line of rows that are comma-separated; none for JSON, which has the names in every line. */
export function headLine(task: Pick<Task, 'form' | 'words' | 'paths' | 'measures'>): string {
  return task.form === 'csv' ? `${namesOf(task).map(csvCell).join(',')}\n` : '';
}

/** What every row of a number begins with. @param row  from 1 */
export function rowStart({ form, mark }: Pick<Task, 'form' | 'mark'>, row: number): string {
  return form === 'csv' ? `${row},${mark},` : `{"row":${row},"study":"${mark}",`;
}

/** One row: its number and mark, what it is called, the settings that change, the measures with every digit, and what there is to say. */
function rowLine(
  task: Task,
  row: number,
  words: readonly string[],
  variant: Variant,
  point: Point,
  said: string,
): string {
  const settings = task.paths.map((path) => {
    const field = fieldAt(path);
    const value = settingOf(variant, path);
    return field.kind === 'number' ? fromSI(Number(value), field.unit) : value;
  });
  const values = task.measures.map((key, at) => askedFileValue(key, point.values[at]));
  const cells = [row, task.mark, ...words, ...settings, ...values, said === '' ? null : said];
  if (task.form === 'csv') return cells.map(csvCell).join(',');
  const names = namesOf(task);
  return `{${cells.map((cell, at) => `${JSON.stringify(names[at])}:${JSON.stringify(cell)}`).join(',')}}`;
}

function namesOf({ words, paths, measures }: Pick<Task, 'words' | 'paths' | 'measures'>): string[] {
  return [
    'row',
    'study',
    ...words,
    ...paths.map((path) => filePathOf(fieldAt(path))),
    ...measures.map(askedFileKey),
    'note',
  ];
}
