import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, sub, unit } from '../../shared/mathml.ts';
import { powerFromZero } from './power.ts';
import { RATED_EXCESS } from './radiator.ts';

/**
 * The flow temperature at which radiators just give the heat a room needs, °C: what larger
 * radiators buy.
 * @param need      heat to be given, W, not negative
 * @param rated     output at 50 K above the room, W, above 0
 * @param room      °C
 * @param spread    flow less return while it is given, K
 * @param exponent  of the radiators, pure number
 */
export function sufficientFlow(
  need: number,
  rated: number,
  room: number,
  spread: number,
  exponent: number,
): number {
  return room + RATED_EXCESS * powerFromZero(need / rated, 1 / exponent) + spread / 2;
}

/** Flow less return of water that carries a heat, K. @param need  W @param flow  m³/s */
export function heatingSpread(need: number, flow: number): number {
  return need / (flow * VOLUMETRIC_HEAT);
}

// source: iapwsLiquid: 988.0 kg/m³ times 4181 J/(kg K) at 50 °C
const VOLUMETRIC_HEAT = 988 * 4181; // J/(m³ K)

export const sufficientFlowRecord: ClosureRecord = {
  key: 'sufficientFlow',
  title: 'Flow temperature that suffices',
  result: { key: 'result', symbol: sub('T', 'f'), name: 'flow temperature', unit: '°C' },
  terms: [
    { key: 'need', symbol: mi('Φ'), name: 'heat needed', unit: 'kW', factor: 1e-3 },
    {
      key: 'rated',
      symbol: sub('Φ', '50'),
      name: 'rated output at 50 K',
      unit: 'kW',
      factor: 1e-3,
    },
    { key: 'room', symbol: sub('T', 'i'), name: 'room', unit: '°C' },
    { key: 'spread', symbol: mi('Δ'), name: 'flow less return', unit: 'K' },
    { key: 'exponent', symbol: mi('n'), name: 'exponent of the radiators', unit: '' },
  ],
  formula: equals(
    '{result}',
    '{room}',
    mo('+'),
    mn(RATED_EXCESS),
    unit(' K'),
    mo('·'),
    raised(paren(frac('{need}', '{rated}')), frac(mn(1), '{exponent}')),
    mo('+'),
    frac('{spread}', mn(2)),
  ),
  sentence:
    'Radiators of twice the size give the same heat from cooler water: at 54 °C in place of 75 °C.',
  source: 'en442',
  where: 'characteristic equation turned round, with the arithmetic mean of flow and return',
  range: 'a spread well below the difference to the room',
  outside: 'extended; with a wide spread the logarithmic mean asks for a somewhat hotter flow',
  changes: 'Larger radiators or less heat loss.',
  example: {
    given: { need: 10_000, rated: 15_000, room: 20, spread: 10, exponent: 1.3 },
    gives: 61.603,
    digits: 3,
    note: 'Worked by hand: (2/3)^(1/1.3) = 0.73206; 20 + 50 × 0.73206 + 5.',
  },
  compute: ({ need, rated, room, spread, exponent }) =>
    sufficientFlow(need, rated, room, spread, exponent),
};
