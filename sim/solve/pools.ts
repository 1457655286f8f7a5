/**
 * Convective pools: neighbouring layers that stir each other by natural convection and so share one temperature and one
 * rate. They are control state, outside the derivative: between events their borders stand still and the derivative is
 * smooth. This is the limit of infinitely fast upward mixing: between two layers either the upper is warmer and nothing
 * rises, or both are equal and the rising heat keeps them equal.
 */
export interface Pools {
  /** [pool] its lowest layer; [count] is the number of layers. */
  readonly first: Int32Array;
  count: number;
}

/** Every layer a pool of its own. */
export function makePools(layers: number): Pools {
  const first = new Int32Array(layers + 1);
  for (let layer = 0; layer <= layers; layer++) first[layer] = layer;
  return { first, count: layers };
}

/**
 * How far the pools have outlived themselves by merging: the largest excess of a pool's temperature over that of the pool
 * above it, K. Above zero two pools have to merge.
 * @param T  temperature of a layer, °C
 * @param borders  the lowest layers of the pools to look at; all when left out
 */
export function largestInversion(
  pools: Pools,
  T: (layer: number) => number,
  borders?: readonly number[],
): number {
  let largest = Number.NEGATIVE_INFINITY;
  const count = borders ? borders.length : pools.count - 1;
  for (let i = 0; i < count; i++) {
    const layer = borders ? borders[i] : pools.first[i + 1];
    const excess = T(layer - 1) - T(layer);
    if (excess > largest) largest = excess;
  }
  return largest;
}

/** The lowest layers of those pools that are colder than the pool below them. */
export function invertedBorders({ first, count }: Pools, T: ArrayLike<number>): number[] {
  const borders: number[] = [];
  for (let pool = 1; pool < count; pool++) {
    if (T[first[pool] - 1] > T[first[pool]]) borders.push(first[pool]);
  }
  return borders;
}

/**
 * How far they have outlived themselves by parting: the largest heat that would have to sink through a border inside a
 * pool to keep its layers equal, W. Above zero the pool has to part there, for nothing carries heat down.
 * @param heats  into each layer by itself, [layer] W
 */
export function largestSinking(
  { first, count }: Pools,
  heats: Float64Array,
  rates: ArrayLike<number>,
  capacity: number,
): number {
  let largest = Number.NEGATIVE_INFINITY;
  for (let pool = 0; pool < count; pool++) {
    let rising = 0;
    for (let layer = first[pool]; layer < first[pool + 1] - 1; layer++) {
      rising += heats[layer] - capacity * rates[layer];
      if (-rising > largest) largest = -rising;
    }
  }
  return largest;
}

/**
 * Forms the pools anew. First inverted layers are mixed, which conserves heat. Then, among neighbours that are as good as
 * equal, those below that would warm faster than those above form a pool with them. Both are the same pooling of
 * neighbours that violate an order (isotonic regression), so the answer is unique and needs no trial.
 * @param T      [layer] °C, written
 * @param heatsAt  heat into each layer by itself at the mixed temperatures, [layer] W
 */
export function regroup(
  pools: Pools,
  T: number[],
  heatsAt: () => Float64Array,
  layers: number,
): void {
  const { first } = pools;
  let count = 0;
  for (let layer = 0; layer < layers; layer++) {
    count = joinWhile(first, count, layer, 0, T);
  }
  level(T, first, count);
  pools.count = count;
  const heats = heatsAt();

  let formed = 0;
  let runFrom = 0; // the first pool of this run of neighbours that are as good as equal
  for (let layer = 0; layer < layers; layer++) {
    if (layer > 0 && T[layer] - T[layer - 1] > EQUAL) runFrom = formed;
    formed = joinWhile(first, formed, layer, runFrom, heats);
  }
  level(T, first, formed);
  pools.count = formed;
}

/** Adds a layer as a pool, then joins it to those below while their means are out of order; returns the pools there are. */
function joinWhile(
  first: Int32Array,
  count: number,
  layer: number,
  base: number,
  values: ArrayLike<number>,
): number {
  first[count] = layer;
  let after = count + 1;
  first[after] = layer + 1;
  while (after > base + 1 && mean(values, first, after - 2) > mean(values, first, after - 1)) {
    after--;
    first[after] = layer + 1;
  }
  return after;
}

/** Gives all layers of a pool their mean. */
function level(T: number[], first: Int32Array, count: number): void {
  for (let pool = 0; pool < count; pool++) {
    if (first[pool + 1] - first[pool] === 1) continue;
    const shared = mean(T, first, pool);
    for (let layer = first[pool]; layer < first[pool + 1]; layer++) T[layer] = shared;
  }
}

/** Mean of a value over a pool. */
function mean(values: ArrayLike<number>, first: Int32Array, pool: number): number {
  let sum = 0;
  for (let layer = first[pool]; layer < first[pool + 1]; layer++) sum += values[layer];
  return sum / (first[pool + 1] - first[pool]);
}

const EQUAL = 1e-6; // K; levelling this moves less heat than anything that is printed
