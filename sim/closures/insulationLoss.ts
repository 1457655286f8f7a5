import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, row } from '../../shared/mathml.ts';
import { cubeRoot } from '../../shared/portableMaths.ts';
import type { CubicMetres, Joules, Metres } from '../../shared/units.ts';

/** How a cylinder is insulated. */
export type Insulation = keyof typeof INSULATION;

/**
 * Heat that a cylinder loses in 24 h by its insulation, J, before the factor for how it is used.
 * The same factor goes with a declared loss (Table 2b, from memory), so this stands in for one,
 * declared at 45 K. The tables themselves name no difference.
 * @param thickness  0 or more
 */
export function insulationLoss(
  insulation: Insulation,
  thickness: Metres,
  volume: CubicMetres,
): Joules {
  const [conductance, film] = INSULATION[insulation];
  const litres = volume * 1000;
  // source: sap, Table 2, kWh a day and litre with the thickness in mm
  const perLitre = 0.005 + conductance / (thickness * 1000 + film);
  // source: sap, Table 2a
  return litres * perLitre * cubeRoot(120 / litres) * KWH;
}

/**
 * What use makes of the loss of an indirect cylinder, pure number: it is not hot all day and all
 * through.
 * @param timed  hot water has its own times, apart from the heating
 */
export function useFactor(thermostat: boolean, timed: boolean): number {
  // source: sap, Table 2b
  return 0.6 * (thermostat ? 1 : 1.3) * (timed ? 0.9 : 1);
}

const KWH = 3.6e6; // J

// source: sap, Table 2: kWh mm a day and litre, and mm added to the thickness
const INSULATION = {
  factory: [0.55, 4],
  jacket: [1.76, 12.8],
} as const;

const insulationRecord = (
  insulation: Insulation,
  named: string,
  example: ClosureRecord['example'],
): ClosureRecord => ({
  key: `${insulation}Loss`,
  title: `Standing loss by the thickness of ${named}`,
  result: {
    key: 'result',
    symbol: mi('Q'),
    name: 'loss in 24 h before use is counted',
    unit: 'kWh',
    factor: 1 / KWH,
  },
  terms: [
    { key: 'volume', symbol: mi('V'), name: 'volume', unit: 'l', factor: 1000 },
    { key: 'thickness', symbol: mi('t'), name: `thickness of ${named}`, unit: 'mm', factor: 1000 },
  ],
  formula: equals(
    '{result}',
    '{volume}',
    mo('·'),
    paren(
      mn('0.005'),
      mo('+'),
      frac(
        mn(INSULATION[insulation][0].toFixed(2)),
        row('{thickness}', mo('+'), mn(INSULATION[insulation][1].toFixed(1))),
      ),
    ),
    mo('·'),
    `<mroot>${paren(frac(mn(120), '{volume}'))}${mn(3)}</mroot>`,
  ),
  sentence:
    'The first centimetres of insulation save most; a loose jacket of 80 mm does what 25 mm of foam does.',
  source: 'sap',
  where:
    'Tables 2 and 2a, kWh a day with litres and mm, read second-hand; the figure stands where a declared loss would, so the model takes it at 45 K',
  range: 'domestic cylinders; it knows no bare pipes and fittings beyond the ordinary',
  outside: 'extended; a declared loss is better where there is one',
  changes: 'Thicker insulation and a smaller store.',
  example,
  compute: ({ volume, thickness }) => insulationLoss(insulation, thickness, volume),
});

// marked so that what only computes need not carry the words
export const insulationRecords: Readonly<Record<Insulation, ClosureRecord>> = {
  factory: /* @__PURE__ */ insulationRecord('factory', 'foam from the factory', {
    given: { volume: 0.21, thickness: 0.05 },
    gives: 2.6462 * KWH,
    digits: -3,
    note: '210 l with 50 mm by hand: 210 × 0.015185 × 0.82983 = 2.6462 kWh, rounded to 0.0001.',
  }),
  jacket: /* @__PURE__ */ insulationRecord('jacket', 'a loose jacket', {
    given: { volume: 0.12, thickness: 0.08 },
    gives: 2.8759 * KWH,
    digits: -3,
    note: '120 l with 80 mm by hand: 120 × 0.0239655 = 2.8759 kWh, rounded to 0.0001.',
  }),
};
