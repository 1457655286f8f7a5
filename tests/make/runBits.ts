import { presets, presetVariant } from '../../shared/presets.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { spreadOf } from '../../sim/run/spread.ts';
import { simulateThrown } from '../../sim/run/thrown.ts';
import { toEnd } from '../../sim/run/toEnd.ts';

const THROWN = 'both-at-once, thrown';

/**
 * The runs whose bits are compared, by preset: measured water and a rating, both at once, a draw of hot and cold, and both at
 * once until the switch is thrown to heating first at 10 min.
 */
export const comparedRuns = ['rapid-coil', 'both-at-once', 'partly-used', THROWN] as const;

/**
 * A fingerprint of every bit of a run's trace: FNV-1a over the bytes of the times, the layers and
 * each quantity. The same in every engine that computes the same bits.
 */
export function runBits(key: string): string {
  const preset = presets.find((one) => one.key === (key === THROWN ? 'both-at-once' : key));
  if (preset === undefined) throw new Error(`there is no preset ${key}`);
  const variant = presetVariant(preset);
  const drawn = { ...variant, draw: { ...variant.draw, volume: 0.03 } };
  const { trace } =
    key === THROWN
      ? toEnd(simulateThrown(drawn, [{ at: 600, arrangement: 'heatingFirst' }]))
      : simulateToEnd(drawn);
  const arrays = [trace.time, trace.layerTemperature, ...Object.values(trace.of)];
  return `${trace.samples} samples ${fingerprint(arrays)}`;
}

/** The same of the spread of the first visit by 16 runs: every recovery, index and reading. */
export function spreadBits(): string {
  const spread = toEnd(spreadOf(presetVariant(presets[0]), 16));
  const shares = Float64Array.from(spread.firstOrder, ({ share }) => share);
  const { recoveries, lowReading, medianReading, highReading } = spread;
  return `${spread.reached} of ${spread.runs} runs ${fingerprint([recoveries, shares, lowReading, medianReading, highReading])}`;
}

function fingerprint(arrays: readonly Float64Array[]): string {
  let hash = 0x811c9dc5; // source: FNV-1a, 32 bits, public constants, from memory
  for (const values of arrays) {
    // every NaN the same: which of its bits an engine keeps is left to it
    const plain = values.map((value) => (Number.isNaN(value) ? Number.MAX_VALUE : value));
    for (const byte of new Uint8Array(plain.buffer)) {
      hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
    }
  }
  return hash.toString(16);
}
