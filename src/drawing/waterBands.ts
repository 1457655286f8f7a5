import type { Celsius } from '../../shared/units.ts';

/** Neighbouring layers of nearly one temperature; layers are numbered from the bottom. */
export interface WaterBand {
  readonly from: number;
  /** One past the highest layer. */
  readonly to: number;
  /** Mean, °C. */
  readonly mean: Celsius;
}

/**
 * Layers run together where they share a temperature to half a kelvin, for painting.
 * @param layers  [layer] °C
 */
export function paintedBands(layers: readonly Celsius[]): WaterBand[] {
  const bands: { from: number; to: number; mean: Celsius }[] = [];
  layers.forEach((temperature, layer) => {
    const last = bands.at(-1);
    if (last !== undefined && Math.abs(last.mean - temperature) < 0.25) last.to = layer + 1;
    else bands.push({ from: layer, to: layer + 1, mean: temperature });
  });
  return bands;
}

/**
 * Layers run together for printing a number on each band: the two nearest in temperature join until
 * at most `most` are left, two kelvins apart. A band less than `least` layers high, which holds no
 * number, joins a neighbour within six kelvins of it and else stays by itself.
 * @param layers  [layer] °C
 * @param least   height of the smallest band that holds a number, layers
 */
export function numberedBands(layers: readonly Celsius[], least: number, most = 5): WaterBand[] {
  const bands: WaterBand[] = layers.map((mean, layer) => ({ from: layer, to: layer + 1, mean }));
  while (bands.length > 1) {
    let place = 0;
    let nearest = Infinity;
    for (let index = 1; index < bands.length; index += 1) {
      const gap = Math.abs(bands[index].mean - bands[index - 1].mean);
      if (gap < nearest) {
        nearest = gap;
        place = index;
      }
    }
    if (bands.length <= most && nearest >= 2) {
      const small = bands.findIndex(
        (band, index) => band.to - band.from < least && gapToNeighbour(bands, index) < 6,
      );
      if (small < 0) break;
      place = nearerNeighbour(bands, small);
    }
    bands.splice(place - 1, 2, joined(bands[place - 1], bands[place]));
  }
  return bands;
}

/** Index of the upper one of a band and the neighbour that is nearer to it in temperature. */
function nearerNeighbour(bands: readonly WaterBand[], index: number): number {
  if (index === 0) return 1;
  if (index === bands.length - 1) return index;
  const below = Math.abs(bands[index].mean - bands[index - 1].mean);
  const above = Math.abs(bands[index + 1].mean - bands[index].mean);
  return below < above ? index : index + 1;
}

function gapToNeighbour(bands: readonly WaterBand[], index: number): number {
  const place = nearerNeighbour(bands, index);
  return Math.abs(bands[place].mean - bands[place - 1].mean);
}

function joined(lower: WaterBand, upper: WaterBand): WaterBand {
  const [low, high] = [lower.to - lower.from, upper.to - upper.from];
  return {
    from: lower.from,
    to: upper.to,
    mean: (lower.mean * low + upper.mean * high) / (low + high),
  };
}
