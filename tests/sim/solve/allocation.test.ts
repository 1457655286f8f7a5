import { getHeapStatistics } from 'node:v8';
import { describe, expect, test } from 'vitest';
import { makePlant } from '../../../sim/plant/plant.ts';
import { System } from '../../../sim/solve/system.ts';
import { idealVariant } from '../../make/idealVariant.ts';

const BATCH = 100; // calls, so few that most batches pass without a clean-up

/** Bytes taken from the heap for each call: the median over 2000 batches of 100 calls. */
function bytesPerCall(act: () => void): number {
  for (let i = 0; i < 100_000; i++) act(); // so that it is compiled
  const growth: number[] = [];
  for (let batch = 0; batch < 2000; batch++) {
    const before = getHeapStatistics().used_heap_size;
    for (let i = 0; i < BATCH; i++) act();
    growth.push(getHeapStatistics().used_heap_size - before);
  }
  return growth.sort((a, b) => a - b)[1000] / BATCH;
}

/** Heated at its flow limit and drawn from, its coil of a known conductance. */
function running() {
  const system = new System(makePlant(idealVariant({ layers: 48 })));
  const { state, memory } = system.start();
  const y = [...state];
  system.resume(memory, y);
  system.open({ at: 0, volume: 1, flow: 1e-4, name: 'draw' }, y);
  return { system, y };
}

describe('200 000 calls of the derivative make no objects', () => {
  // Node hands a number from one function to another in 16 bytes of the heap where it does not merge
  // the two: 5 times when all goes well, 50 times when the machine is busy. 1000 bytes leave 12 more.
  const bar = 1000;
  // an array of 48 numbers of 8 bytes takes 384 and more; half of that is beyond what a few such numbers take
  const array = 192;

  test('they take less than 1000 bytes each', () => {
    const { system, y } = running();
    expect(bytesPerCall(() => system.derivative.at(y))).toBeLessThan(bar);
  });

  test('a planted version that copies the rates of 48 layers is seen', () => {
    const { system, y } = running();
    const kept: { rates: number[] } = { rates: [] };
    const planted = () => {
      kept.rates = system.derivative.at(y).slice(0, 48);
    };
    expect(bytesPerCall(planted) - bytesPerCall(() => system.derivative.at(y))).toBeGreaterThan(
      array,
    );
  });
});
