import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, sub, unit } from '../../shared/mathml.ts';
import { power } from './power.ts';

/**
 * Heat given by radiators, W; nothing when they are no warmer than the room.
 * @param rated     output at 50 K above the room, W
 * @param excess    mean water temperature above the room, K
 * @param exponent  pure number, 1.3 for panel radiators
 */
export function radiatorOutput(rated: number, excess: number, exponent = PANEL_EXPONENT): number {
  return excess > 0 ? rated * power(excess / RATED_EXCESS, exponent) : 0;
}

/** Mean water above room at which radiators are rated, K: 75 °C in, 65 °C out, 20 °C room. */
export const RATED_EXCESS = 50; // source: en442, rating condition

/** Exponent of a panel radiator. */
export const PANEL_EXPONENT = 1.3; // source: en442, usual 1.3 ± 0.1, common practice

export const radiatorRecord: ClosureRecord = {
  key: 'radiator',
  title: 'Heat given by the radiators',
  result: { key: 'result', symbol: mi('Φ'), name: 'heat given', unit: 'kW', factor: 1e-3 },
  terms: [
    {
      key: 'rated',
      symbol: sub('Φ', '50'),
      name: 'rated output at 50 K',
      unit: 'kW',
      factor: 1e-3,
    },
    { key: 'excess', symbol: mi('ΔT'), name: 'mean water temperature above the room', unit: 'K' },
    { key: 'exponent', symbol: mi('n'), name: 'exponent of the radiator', unit: '' },
  ],
  formula: equals(
    '{result}',
    '{rated}',
    mo('·'),
    raised(paren(frac('{excess}', `<mrow>${mn(50)}${unit(' K')}</mrow>`)), '{exponent}'),
  ),
  sentence: 'A radiator half as far above the room gives well under half its rated heat.',
  source: 'en442',
  where: 'standard characteristic equation; exponent 1.3 ± 0.1 is common practice',
  range: 'water warmer than the room',
  outside: 'no heat when the water is no warmer than the room',
  changes: 'Larger radiators give the same heat from cooler water.',
  example: {
    given: { rated: 1000, excess: 60, exponent: 1.3 },
    gives: 1267,
    digits: 0,
    note: 'Printed factor from 50 K to 60 K: 1.267 (common practice).',
  },
  compute: ({ rated, excess, exponent }) => radiatorOutput(rated, excess, exponent),
};
