import { describe, expect, test } from 'vitest';
import { playerEnd, playerFrames, throwNotes } from '../../../src/figures/playerFrames.ts';
import { playerRows } from '../../../src/figures/playerLines.ts';
import { playerTable } from '../../../src/figures/playerTable.ts';
import { soFar } from '../../../src/figures/soFar.ts';
import { inventedResult } from '../../make/result.ts';

const result = inventedResult(); // a sample every 30 s, 24 kW to 20 min

describe('a run up to 10 min 15 s', () => {
  const seen = soFar(result, 615);
  test('has no sample and no phase beyond, and ends half way between two samples', () => {
    expect(Math.max(...seen.time)).toBe(615);
    expect(Math.max(...seen.result.phases.map(({ to }) => to))).toBe(615);
    const sensor = seen.of(result.trace.of.sensor);
    const [before, after] = [600, 630].map(
      (at) => result.trace.of.sensor[result.trace.time.indexOf(at)],
    );
    expect(sensor.at(-1)).toBeCloseTo((before + after) / 2, 9); // rounding
  });

  test('draws 4 frames whose scales hold every value so far', () => {
    const rows = playerRows(seen);
    expect(rows.map(({ key }) => key)).toEqual(['air', 'radiators', 'power', 'cylinder']);
    for (const { lines, domain } of rows) {
      for (const { values } of lines) {
        const known = [...values].filter((value) => !Number.isNaN(value));
        expect(Math.min(...known)).toBeGreaterThanOrEqual(domain[0]);
        expect(Math.max(...known)).toBeLessThanOrEqual(domain[1]);
      }
    }
  });

  test('as a table it has minutes 0 to 10, the moment, and a throw at 5.5 min from which the switch reads so', () => {
    const throws = [{ at: 330, arrangement: 'heatingFirst' }] as const;
    const { columns, rows } = playerTable(result, throws, 615, 'priority');
    expect(rows).toHaveLength(13);
    expect(rows.map(([minute]) => minute)).toContain('5.5');
    const at = columns.indexOf('switch');
    const words = rows.map((row) => row[at]);
    expect(words.indexOf('heating first')).toBe(6);
    expect(new Set(words)).toEqual(new Set(['hot water first', 'heating first']));
  });
});

test.each([
  [358, null, 12],
  [1360, null, 12],
  [1872, 820, 24],
] as const)(
  'at %d pixels the frames follow each other, clear of the titles between',
  (width, height, size) => {
    const frames = playerFrames(width, height, size);
    const stack = [frames.air, frames.radiators, frames.strip, frames.power, frames.cylinder];
    for (let one = 1; one < stack.length; one++) {
      expect(stack[one].top - stack[one - 1].bottom).toBeGreaterThanOrEqual(2 * size);
    }
    for (const { top, bottom } of stack) expect(bottom).toBeGreaterThan(top);
    if (height !== null) expect(frames.height).toBeLessThanOrEqual(height);
  },
);

test('the axis ends at 60 min, and at 120 min once the moment is at 61; never after the run', () => {
  expect(playerEnd(3600, 3600, 20_000)).toBe(3600);
  expect(playerEnd(3600, 3660, 20_000)).toBe(7200);
  expect(playerEnd(3600, 3660, 7000)).toBe(7000);
});

test('of 2 throws 5 s apart both leave a mark and 1 its name; one that is still to come leaves none', () => {
  const throws = [
    { at: 600, arrangement: 'heatingFirst' },
    { at: 605, arrangement: 'priority' },
    { at: 2000, arrangement: 'priority' },
  ] as const;
  const notes = throwNotes(throws, 1000, (at) => at / 10, { left: 34, right: 300 }, 12);
  expect(notes.map(({ name }) => name)).toEqual(['heating first', '']);
});
