import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mo, row, sub } from '../../shared/mathml.ts';

/**
 * Mixes a column until no layer is warmer than the one above it, with no heat lost: neighbours the
 * wrong way round take their common temperature, again and again, which is the weighted isotonic
 * regression of the profile. Changes `T` in place; layers that need no mixing keep their last bit.
 * @param T         [layer] °C, bottom first, changed
 * @param capacity  [layer] J/K, each above 0
 * @param room      scratch for at least as many layers; give the same one every time to allocate
 *                  nothing
 */
export function mixColumn(
  T: Float64Array,
  capacity: ArrayLike<number>,
  room: MixingRoom = mixingRoom(T.length),
): void {
  // source: isotonic, pool adjacent violators. Pools stand on a stack, bottom of the column first
  const { heat, pool, size } = room;
  if (firstInversion(T) === T.length) return;
  let pools = 0;
  for (let i = 0; i < T.length; i++) {
    heat[pools] = capacity[i] * T[i];
    pool[pools] = capacity[i];
    size[pools] = 1;
    pools++;
    while (pools > 1 && heat[pools - 2] * pool[pools - 1] > heat[pools - 1] * pool[pools - 2]) {
      heat[pools - 2] += heat[pools - 1];
      pool[pools - 2] += pool[pools - 1];
      size[pools - 2] += size[pools - 1];
      pools--;
    }
  }
  let layer = 0;
  for (let k = 0; k < pools; k++) {
    const end = layer + size[k];
    if (size[k] > 1) T.fill(heat[k] / pool[k], layer, end);
    layer = end;
  }
}

/** Scratch of mixColumn: heat, J, capacity, J/K, and number of layers, of each pool. */
export interface MixingRoom {
  readonly heat: Float64Array;
  readonly pool: Float64Array;
  readonly size: Int32Array;
}

/** Scratch for a column of so many layers. */
export function mixingRoom(layers: number): MixingRoom {
  return {
    heat: new Float64Array(layers),
    pool: new Float64Array(layers),
    size: new Int32Array(layers),
  };
}

/**
 * The first layer that is colder than the one below it; the number of layers when there is none.
 */
function firstInversion(T: Float64Array): number {
  for (let i = 1; i < T.length; i++) if (T[i] < T[i - 1]) return i;
  return T.length;
}

export const mixingRecord: ClosureRecord = {
  key: 'mixing',
  title: 'Two layers that mix',
  result: { key: 'result', symbol: mi('T'), name: 'temperature after mixing', unit: '°C' },
  terms: [
    {
      key: 'C1',
      symbol: sub('C', '1'),
      name: 'heat capacity of the lower layer',
      unit: 'kJ/K',
      factor: 1e-3,
    },
    { key: 'T1', symbol: sub('T', '1'), name: 'temperature of the lower layer', unit: '°C' },
    {
      key: 'C2',
      symbol: sub('C', '2'),
      name: 'heat capacity of the layer above',
      unit: 'kJ/K',
      factor: 1e-3,
    },
    { key: 'T2', symbol: sub('T', '2'), name: 'temperature of the layer above', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    frac(
      row('{C1}', mo('·'), '{T1}', mo('+'), '{C2}', mo('·'), '{T2}'),
      row('{C1}', mo('+'), '{C2}'),
    ),
  ),
  sentence:
    'Warm water under cooler water rises and mixes with it until both have the mean temperature, and no heat is lost.',
  source: 'isotonic',
  where: 'convective adjustment of two layers; from memory',
  range: 'lower layer warmer than the one above it',
  outside: 'refused: layers the right way up stay as they are',
  changes: 'Heating higher up leaves less water above the warm layer to be mixed.',
  example: {
    given: { C1: 250 * 4186, T1: 80, C2: 750 * 4186, T2: 20 },
    gives: 35,
    digits: 9,
    note: 'Printed: 250 litres at 80 °C and 750 at 20 °C stirred give 35 °C (common practice).',
  },
  compute: ({ C1, T1, C2, T2 }) => {
    const T = Float64Array.of(T1, T2);
    mixColumn(T, [C1, C2]);
    return T[1];
  },
};
