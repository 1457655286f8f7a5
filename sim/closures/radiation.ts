import { ZERO_CELSIUS } from '../../shared/units.ts';
import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, mi, mo, mn, paren, raised, row, sub } from '../../shared/mathml.ts';

/**
 * Heat a surface radiates to a room much larger than itself, as a coefficient on the difference,
 * W/(m² K).
 * @param emissivity  of the surface, 0 to 1
 * @param surface     °C
 * @param around      walls of the room, taken as warm as its air, °C
 */
export function radiationCoefficient(emissivity: number, surface: number, around: number): number {
  const s = surface + ZERO_CELSIUS;
  const a = around + ZERO_CELSIUS;
  // source: incropera, grey surface in a large enclosure; s⁴ − a⁴ over s − a
  return emissivity * STEFAN_BOLTZMANN * (s * s + a * a) * (s + a);
}

const STEFAN_BOLTZMANN = 5.670374e-8; // W/(m² K⁴), source: practice, by definition of the kelvin

export const radiationRecord: ClosureRecord = {
  key: 'radiation',
  title: 'Radiation from a pipe to the room',
  result: { key: 'result', symbol: sub('h', 'r'), name: 'coefficient', unit: 'W/(m² K)' },
  terms: [
    { key: 'emissivity', symbol: mi('ε'), name: 'emissivity of the surface', unit: '' },
    { key: 'surface', symbol: sub('T', 's'), name: 'surface', unit: '°C' },
    { key: 'around', symbol: sub('T', 'a'), name: 'walls and air of the room', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    '{emissivity}',
    mo('·'),
    mi('σ'),
    mo('·'),
    paren(
      raised(paren('{surface}', mo('+'), mn(ZERO_CELSIUS)), mn(2)),
      mo('+'),
      raised(paren('{around}', mo('+'), mn(ZERO_CELSIUS)), mn(2)),
    ),
    mo('·'),
    paren('{surface}', mo('+'), '{around}', mo('+'), row(mn(2), mo('·'), mn(ZERO_CELSIUS))),
  ),
  sentence: 'A dull surface radiates many times what a bright one does at the same temperature.',
  source: 'incropera',
  where: 'grey surface in a large enclosure, σ = 5.670e-8 W/(m² K⁴); from memory',
  range: 'surfaces that face a room much larger than themselves',
  outside: 'extended; a pipe behind boards or near a warm wall radiates less',
  changes: 'The finish of the surface: bright metal radiates least.',
  example: {
    given: { emissivity: 1, surface: 26.85, around: 26.85 },
    gives: 6.124,
    digits: 3,
    note: 'Worked by hand: 4 × 5.670374e-8 × 300³ = 6.1240.',
  },
  compute: ({ emissivity, surface, around }) => radiationCoefficient(emissivity, surface, around),
};
