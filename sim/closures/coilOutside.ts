import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, row, sub } from '../../shared/mathml.ts';
import { filmCoefficient } from './filmCoefficient.ts';
import { power, sixthRoot } from './power.ts';
import { rayleigh } from './rayleigh.ts';
import { prandtl, type Water } from './water.ts';

/**
 * Heat transfer coefficient outside one turn of a coil in still water, W/(m² K): natural convection
 * on a horizontal cylinder times the enhancement for the flow that a whole coil induces.
 * @param water        the stored water
 * @param diameter     tube outside diameter, m
 * @param film         mean of tube surface and water, °C
 * @param difference   between tube surface and water, K, not negative
 * @param enhancement  pure number; 1 is a single tube
 */
export function coilOutside(
  water: Water,
  diameter: number,
  film: number,
  difference: number,
  enhancement: number,
): number {
  const Nu = churchillChu(rayleigh(water, diameter, film, difference), prandtl(water, film));
  return filmCoefficient(Nu, water.conductivity(film), diameter, enhancement);
}

/**
 * Nusselt number of a horizontal isothermal cylinder, pure number. Range 1e-5 < Ra < 1e12; below it
 * tends to the constant 0.36 that the formula gives at Ra = 0, above it is extended.
 * @param Ra  Rayleigh number on the diameter
 * @param Pr  Prandtl number
 */
export function churchillChu(Ra: number, Pr: number): number {
  // source: churchillChu, equation for the whole range of Ra
  const root = 0.6 + 0.387 * sixthRoot(Ra) * prandtlFactor(Pr);
  return root * root;
}

/**
 * The older Nusselt number for the same cylinder, kept for comparison, pure number. It jumps at its
 * borders. Range 1e-10 < Ra < 1e12; the end pieces are extended.
 * @param Ra  Rayleigh number on the diameter
 */
export function morgan(Ra: number): number {
  // source: morgan, table of constants by range of Ra
  if (Ra < 1e-2) return 0.675 * power(Math.max(Ra, 1e-30), 0.058);
  if (Ra < 1e2) return 1.02 * power(Ra, 0.148);
  if (Ra < 1e4) return 0.85 * power(Ra, 0.188);
  if (Ra < 1e7) return 0.48 * power(Ra, 0.25);
  return 0.125 * power(Ra, 0.333);
}

/**
 * Default enhancement of a coil in a tank over a single tube: about 1.5 times Morgan, mid-way in
 * 1.3 to 1.8.
 */
// source: mates, abstract; the choice of the middle is ours
export const DEFAULT_ENHANCEMENT = 1.25;

/** The share of convection that a fluid of this Prandtl number reaches, 0 to 1. */
export function prandtlFactor(Pr: number): number {
  // source: churchillChu, [1 + (0.559/Pr)^(9/16)]^(8/27), under the sixth root of Ra
  return 1 / power(1 + power(0.559 / Pr, 9 / 16), 8 / 27);
}

/** n / m as an exponent. */
const ratio = (above: number, below: number): string => row(mn(above), mo('/'), mn(below));

export const churchillChuRecord: ClosureRecord = {
  key: 'churchillChu',
  title: 'Convection outside the coil',
  result: { key: 'result', symbol: sub('Nu', 'o'), name: 'Nusselt number outside', unit: '' },
  terms: [
    { key: 'Ra', symbol: mi('Ra'), name: 'Rayleigh number on the tube diameter', unit: '' },
    { key: 'Pr', symbol: mi('Pr'), name: 'Prandtl number of the water', unit: '' },
  ],
  formula: equals(
    '{result}',
    raised(
      paren(
        mn(0.6),
        mo('+'),
        frac(
          row(mn(0.387), mo('·'), raised('{Ra}', ratio(1, 6))),
          raised(
            paren(mn(1), mo('+'), raised(paren(frac(mn(0.559), '{Pr}')), ratio(9, 16))),
            ratio(8, 27),
          ),
        ),
      ),
      mn(2),
    ),
  ),
  sentence:
    'Water warmed by the tube rises off it; the larger the difference, the faster it rises and the more it takes.',
  source: 'churchillChu',
  where: 'equation for a horizontal isothermal cylinder, all Ra; read second-hand',
  range: '1e-5 < Ra < 1e12, water of the film between tube and tank',
  outside: 'extended; tends to 0.36 without a difference',
  changes:
    'A larger difference between coil and tank; published formulas for coils differ by a factor of 1.8.',
  example: {
    given: { Ra: 4.217e6, Pr: 10 },
    gives: 27.7,
    digits: 2,
    note: 'The textbook coil (incropera) worked with this formula: Nu = 27.70.',
  },
  compute: ({ Ra, Pr }) => churchillChu(Ra, Pr),
};
