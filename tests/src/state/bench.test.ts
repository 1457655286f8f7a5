import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { Bench } from '../../../src/state/Bench.svelte.ts';

const bench = () => new Bench(defaultVariant('as found'));

test('120 steps are all undone, one at a time, and all done again', () => {
  const it = bench();
  const first = it.variant;
  for (let step = 1; step <= 120; step++) it.set('boiler.output', 1000 * step + 500);
  const last = it.variant;
  for (let step = 119; step >= 1; step--) {
    it.undo();
    expect(it.variant.boiler.output).toBe(1000 * step + 500);
  }
  it.undo();
  expect(it.variant).toBe(first);
  expect(it.undoes).toBeNull();
  for (let step = 1; step <= 120; step++) it.redo();
  expect(it.variant).toBe(last);
  expect(it.redoes).toBeNull();
});

test('Undo is called sensor height after the sensor moved to 0.6 m, and Redo after it was undone', () => {
  const it = bench();
  it.set('stat.sensorHeight', 0.6);
  expect([it.undoes, it.redoes]).toEqual(['sensor height', null]);
  it.undo();
  expect([it.undoes, it.redoes]).toEqual([null, 'sensor height']);
});

test('a drag through 40 heights is 1 step back to 0.44 m', () => {
  const it = bench();
  const before = it.variant;
  for (let i = 0; i < 40; i++) it.move('stat.sensorHeight', 0.44 + 0.02 * i);
  expect(it.isMoving).toBe(true);
  expect(it.undoes).toBeNull();
  it.drop('stat.sensorHeight', 1.2);
  expect([it.variant.stat.sensorHeight, it.isMoving]).toEqual([1.2, false]);
  it.undo();
  expect(it.variant).toBe(before);
  expect(it.undoes).toBeNull();
});

test('a drag that is cancelled leaves 0 steps and 0.44 m', () => {
  const it = bench();
  const before = it.variant;
  it.move('stat.sensorHeight', 0.9);
  it.cancel();
  expect(it.variant).toBe(before);
  expect([it.undoes, it.isMoving]).toEqual([null, false]);
});

test('a drag let go where it began is 0 steps', () => {
  const it = bench();
  it.move('stat.sensorHeight', 0.9);
  it.drop('stat.sensorHeight', 0.44);
  expect([it.variant.stat.sensorHeight, it.undoes]).toEqual([0.44, null]);
});

test('setting what already stands is 0 steps', () => {
  const it = bench();
  it.set('boiler.output', it.variant.boiler.output);
  expect(it.undoes).toBeNull();
});

test('a new step forgets the 2 that were undone', () => {
  const it = bench();
  it.set('boiler.output', 10_000);
  it.set('boiler.output', 11_000);
  it.undo();
  it.undo();
  it.set('stat.differential', 3);
  expect(it.redoes).toBeNull();
  it.redo();
  expect([it.variant.boiler.output, it.variant.stat.differential]).toEqual([24_000, 3]);
});

test('an example of 18 settings or more is 1 step', () => {
  const it = bench();
  const before = it.variant;
  const small = presets.find(({ key }) => key === 'small-vented');
  if (!small) throw new Error('no example small-vented');
  expect(small.sets.length).toBeGreaterThanOrEqual(18);
  it.replace(`example ${small.title}`, presetVariant(small));
  expect(it.undoes).toBe('example Small vented cylinder, old coil');
  it.undo();
  expect(it.variant).toBe(before);
});
