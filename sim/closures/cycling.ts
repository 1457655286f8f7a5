import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mo, row, sub } from '../../shared/mathml.ts';
import { logarithm } from '../../shared/portableMaths.ts';

/** A fully mixed lump with a loss or a load in proportion to its temperature. */
export interface Lump {
  /** J/K */
  readonly capacity: number;
  /** To what surrounds it, or to what it heats, W/K, above 0. */
  readonly conductance: number;
  /** °C */
  readonly around: number;
}

/**
 * How long a lump is heated in each cycle of its stat, s; without end when the power cannot bring
 * it to the cut-out.
 * @param cutIn   heating comes on, °C
 * @param cutOut  heating goes off, °C, above `cutIn`
 * @param power   while on, W
 */
export function onTime(lump: Lump, cutIn: number, cutOut: number, power: number): number {
  const settles = lump.around + power / lump.conductance;
  if (settles <= cutOut) return Number.POSITIVE_INFINITY;
  return approachTime(lump.capacity, lump.conductance, settles, cutIn, cutOut);
}

/** How long the lump then cools before its stat calls again, s; without end in warm surroundings. */
export function offTime(lump: Lump, cutIn: number, cutOut: number): number {
  if (lump.around >= cutIn) return Number.POSITIVE_INFINITY;
  return approachTime(lump.capacity, lump.conductance, lump.around, cutOut, cutIn);
}

/** Share of the time that heating is on, 0 to 1; of the two times one may be without end. */
export function duty(on: number, off: number): number {
  return 1 / (1 + off / on);
}

/** Time from one temperature to another on the way to where the lump would settle, s. */
function approachTime(
  capacity: number,
  conductance: number,
  settles: number,
  from: number,
  to: number,
): number {
  return (capacity / conductance) * logarithm((settles - from) / (settles - to));
}

export const onTimeRecord: ClosureRecord = {
  key: 'onTime',
  title: 'How long each burst of heating lasts',
  result: { key: 'result', symbol: sub('t', 'on'), name: 'time on', unit: 's', digits: 4 },
  terms: [
    { key: 'capacity', symbol: mi('C'), name: 'heat capacity', unit: 'kJ/K', factor: 1e-3 },
    { key: 'conductance', symbol: mi('UA'), name: 'loss or load per kelvin', unit: 'W/K' },
    { key: 'around', symbol: sub('T', 'a'), name: 'what surrounds it', unit: '°C' },
    { key: 'cutIn', symbol: sub('T', 'on'), name: 'cut-in', unit: '°C' },
    { key: 'cutOut', symbol: sub('T', 'off'), name: 'cut-out', unit: '°C' },
    { key: 'power', symbol: mi('P'), name: 'power while on', unit: 'kW', factor: 1e-3 },
  ],
  formula: equals(
    '{result}',
    frac('{capacity}', '{conductance}'),
    mi('ln'),
    frac(
      row('{around}', mo('+'), row('{power}', mo('/'), '{conductance}'), mo('−'), '{cutIn}'),
      row('{around}', mo('+'), row('{power}', mo('/'), '{conductance}'), mo('−'), '{cutOut}'),
    ),
  ),
  sentence:
    'Little water, a narrow differential or far more power than is taken makes the bursts short.',
  source: 'incropera',
  where: 'lumped capacitance, chapter 5; from memory',
  range: 'one fully mixed lump at constant power, loss in proportion to the difference',
  outside: 'without end when the power cannot bring the lump to the cut-out',
  changes: 'A wider differential, more water, a lower minimum output.',
  example: {
    given: { capacity: 836_000, conductance: 2, around: 20, cutIn: 55, cutOut: 60, power: 3000 },
    gives: 1429.061,
    digits: 3,
    note: 'Closed form: 200 kg of water, 3 kW; 418 000 s × ln(1465 / 1460).',
  },
  compute: ({ capacity, conductance, around, cutIn, cutOut, power }) =>
    onTime({ capacity, conductance, around }, cutIn, cutOut, power),
};

export const offTimeRecord: ClosureRecord = {
  key: 'offTime',
  title: 'How long the pause between bursts lasts',
  result: { key: 'result', symbol: sub('t', 'off'), name: 'time off', unit: 'h', factor: 1 / 3600 },
  terms: onTimeRecord.terms.filter(({ key }) => key !== 'power'),
  formula: equals(
    '{result}',
    frac('{capacity}', '{conductance}'),
    mi('ln'),
    frac(row('{cutOut}', mo('−'), '{around}'), row('{cutIn}', mo('−'), '{around}')),
  ),
  sentence: 'What loses little and may cool far before it is heated again waits long.',
  source: 'incropera',
  where: 'lumped capacitance, chapter 5; from memory',
  range: 'one fully mixed lump, loss in proportion to the difference',
  outside: 'without end when the surroundings are no colder than the cut-in',
  changes: 'Better insulation or a wider differential.',
  example: {
    given: { capacity: 836_000, conductance: 2, around: 20, cutIn: 55, cutOut: 60 },
    gives: 55_816.122,
    digits: 3,
    note: 'Closed form: 418 000 s × ln(40 / 35).',
  },
  compute: ({ capacity, conductance, around, cutIn, cutOut }) =>
    offTime({ capacity, conductance, around }, cutIn, cutOut),
};

export const dutyRecord: ClosureRecord = {
  key: 'duty',
  title: 'Share of the time that heating is on',
  result: { key: 'result', symbol: mi('d'), name: 'duty', unit: '%', factor: 100 },
  terms: [
    { key: 'on', symbol: sub('t', 'on'), name: 'time on', unit: 'min', factor: 1 / 60 },
    { key: 'off', symbol: sub('t', 'off'), name: 'time off', unit: 'min', factor: 1 / 60 },
  ],
  formula: equals('{result}', frac('{on}', row('{on}', mo('+'), '{off}'))),
  sentence: 'The share of the time it is on, times the power, is the mean heat it gives.',
  source: 'lumpedHeat',
  where: 'definition',
  range: 'a cycle that repeats',
  outside: '1 when it never goes off, 0 when it never comes on',
  changes: 'Less power for the same heat raises it and spares starts.',
  example: {
    given: { on: 1429.061, off: 55_816.122 },
    gives: 0.0249639,
    digits: 7,
    note: 'Closed form, from the two times of the same lump.',
  },
  compute: ({ on, off }) => duty(on, off),
};
