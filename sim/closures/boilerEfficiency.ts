import type { ClosureRecord, Term } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, row, sub } from '../../shared/mathml.ts';
import { MonotoneCurve } from './monotoneCurve.ts';
import { smoothStep } from './smoothStep.ts';

/**
 * Efficiency of a condensing gas boiler on gross calorific value, a share of the heat in the fuel.
 * @param returnTemperature  water entering the boiler, °C
 * @param load               output over full output, 0 to 1
 */
export function boilerEfficiency(returnTemperature: number, load: number): number {
  const partLoad = 1 - Math.min(Math.max(load, 0), 1);
  return FULL_LOAD.at(returnTemperature) + (GAIN * partLoad) / (1 - GAIN_LOAD);
}

/**
 * The same efficiency on net calorific value, which leaves out the heat of the steam in the flue
 * gas and so may pass 1.
 * @param gross  efficiency on gross calorific value, share
 */
export function netFromGross(gross: number): number {
  return gross * GROSS_OVER_NET;
}

/**
 * How far a boiler condenses, 0 to 1: the weight of the heat it gives when heat given while
 * condensing is summed. 1 below the dew point of the flue gas and 0 above it, smooth across 2 K.
 * @param returnTemperature  °C
 */
export function condensingShare(returnTemperature: number): number {
  return smoothStep((DEW_POINT + DEW_SPREAD - returnTemperature) / (2 * DEW_SPREAD));
}

/** Dew point of the flue gas of natural gas as return temperature, °C. */
export const DEW_POINT = 54; // source: boilerAnchors, printed as about 55 °C and as 130 °F

// source: practice, chosen here so that a run sees no corner, K on either side
const DEW_SPREAD = 1;

/** Gross over net calorific value of natural gas. */
export const GROSS_OVER_NET = 1.11; // source: boilerCurve, from memory

const FULL_LOAD = new MonotoneCurve([
  // source: boilerCurve, return °C and gross efficiency at full load
  [30, 0.965],
  [38, 0.945],
  [43, 0.925],
  [49, 0.905],
  [54, 0.88],
  [60, 0.87],
  [71, 0.86],
]);

// engineering guess, no source: one percentage point more at 30 % load, in a straight line. At most
// 0.979 with no load and a cold return
const GAIN = 0.01;
const GAIN_LOAD = 0.3;

const RETURN: Term = {
  key: 'returnTemperature',
  symbol: sub('T', 'r'),
  name: 'water entering the boiler',
  unit: '°C',
};

export const boilerEfficiencyRecord: ClosureRecord = {
  key: 'boilerEfficiency',
  title: 'Efficiency of a condensing boiler on gross calorific value',
  result: { key: 'result', symbol: mi('η'), name: 'gross efficiency', unit: '%', factor: 100 },
  terms: [RETURN, { key: 'load', symbol: mi('φ'), name: 'load, a share of full output', unit: '' }],
  formula: equals(
    '{result}',
    sub('η', 'full'),
    paren('{returnTemperature}'),
    mo('+'),
    mn(GAIN),
    mo('·'),
    frac(row(mn(1), mo('−'), '{load}'), mn(1 - GAIN_LOAD)),
  ),
  sentence:
    'The colder the water that comes back, the more steam of the flue gas condenses and gives its heat.',
  source: 'boilerCurve',
  where:
    'full load, return 30, 38, 43, 49, 54, 60, 71 °C: 96.5, 94.5, 92.5, 90.5, 88, 87, 86 %; the gain at part load is an engineering guess',
  range: 'condensing boilers on natural gas, return 30 to 71 °C, load 0 to 1',
  outside: 'clamped: the end values are kept',
  changes: 'A lower flow temperature, larger radiators, a larger coil.',
  example: {
    given: { returnTemperature: 49, load: 0.3 },
    gives: 0.915,
    digits: 4,
    note: 'The point at 49 °C, 90.5 %, and one percentage point at 30 % load.',
  },
  compute: ({ returnTemperature, load }) => boilerEfficiency(returnTemperature, load),
};

export const netFromGrossRecord: ClosureRecord = {
  key: 'netFromGross',
  title: 'Efficiency on net calorific value',
  result: {
    key: 'result',
    symbol: sub('η', 'net'),
    name: 'net efficiency',
    unit: '%',
    factor: 100,
  },
  terms: [
    { key: 'gross', symbol: sub('η', 'gross'), name: 'gross efficiency', unit: '%', factor: 100 },
  ],
  formula: equals('{result}', mn(GROSS_OVER_NET), mo('·'), '{gross}'),
  sentence:
    'Net figures leave the heat of the steam out of the fuel and so look 11 % better; a bill is in gross.',
  source: 'boilerCurve',
  where: 'gross over net calorific value of natural gas, 1.11; from memory',
  range: 'natural gas; other fuels have another ratio',
  outside: 'extended',
  changes: 'Only the fuel.',
  example: {
    given: { gross: 0.9 },
    gives: 0.999,
    digits: 9,
    note: 'Worked by hand: 0.9 × 1.11.',
  },
  compute: ({ gross }) => netFromGross(gross),
};

export const condensingShareRecord: ClosureRecord = {
  key: 'condensingShare',
  title: 'Whether the boiler condenses',
  result: { key: 'result', symbol: mi('w'), name: 'weight of the heat given', unit: '' },
  terms: [RETURN],
  // with u = (55 − T) / 2: u² (3 − 2u), and 3 − 2u = T − 52
  formula: equals(
    '{result}',
    raised(
      paren(frac(row(mn(DEW_POINT + DEW_SPREAD), mo('−'), '{returnTemperature}'), mn(2))),
      mn(2),
    ),
    mo('·'),
    paren('{returnTemperature}', mo('−'), mn(DEW_POINT + DEW_SPREAD - 3)),
  ),
  sentence: 'Heat given to water that comes back below 54 °C is counted as given while condensing.',
  source: 'boilerAnchors',
  where: 'dew point about 55 °C, also 130 °F; the 1 K on either side is chosen here',
  range: 'natural gas, return 53 to 55 °C',
  outside: '1 below 53 °C, 0 above 55 °C',
  changes: 'A lower flow temperature or less flow brings the return below the dew point.',
  example: {
    given: { returnTemperature: 54.5 },
    gives: 0.15625,
    digits: 9,
    note: 'Worked by hand: (0.5 / 2)² × 2.5.',
  },
  compute: ({ returnTemperature }) => condensingShare(returnTemperature),
};
