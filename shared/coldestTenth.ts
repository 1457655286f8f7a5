import type { Trace } from './result.ts';
import type { Celsius } from './units.ts';

/** Mean temperature of the coldest tenth of the store, which is the lowest, at one sample, °C. */
export function coldestTenth({ layers, layerTemperature }: Trace, sample: number): Celsius {
  const share = layers / 10; // layers, the last one in part
  let sum = 0;
  for (let layer = 0; layer < share; layer++) {
    sum += Math.min(1, share - layer) * layerTemperature[sample * layers + layer];
  }
  return sum / share;
}
