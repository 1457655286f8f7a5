import type { Trace } from './result.ts';
import type { Celsius, Seconds } from './units.ts';

/**
 * Index of the last sample at or before a moment; 0 before the first.
 * @param time     [sample], s, never falling
 * @param seconds  s
 */
export function sampleAt(time: Float64Array, seconds: Seconds): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (time[middle] <= seconds) low = middle + 1;
    else high = middle;
  }
  return Math.max(0, low - 1);
}

/**
 * A sampled quantity at a moment, straight between two samples; the unit of the column. Where the
 * next sample has no value, or none follows, the last one before the moment.
 * @param time     [sample], s
 * @param column   [sample]
 * @param seconds  s
 */
export function valueAt(time: Float64Array, column: Float64Array, seconds: Seconds): number {
  const before = sampleAt(time, seconds);
  const after = Math.min(before + 1, time.length - 1);
  const share = shareBetween(time, before, after, seconds);
  const step = share * (column[after] - column[before]);
  return Number.isNaN(step) ? column[before] : column[before] + step;
}

/** The layers at a moment, [layer] °C, straight between two samples. */
export function profileAt(trace: Trace, seconds: Seconds): Celsius[] {
  const { time, layers, layerTemperature: T } = trace;
  const before = sampleAt(time, seconds);
  const after = Math.min(before + 1, trace.samples - 1);
  const share = shareBetween(time, before, after, seconds);
  return Array.from({ length: layers }, (_, layer) => {
    const here = T[before * layers + layer];
    return here + share * (T[after * layers + layer] - here);
  });
}

/** The layer at a share of the height of a store, °C; beyond its ends that of the end. */
export function layerAt(layers: readonly Celsius[], share: number): Celsius {
  const layer = Math.floor(share * layers.length);
  return layers[Math.min(layers.length - 1, Math.max(0, layer))];
}

function shareBetween(time: Float64Array, before: number, after: number, seconds: Seconds): number {
  const span = time[after] - time[before];
  return span > 0 ? Math.min(1, Math.max(0, (seconds - time[before]) / span)) : 0;
}
