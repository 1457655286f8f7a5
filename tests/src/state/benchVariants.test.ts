import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { parseNumber } from '../../../shared/problems.ts';
import { fieldAt, type NumberField } from '../../../shared/fields.ts';
import { withSetting } from '../../../shared/variant.ts';
import { Bench } from '../../../src/state/Bench.svelte.ts';
import { Entries } from '../../../src/state/Entries.svelte.ts';

const first = defaultVariant('as found');
const names = (bench: Bench) => bench.placed.map(({ variant }) => variant.name);
const outputs = (bench: Bench) => bench.placed.map(({ variant }) => variant.boiler.output / 1000);

describe('up to 4 variants', () => {
  test('a copy of A is B, in hand, with a name of its own; what is set goes to B alone', () => {
    const bench = new Bench(withSetting(first, 'boiler.output', 20_000));
    bench.copy(0);
    bench.set('boiler.output', 30_000);
    expect([bench.inHand, outputs(bench), names(bench)]).toEqual([
      1,
      [20, 30],
      ['as found', 'as found (2)'],
    ]);
    bench.copy(1);
    expect([names(bench)[2], bench.nextLetter]).toEqual(['as found (3)', 'D']);
  });

  test('a fifth is not taken up, and the last is not removed', () => {
    const bench = new Bench(first);
    for (let copies = 0; copies < 5; copies++) bench.copy(0);
    expect([bench.placed.length, bench.nextLetter]).toEqual([4, null]);
    for (let times = 0; times < 5; times++) bench.remove(0);
    expect([bench.placed.length, bench.inHand]).toEqual([1, 0]);
  });

  test('adding, removing, naming and changing places are 4 steps, undone and done again with who was in hand', () => {
    const bench = new Bench(first);
    const stands = [bench.all];
    const act = (what: () => void) => {
      what();
      stands.push(bench.all);
    };
    act(() => bench.copy(0));
    act(() => bench.rename(1, 'larger coil'));
    act(() => bench.swap(0));
    act(() => bench.remove(0));
    expect(names(bench)).toEqual(['as found']);
    const labels: (string | null)[] = [];
    for (let step = 3; step >= 0; step--) {
      labels.push(bench.undoes);
      bench.undo();
      expect(bench.all).toEqual(stands[step]);
    }
    expect(labels).toEqual(['removal of A', 'order of A and B', 'name of B', 'copy of A']);
    for (let step = 1; step <= 4; step++) {
      bench.redo();
      expect(bench.all).toEqual(stands[step]);
    }
  });

  test('who is in hand stays in hand when 2 change places or one before it goes', () => {
    const bench = new Bench([first, { ...first, name: 'second' }, { ...first, name: 'third' }], 1);
    bench.swap(0);
    expect([bench.variant.name, bench.inHand]).toEqual(['second', 0]);
    bench.swap(0);
    bench.remove(0);
    expect([bench.variant.name, bench.inHand]).toEqual(['second', 0]);
    bench.remove(0);
    expect(bench.variant.name).toBe('third');
  });

  test('taking another in hand lets go of a handle, puts back what it moved, and is no step', () => {
    const bench = new Bench([first, first]);
    bench.move('stat.sensorHeight', 0.9);
    bench.take(1);
    expect([bench.isMoving, bench.undoes]).toEqual([false, null]);
    expect(bench.placed[0].variant).toBe(first);
    bench.take(7);
    expect(bench.inHand).toBe(1);
  });
});

test('a text that was refused in A waits there while B is in hand, at any place', () => {
  const bench = new Bench(first);
  const entries = new Entries(bench);
  const output = fieldAt('boiler.output') as NumberField;
  expect('problem' in parseNumber('lots', output, first)).toBe(true);
  entries.enter(output, 'lots');
  bench.copy(0);
  expect([entries.typed('boiler.output'), entries.problems.length]).toEqual([null, 0]);
  bench.swap(0);
  bench.take(1);
  expect([entries.typed('boiler.output'), entries.problems.length]).toEqual(['lots', 1]);
});
