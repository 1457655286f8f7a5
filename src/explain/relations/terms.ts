import type { Term } from '../../../shared/closureRecord.ts';
import { mi, row, sub } from '../../../shared/mathml.ts';

/** Quantities that stand in more than one relation, each with one symbol, name and unit. */
const term = (key: string, symbol: string, name: string, unit: string, factor = 1, digits = 3) =>
  ({ key, symbol, name, unit, factor, digits }) satisfies Term;

export const heatRate = term('mc', row(mi('ṁ'), mi('c')), 'flow × specific heat', 'kW/K', 1e-3, 4);
export const flowHere = term('flow', sub('T', 'f'), 'flow', '°C', 1, 4);
export const returnHere = term('back', sub('T', 'r'), 'return', '°C', 1, 4);
export const power = term('power', mi('P'), 'heat given', 'kW', 1e-3);
export const heat = term('heat', mi('Q'), 'heat through the coil', 'kWh', 1 / 3.6e6);
export const meanPower = term('mean', sub('P', 'mean'), 'mean coil output', 'kW', 1e-3);
export const time = term('time', mi('t'), 'time', 'min', 1 / 60);
export const volume = term('volume', mi('V'), 'volume', 'l', 1000);
export const heatCapacity = term(
  'capacity',
  row(mi('ρ'), mi('c')),
  'heat capacity of water',
  'kJ/(l K)',
  1e-6,
  4,
);

/** The same quantity in the part of the result. */
export const asResult = (from: Term): Term => ({ ...from, key: 'result' });
