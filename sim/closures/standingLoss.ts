import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, row, sub, unit } from '../../shared/mathml.ts';
import type { Variant } from '../../shared/variant.ts';
import { power } from './power.ts';

/**
 * Loss conductance of a cylinder from its declared standing loss, W/K.
 * @param dailyLoss   heat lost in 24 h at the test condition, J
 * @param difference  stored water above the air in the test, K
 */
export function lossConductance(dailyLoss: number, difference = TEST_DIFFERENCE): number {
  return powerConductance(dailyLoss / DAY, difference);
}

/**
 * The same from a loss declared as power, W/K.
 * @param power  lost at the test condition, W
 */
export function powerConductance(power: number, difference: number): number {
  return power / difference;
}

/**
 * The largest standing loss of the United Kingdom guides for a new cylinder, J per 24 h.
 * @param volume  m³
 */
export function guideLimit(volume: number): number {
  const litres = volume * 1000;
  // source: ukServicesGuide, 1.15 (0.2 + 0.051 V^(2/3)) kWh per 24 h; from memory
  return 1.15 * (0.2 + 0.051 * power(litres, 2 / 3)) * KWH;
}

/**
 * The standing loss below which a cylinder is in an energy class, W at the test condition.
 * @param energyClass  as printed on the label
 * @param volume       m³
 */
export function classBound(energyClass: EnergyClass, volume: number): number {
  return boundBy(...boundTerms(energyClass), volume);
}

/** The two numbers of a bound: a constant loss and a factor, W. */
export function boundTerms(energyClass: EnergyClass): readonly [number, number] {
  return BOUNDS[energyClass];
}

function boundBy(constant: number, factor: number, volume: number): number {
  return constant + factor * power(volume * 1000, 0.4);
}

/**
 * The energy class of a cylinder by its standing loss.
 * @param loss    W at the test condition
 * @param volume  m³
 */
export function energyClassOf(loss: number, volume: number): EnergyClass | 'G' {
  // source: labelTanks, Annex II Table 2: a loss at the bound is in the next class; from memory
  return CLASSES.find((energyClass) => loss < classBound(energyClass, volume)) ?? 'G';
}

export type EnergyClass = Variant['cylinder']['lossClass'];

/** Stored water above the air in the test, K: 65 °C stored, 20 °C around. */
// source: en12897, standing loss test; read second-hand
export const TEST_DIFFERENCE = 45;

/** Stored water above the air in the test, by where a loss is declared, K. */
// source: as1056, 75 °C stored and 20 °C around; read second-hand
export const TEST_DIFFERENCES: Readonly<Record<Variant['cylinder']['declaredAt'], number>> = {
  '45': TEST_DIFFERENCE,
  '55': 55,
};

const DAY = 86_400; // s
const KWH = 3.6e6; // J

// source: labelTanks, Annex II Table 2, W with V in litres; from memory. Class C is also the
// ecodesign limit (ecodesignTanks)
const BOUNDS: Record<EnergyClass, readonly [number, number]> = {
  'A+': [5.5, 3.16],
  A: [8.5, 4.25],
  B: [12, 5.93],
  C: [16.66, 8.33],
  D: [21, 10.33],
  E: [26, 13.66],
  F: [31, 16.66],
};

/** From the best to the worst; what is in none of them is in class G. */
export const CLASSES: readonly EnergyClass[] = ['A+', 'A', 'B', 'C', 'D', 'E', 'F'];

export const standingLossRecord: ClosureRecord = {
  key: 'standingLoss',
  title: 'Loss conductance from the declared standing loss',
  result: {
    key: 'result',
    symbol: row(mi('U'), mi('A')),
    name: 'loss of the cylinder per kelvin',
    unit: 'W/K',
  },
  terms: [
    { key: 'loss', symbol: mi('Q'), name: 'declared loss in 24 h', unit: 'kWh', factor: 1 / KWH },
    {
      key: 'difference',
      symbol: mi('ΔT'),
      name: 'stored water above the air in the test',
      unit: 'K',
    },
  ],
  formula: equals('{result}', frac('{loss}', row(mn(24), unit('h'), mo('·'), '{difference}'))),
  sentence:
    'The loss on the label, spread over the day and over the 45 K of its test, is the loss per kelvin.',
  source: 'en12897',
  where: 'standing loss test, 65 °C stored and 20 °C around; read second-hand',
  range: 'labels tested at 45 K; some other countries test at 55 K',
  outside: 'extended: the loss is taken as proportional to the difference',
  changes: 'Thicker insulation, lagged connections and a jacket over bare fittings lower it.',
  example: {
    given: { loss: 1.8 * 3.6e6, difference: 45 },
    gives: 1.6667,
    digits: 4,
    note: 'Worked by hand: 1.8 kWh in 24 h is 75 W, and 75 W over 45 K is 1.667 W/K.',
  },
  compute: ({ loss, difference }) => lossConductance(loss, difference),
};

export const guideLimitRecord: ClosureRecord = {
  key: 'guideLimit',
  title: 'Largest standing loss in the United Kingdom guides',
  result: {
    key: 'result',
    symbol: sub('Q', 'max'),
    name: 'largest loss in 24 h',
    unit: 'kWh',
    factor: 1 / KWH,
  },
  terms: [{ key: 'volume', symbol: mi('V'), name: 'volume', unit: 'l', factor: 1000 }],
  formula: equals(
    '{result}',
    mn(1.15),
    mo('·'),
    paren(mn(0.2), mo('+'), mn(0.051), mo('·'), raised('{volume}', row(mn(2), mo('/'), mn(3)))),
  ),
  sentence: 'A larger cylinder may lose more, in step with its surface.',
  source: 'ukServicesGuide',
  where: 'kWh per 24 h with the volume in litres; from memory',
  range: 'domestic cylinders, about 80 to 500 l',
  outside: 'extended',
  changes: 'Only the volume; since 2017 the class C limit is the stricter one above about 150 l.',
  example: {
    given: { volume: 0.15 },
    gives: 1.886 * 3.6e6,
    digits: -4,
    note: '150 l: 1.886 kWh in 24 h, derived from the formula by hand, rounded to 0.001 kWh.',
  },
  compute: ({ volume }) => guideLimit(volume),
};

export const classLimitRecord: ClosureRecord = {
  key: 'classLimit',
  title: 'Largest standing loss of class C, the limit for new cylinders in the EU',
  result: { key: 'result', symbol: sub('S', 'C'), name: 'largest loss', unit: 'W' },
  terms: [{ key: 'volume', symbol: mi('V'), name: 'volume', unit: 'l', factor: 1000 }],
  formula: equals('{result}', mn(16.66), mo('+'), mn(8.33), mo('·'), raised('{volume}', mn(0.4))),
  sentence: 'A class C cylinder loses less than this with its water 45 K above the air.',
  source: 'ecodesignTanks',
  where: 'Annex II 2.1, W with the volume in litres; formula read second-hand',
  range: 'up to 2000 l',
  outside: 'extended',
  changes: 'Only the volume.',
  example: {
    given: { volume: 0.15 },
    gives: 78.5,
    digits: 1,
    note: '150 l: 78.5 W, rounded to 0.1 W.',
  },
  compute: ({ volume }) => classBound('C', volume),
};

export const classBoundRecord: ClosureRecord = {
  key: 'classBound',
  title: 'The standing loss below which a cylinder is in its class',
  result: { key: 'result', symbol: mi('S'), name: 'the most its class allows', unit: 'W' },
  terms: [
    { key: 'constant', symbol: mi('a'), name: 'of the class', unit: '', digits: 4 },
    { key: 'factor', symbol: mi('b'), name: 'of the class', unit: '', digits: 4 },
    { key: 'volume', symbol: mi('V'), name: 'volume', unit: 'l', factor: 1000 },
  ],
  formula: equals(
    '{result}',
    '{constant}',
    mo('+'),
    '{factor}',
    mo('·'),
    raised('{volume}', mn(0.4)),
  ),
  sentence:
    'Seven pairs of numbers part the classes; a larger store may lose more in the same class.',
  source: 'labelTanks',
  where: 'Annex II Table 2, W with the volume in litres and 45 K above the air; from memory',
  range: 'up to 500 l, as the label has it',
  outside: 'extended',
  changes: 'Only the class and the volume.',
  example: {
    given: { constant: 12, factor: 5.93, volume: 0.21 },
    gives: 62.3,
    digits: 1,
    note: 'Class B at 210 l: 12 + 5.93 × 8.49 = 62.3 W, rounded to 0.1 W.',
  },
  compute: ({ constant, factor, volume }) => boundBy(constant, factor, volume),
};
