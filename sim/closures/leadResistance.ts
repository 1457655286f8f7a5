import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, mi, mn, mo, sub } from '../../shared/mathml.ts';
import type { Metres, Ohms } from '../../shared/units.ts';

/**
 * Resistance of a two-core copper lead, there and back at 20 °C, ohm.
 * @param length     one way, m
 * @param perLength  of one core, ohm/m
 */
export function leadResistance(length: Metres, perLength: number): Ohms {
  return 2 * length * perLength;
}

/** The cross-section of each core, mm². */
export type LeadSection = '0.5' | '0.75' | '1.0';

/** Largest resistance of one flexible copper core (class 5) at 20 °C, ohm/m. */
// source: iec60228, flexible conductors of class 5, ohm/km at 20 °C; read second-hand
export const LEAD_SECTIONS: Readonly<Record<LeadSection, number>> = {
  '0.5': 39.0 / 1000,
  '0.75': 26.0 / 1000,
  '1.0': 19.5 / 1000,
};

export const leadResistanceRecord: ClosureRecord = {
  key: 'leadResistance',
  title: 'Resistance of a two-core lead',
  result: { key: 'result', symbol: mi('R'), name: 'resistance there and back', unit: 'Ω' },
  terms: [
    { key: 'length', symbol: mi('L'), name: 'length of the lead', unit: 'm' },
    {
      key: 'perLength',
      symbol: sub('r', '20'),
      name: 'resistance of one core at 20 °C',
      unit: 'Ω/km',
      factor: 1000,
    },
  ],
  formula: equals('{result}', mn(2), mo('·'), '{length}', mo('·'), '{perLength}'),
  sentence:
    'A current goes there and back, so both cores count; beside the kilohms of a thermistor they are nothing.',
  source: 'iec60228',
  where: 'largest resistance of class 5 flexible copper conductors at 20 °C; read second-hand',
  range: 'copper at 20 °C; each kelvin warmer adds 0.4 % (common practice)',
  outside: 'extended',
  changes: 'Thicker cores, a shorter lead, or a third and fourth core to measure around it.',
  example: {
    given: { length: 40, perLength: 0.039 },
    gives: 3.12,
    digits: 9,
    note: 'Worked by hand: 2 × 40 m × 39.0 Ω/km.',
  },
  compute: ({ length, perLength }) => leadResistance(length, perLength),
};
