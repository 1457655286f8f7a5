import { expect, test } from 'vitest';
import { defaultVariant, fieldAt } from '../../../shared/fields.ts';
import type { NumberField } from '../../../shared/fields.ts';
import { Bench } from '../../../src/state/Bench.svelte.ts';
import { withSetting } from '../../../shared/variant.ts';
import { Entries } from '../../../src/state/Entries.svelte.ts';

const sensor = fieldAt('stat.sensorHeight') as NumberField;

function made() {
  const bench = new Bench(defaultVariant('as found'));
  return { bench, entries: new Entries(bench) };
}

test('0,6 m is taken as 0.6 m', () => {
  const { bench, entries } = made();
  entries.enter(sensor, '0,6 m');
  expect(bench.variant.stat.sensorHeight).toBe(0.6);
  expect(entries.problems).toEqual([]);
});

test('9 m in a cylinder of 1.32 m keeps the text, the problem and the 0.44 m before it', () => {
  const { bench, entries } = made();
  entries.enter(sensor, '9');
  expect(bench.variant.stat.sensorHeight).toBe(0.44);
  expect(entries.typed('stat.sensorHeight')).toBe('9');
  expect(entries.problem('stat.sensorHeight')).toMatch(/^Sensor height .*1\.32.*m/);
  expect(entries.problems).toHaveLength(1);
});

test('a refused 9 stays refused while 9. is typed over it, and is gone at 0.9', () => {
  const { bench, entries } = made();
  entries.enter(sensor, '9');
  entries.retype(sensor, '9.');
  expect(entries.problems).toHaveLength(1);
  entries.retype(sensor, '0.9');
  expect(entries.problems).toEqual([]);
  expect(bench.variant.stat.sensorHeight).toBe(0.44);
});

test('typing 0.9. over nothing refused says nothing before it is left', () => {
  const { entries } = made();
  entries.retype(sensor, '0.9.');
  expect(entries.problems).toEqual([]);
});

test('1 step up after a refused 9 forgets the 9', () => {
  const { bench, entries } = made();
  entries.enter(sensor, '9');
  entries.set('stat.sensorHeight', 0.46);
  expect(entries.typed('stat.sensorHeight')).toBeNull();
  expect([bench.variant.stat.sensorHeight, entries.problems.length]).toEqual([0.46, 0]);
});

test('a coil top of 0.06 m below its bottom of 0.08 m is 1 problem, at the coil top', () => {
  const { entries } = made();
  entries.set('coil.top', 0.06);
  expect(entries.problem('coil.top')).toContain('0.08');
  expect(entries.problems.some(({ path }) => path === 'coil.top')).toBe(true);
});

test('a refused text stays while other settings change, and gives way once its own has become another', () => {
  const { bench, entries } = made();
  entries.enter(sensor, 'high up');
  bench.set('boiler.output', 20_000);
  expect(entries.typed('stat.sensorHeight')).toBe('high up');
  bench.replace('another height', withSetting(bench.variant, 'stat.sensorHeight', 0.7));
  expect(entries.typed('stat.sensorHeight')).toBeNull();
  expect(entries.problems).toEqual([]);
});
