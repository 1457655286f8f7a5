import type { UnitName } from '../units.ts';
import type { OwnDraw } from '../variant.ts';

interface Column {
  readonly key: keyof OwnDraw;
  /** In a sentence: `Volume of draw 3`. */
  readonly label: string;
  /** Over its column. */
  readonly heading: string;
  /** Spoken in place of the heading. */
  readonly words: string;
  /** One sentence or two: what it is and how it matters. */
  readonly help: string;
  /** Where the default comes from. */
  readonly source: string;
}

/** A column of text, of so many characters at most. */
export interface DrawText extends Column {
  readonly kind: 'text';
  readonly key: 'name';
  readonly most: number;
  readonly default: string;
}

/** A column of numbers. Limits and default are in the shown unit. */
export interface DrawNumber extends Column {
  readonly kind: 'number';
  readonly key: Exclude<keyof OwnDraw, 'name'>;
  readonly unit: UnitName;
  readonly least: number;
  readonly most: number;
  readonly default: number;
}

export type DrawColumn = DrawText | DrawNumber;

/** The columns of the own draws, in order. A row that is added starts at the defaults. */
export const drawColumns: readonly DrawColumn[] = [
  {
    kind: 'text',
    key: 'name',
    label: 'Name',
    heading: 'name',
    words: 'name',
    help: 'Any text, or none.',
    most: 40,
    default: '',
    source: 'none, to be typed',
  },
  {
    kind: 'number',
    key: 'at',
    label: 'Time',
    heading: 'time of day',
    words: 'time of day',
    help: 'When the tap opens: 7:30, or hours after midnight.',
    unit: 'hour',
    least: 0,
    most: 23 + 59 / 60,
    default: 12,
    source: 'an example',
  },
  {
    kind: 'number',
    key: 'volume',
    label: 'Volume',
    heading: 'litres',
    words: 'litres',
    help: 'Out of the tap, hot and cold together.',
    unit: 'litre',
    least: 0.1,
    most: 1000,
    default: 20,
    source: 'an example',
  },
  {
    kind: 'number',
    key: 'flow',
    label: 'Flow',
    heading: 'l/min',
    words: 'litres per minute',
    help: 'Out of the tap while it is open.',
    unit: 'litrePerMinute',
    least: 0.5,
    most: 60,
    default: 8,
    source: 'an example',
  },
  {
    kind: 'number',
    key: 'mixedTo',
    label: 'Temperature at the tap',
    heading: '°C at the tap',
    words: 'degrees Celsius at the tap',
    help: 'Mixed to this; when the store falls below it the draw runs cold. The hotter, the sooner it scalds.',
    unit: 'celsius',
    least: 20,
    most: 60,
    default: 40,
    source: 'EU 814/2013, Annex I: usable water is counted at 40 °C',
  },
];

/** Rows of one table. */
export const mostDraws = 60;
