import { type Asked, askedRow } from '../../shared/asked.ts';
import { fieldAt } from '../../shared/fields.ts';
import { figure, settingText } from '../../shared/format.ts';
import type { Axis } from '../../shared/grid.ts';
import { axisText, gapName, type MapData, measured, rounded } from '../../shared/sentences/map.ts';
import { units } from '../../shared/units.ts';
import { evenPicks, type TableOf } from '../charts/table.ts';

/** A map as rows of text, the highest upward value first; of many places an even choice. */
export function mapTable(map: MapData): TableOf {
  const { axes } = map.grid;
  return axes.length > 1 ? crossTable(map, axes[1], axes[0]) : lineTable(map, axes[0]);
}

function lineTable(map: MapData, across: Axis): TableOf {
  const picks = evenPicks(across.values.length, ROWS);
  return {
    columns: [titleOf(across), measureTitle(map.measure)],
    rows: picks.map((place) => [tickOf(across, place), cellOf(map, place)]),
    ...captionOf(picks.length, across.values.length),
  };
}

function crossTable(map: MapData, across: Axis, upward: Axis): TableOf {
  const columns = evenPicks(across.values.length, COLUMNS);
  const rows = evenPicks(upward.values.length, ROWS).reverse();
  const all = across.values.length * upward.values.length;
  const { caption } = captionOf(columns.length * rows.length, all);
  return {
    columns: [titleOf(upward), ...headersOf(across, columns)],
    rows: rows.map((row) => [
      tickOf(upward, row),
      ...columns.map((column) => cellOf(map, row * across.values.length + column)),
    ]),
    caption: `${measureTitle(map.measure)}, by ${titleOf(across)} across.${caption === undefined ? '' : ` ${caption}`}`,
  };
}

/** Values over their columns, with as many digits as tell them apart. */
function headersOf({ path, values }: Axis, columns: readonly number[]): string[] {
  const short = columns.map((column) => axisText(path, values[column]));
  return new Set(short).size === short.length
    ? short
    : columns.map((column) => settingText(path, values[column]));
}

function captionOf(shown: number, all: number): { caption?: string } {
  if (shown === all) return {};
  return { caption: `${figure(shown, 0)} of ${figure(all, 0)} points; the CSV has all.` };
}

function cellOf({ values, gaps, measure }: MapData, place: number): string {
  const gap = gaps[place];
  if (gap) return gapName(gap.kind, measure);
  return Number.isNaN(values[place]) ? 'not computed' : measured(measure, values[place]);
}

function tickOf({ path, values }: Axis, place: number): string {
  const value = values[place];
  return typeof value === 'number'
    ? figure(rounded(path, value), digitsOf(rounded(path, value)))
    : axisText(path, value);
}

const digitsOf = (value: number) => String(value).split('.')[1]?.length ?? 0;

/** A setting and its unit: `coil area, m²`. */
export function titleOf({ path }: Pick<Axis, 'path'>): string {
  const field = fieldAt(path);
  const name = field.label.slice(0, 1).toLowerCase() + field.label.slice(1);
  if (field.kind !== 'number') return name;
  const { symbol } = units[field.unit];
  return symbol === '' ? name : `${name}, ${symbol}`;
}

function measureTitle(measure: Asked): string {
  return askedRow(measure).label;
}

const ROWS = 16;
const COLUMNS = 8;
