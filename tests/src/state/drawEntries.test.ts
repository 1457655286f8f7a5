import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { drawColumns } from '../../../shared/fields/ownDraw.ts';
import { exampleDraws, newDraw } from '../../../shared/ownDraws.ts';
import type { OwnDraw } from '../../../shared/variant.ts';
import { Bench } from '../../../src/state/Bench.svelte.ts';
import { Entries } from '../../../src/state/Entries.svelte.ts';

const columnOf = (key: keyof OwnDraw) => {
  const column = drawColumns.find((each) => each.key === key);
  if (!column) throw new Error(`no column ${key}`);
  return column;
};
const [name, at, volume, mixedTo] = (['name', 'at', 'volume', 'mixedTo'] as const).map(columnOf);
const plain = (text: string | null) => text?.replaceAll('\u00a0', ' ');

/** The example on a day of its own: shower, washing up, bath. */
function made() {
  const bench = new Bench(defaultVariant('as found'));
  bench.set('day.pattern', 'own');
  const entries = new Entries(bench);
  return { bench, entries, draws: entries.draws, rows: () => bench.variant.ownDraws };
}

test('1,5 l of washing up are taken as 1.5 l in 1 step, called draw 2: litres, and undone', () => {
  const { bench, entries, draws, rows } = made();
  draws.enter(1, volume, '1,5 l');
  expect(rows()[1]).toEqual({ ...exampleDraws[1], volume: 1.5e-3 });
  expect([rows()[0], rows()[2]]).toEqual([exampleDraws[0], exampleDraws[2]]);
  expect([bench.undoes, entries.problems]).toEqual(['draw 2: litres', []]);
  bench.undo();
  expect(rows()).toBe(exampleDraws);
});

test('entering what stands there, 12 l or 13:00, is 0 steps', () => {
  const { bench, draws } = made();
  const before = bench.undoes;
  draws.enter(1, volume, '12.0');
  draws.enter(1, at, '13');
  expect(bench.undoes).toBe(before);
});

test('5000 l keep the text, 1 problem with its place, and the 12 l before it', () => {
  const { bench, entries, draws, rows } = made();
  draws.enter(1, volume, '5000');
  expect(rows()).toBe(exampleDraws);
  expect(draws.typed(1, volume)).toBe('5000');
  expect(draws.typed(0, volume)).toBeNull();
  const sentence = 'Volume of draw 2 must be between 0.1 l and 1000 l; it is 5000 l.';
  expect(plain(draws.problem(1, volume))).toBe(sentence);
  expect(draws.problem(1, at)).toBeNull();
  expect(entries.problems.map(({ field, path }) => [field, path])).toEqual([
    ['ownDraws[1].volumeLitres', null],
  ]);
  expect(bench.undoes).toBe('hot water is drawn by');
});

test('a refused 5000 stays while 5000. is typed over it, is gone at 50, and comes back when left at 5001', () => {
  const { entries, draws } = made();
  draws.enter(1, volume, '5000');
  draws.retype(1, volume, '5000.');
  expect(entries.problems).toHaveLength(1);
  draws.retype(1, volume, '50');
  expect(entries.problems).toEqual([]);
  draws.retype(1, volume, '5001');
  expect(entries.problems).toEqual([]);
  draws.enter(1, volume, '5001');
  expect(entries.problems).toHaveLength(1);
});

test('a refused text that is restored leaves 12 l and 0 problems; one entered again is 1 problem still', () => {
  const { entries, draws, rows } = made();
  draws.enter(1, volume, 'lots');
  draws.enter(1, volume, 'many');
  expect(entries.problems).toHaveLength(1);
  draws.restore(1, volume);
  expect([entries.problems, draws.typed(1, volume), rows()]).toEqual([[], null, exampleDraws]);
});

test('refused texts of 2 cells of draw 2 follow it to 3 when draw 1 is copied, and back to 1 and 2 by removals', () => {
  const { entries, draws } = made();
  draws.enter(1, volume, 'lots');
  draws.enter(1, at, 'noon');
  const places = () => entries.problems.map(({ field }) => field).sort();
  draws.copy(0);
  expect(places()).toEqual(['ownDraws[2].atHours', 'ownDraws[2].volumeLitres']);
  expect(plain(draws.problem(2, volume))).toContain('Volume of draw 3 needs a number');
  draws.remove(0);
  expect(places()).toEqual(['ownDraws[1].atHours', 'ownDraws[1].volumeLitres']);
  draws.copy(1);
  expect(places()).toEqual(['ownDraws[1].atHours', 'ownDraws[1].volumeLitres']);
  draws.remove(1);
  expect(places()).toEqual([]);
});

test('a draw is added last as 20 l at 12:00, copied right below, removed: 1 step each, with its name', () => {
  const { bench, draws, rows } = made();
  draws.add();
  expect(rows()).toEqual([...exampleDraws, newDraw]);
  expect([newDraw.name, newDraw.at, newDraw.volume]).toEqual(['', 43_200, 0.02]);
  expect(bench.undoes).toBe('a draw added');
  draws.copy(0);
  expect(rows().map((row) => row.name)).toEqual(['Shower', 'Shower', 'Washing up', 'Bath', '']);
  expect(bench.undoes).toBe('shower copied');
  draws.remove(3);
  expect(bench.undoes).toBe('bath removed');
  draws.remove(3);
  expect(bench.undoes).toBe('draw 4 removed');
  expect(rows().map((row) => row.name)).toEqual(['Shower', 'Shower', 'Washing up']);
  for (let step = 0; step < 4; step += 1) bench.undo();
  expect(rows()).toBe(exampleDraws);
});

test('a table of 60 draws takes no 61st, added or copied, and 0 steps are made', () => {
  const { bench, draws, rows } = made();
  for (let row = 3; row < 60; row += 1) draws.add();
  const full = rows();
  expect(full).toHaveLength(60);
  draws.add();
  draws.copy(0);
  expect(rows()).toBe(full);
  bench.undo();
  expect(rows()).toHaveLength(59);
});

test('3 draws may be removed to none, and that is no problem', () => {
  const { entries, draws, rows } = made();
  for (let row = 0; row < 3; row += 1) draws.remove(0);
  expect([rows(), entries.problems]).toEqual([[], []]);
});

test('35 °C of incoming cold is 1 problem beside a tap of 30 °C, told once while another text is refused there', () => {
  const { bench, entries, draws } = made();
  draws.enter(0, mixedTo, '30');
  bench.set('draw.incomingCold', 35);
  expect(plain(draws.problem(0, mixedTo))).toBe(
    'Temperature at the tap of draw 1 must be at least 35 °C, the incoming cold; it is 30 °C.',
  );
  draws.enter(0, mixedTo, 'hot');
  expect(entries.problems).toHaveLength(1);
  expect(plain(draws.problem(0, mixedTo))).toContain('“hot” is not one');
});

test('a name of 41 characters is refused, and forgotten with all else that was refused in 2 fields', () => {
  const { entries, draws } = made();
  draws.enter(2, name, 'x'.repeat(41));
  draws.enter(2, at, '');
  expect(entries.problems).toHaveLength(2);
  entries.forget();
  expect(entries.problems).toEqual([]);
});
