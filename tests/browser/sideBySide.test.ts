import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { comparedApart, comparedLabel } from '../../shared/comparedMeasures.ts';
import { defaultVariant } from '../../shared/fields.ts';
import type { Grid } from '../../shared/grid.ts';
import type { Point } from '../../shared/point.ts';
import { differenceText } from '../../shared/sentences/compare.ts';
import { measured } from '../../shared/sentences/map.ts';
import { type Variant, withSetting } from '../../shared/variant.ts';
import { pointOf } from '../../sim/run/pointOf.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { Bench } from '../../src/state/Bench.svelte.ts';
import { TimeCursor } from '../../src/state/TimeCursor.svelte.ts';
import { VariantRuns } from '../../src/state/VariantRuns.svelte.ts';
import SideBySideView from '../../src/views/SideBySideView.svelte';
import { PointCache } from '../../src/worker/pointCache.ts';
import { type PointPool, pointPool } from '../../src/worker/pointPool.ts';
import { startWorker } from '../../src/worker/startWorker.ts';
import { inventedPool } from '../make/inventedMap.ts';
import { clashes, drawnTexts } from './figures/drawnTexts.ts';

const first = withSetting(defaultVariant('as found'), 'run.layers', 20);
const larger = { ...withSetting(first, 'coil.length', 18), name: 'larger coil' };
const cooler = { ...withSetting(first, 'boiler.hotWaterFlow', 70), name: 'cooler' };
const lower = { ...withSetting(larger, 'stat.setPoint', 58), name: 'both' };
const four = [first, larger, cooler, lower];

const words = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const plain = (node: Element | null | undefined) => words(node?.textContent ?? '');

const CALLS = 'Calls for hot water per day';

/** Invented: every measure is as many as the coil has metres. */
const invented = ({ base, measures }: Pick<Grid, 'base' | 'measures'>): Point => ({
  values: measures.map(() => base.coil.length),
  gaps: measures.map(() => null),
});

/** As `pointOf` has it where a run ended early; no settings are known that end one. */
const early = ({ measures }: Pick<Grid, 'measures'>): Point => ({
  values: measures.map(() => null),
  gaps: measures.map(() => ({
    kind: 'endedEarly',
    outcome: 'tooManySteps',
    sentences: ['The run ended early, after 13 h 20 min: it needed too many steps.'],
  })),
});

let runs: VariantRuns | null = null;
afterEach(() => runs?.dispose());

/** @param pool  computes what takes a run besides the reheat */
async function shown(
  variants: readonly Variant[],
  width = 1440,
  pool: PointPool = pointPool(),
  start = startWorker,
) {
  await page.viewport(width, width < 500 ? 844 : 900);
  const bench = new Bench(variants);
  runs = new VariantRuns(start);
  const variantRuns = runs;
  let visits = 0;
  const { container, unmount } = await render(SideBySideView, {
    result: null,
    day: null,
    bench,
    runs,
    moment: new TimeCursor(1200),
    lesson: null,
    ongo: () => {},
    onbench: () => (visits += 1),
    pool,
    cache: new PointCache(),
  });
  const reheat = () => variantRuns.want(bench.all.variants);
  await reheat();
  const rows = () =>
    [...container.querySelectorAll('tbody tr')].map((row) => [...row.children].map(plain));
  const row = (label: string) => rows().find(([name]) => name === label) ?? [];
  return { container, unmount, bench, reheat, rows, row, visits: () => visits };
}

describe('4 variants', () => {
  test('each cell is what the model gives, and says by how much it differs from A', async () => {
    const { row, container } = await shown(four);
    const found = four.map((variant) => simulateToEnd(variant).measures);
    const cells = found.map(({ recovery }, place) => {
      const minutes = `${((recovery ?? 0) / 60).toFixed(1)} min`;
      const difference = differenceText('recovery', recovery, found[0].recovery);
      return place === 0 ? minutes : `${minutes} ${difference}`.replaceAll('\u00a0', ' ');
    });
    await expect.poll(() => row('Recovery time')).toEqual(['Recovery time', ...cells]);
    const best = 'ABCD'[
      found.findIndex(
        ({ recovery }) => recovery === Math.min(...found.map((each) => each.recovery ?? 1e9)),
      )
    ];
    expect(plain(container.querySelector('h1'))).toMatch(
      new RegExp(`^${best} recovers in [\\d.]+ min, [\\d.]+ min sooner than A\\.$`),
    );
  });

  test('only the 3 settings that differ are listed, before the measures', async () => {
    const { rows } = await shown(four);
    const listed = rows().slice(
      1,
      rows().findIndex(([name]) => name === 'What comes of the reheat'),
    );
    expect(listed).toEqual([
      ['Flow target for hot water', '80 °C', '80 °C', '70 °C', '80 °C'],
      ['Tube length', '12 m', '18 m', '12 m', '18 m'],
      ['Set-point', '60 °C', '60 °C', '60 °C', '58 °C'],
    ]);
  });

  test('4 curves and 4 ribbons are named by their letters', async () => {
    const { container } = await shown(four);
    await expect.poll(() => container.querySelectorAll('svg .line.side').length).toBe(4);
    const names = [...container.querySelectorAll('svg text.end')].map((text) => plain(text)[0]);
    expect(names.toSorted()).toEqual(['A', 'B', 'C', 'D']);
    expect([...container.querySelectorAll('svg text.bold.letter')].map(plain)).toEqual([
      'A',
      'B',
      'C',
      'D',
    ]);
    const dashes = [...container.querySelectorAll('svg .line.side')].map(
      (line) => getComputedStyle(line).strokeDasharray,
    );
    expect(new Set(dashes).size).toBe(4);
  });

  test('a column is named, moved and removed by keyboard, each 1 step of Undo', async () => {
    const { bench } = await shown(four);
    const name = page.getByRole('textbox', { name: 'Name of variant B' });
    await name.fill('18 m of tube');
    await userEvent.keyboard('{Tab}');
    expect([bench.placed[1].variant.name, bench.undoes]).toEqual(['18 m of tube', 'name of B']);
    (page.getByRole('button', { name: 'Move B to the left' }).element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    expect(bench.placed.map(({ variant }) => variant.name)).toEqual([
      '18 m of tube',
      'as found',
      'cooler',
      'both',
    ]);
    (page.getByRole('button', { name: 'Remove D' }).element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    expect([bench.placed.length, bench.undoes]).toEqual([3, 'removal of D']);
    bench.undo();
    bench.undo();
    bench.undo();
    expect(bench.placed.map(({ variant }) => variant)).toEqual(four);
  });

  test('Change takes C in hand and goes to the bench', async () => {
    const { bench, visits } = await shown(four);
    await page.getByRole('button', { name: 'Change C on the bench' }).click();
    expect([bench.inHand, visits()]).toEqual([2, 1]);
  });
});

describe('what takes a run besides the reheat', () => {
  test('4 rows are what the model gives, with the difference from A, from real workers', async () => {
    const { row } = await shown([first, lower]);
    const [a, b] = [first, lower].map((variant) => toEnd(pointOf(variant, comparedApart)).values);
    for (const [index, key] of comparedApart.entries()) {
      const label = comparedLabel(key);
      const texts = [a, b].map((values) => measured(key, values[index]));
      const second = `${texts[1]} ${differenceText(key, b[index], a[index])}`;
      await expect
        .poll(() => row(label), { timeout: 20_000 })
        .toEqual([label, words(texts[0]), words(second)]);
    }
  });

  test('says so while it is computed, and is not begun before both have their reheat', async () => {
    const { pool, asked, work } = inventedPool(invented);
    const { row, bench, reheat } = await shown([first, larger], 1440, pool);
    await expect.poll(() => asked.length).toBe(4);
    expect(row(CALLS)).toEqual([CALLS, 'being computed', 'being computed']);
    expect(row('Recovery time')[2]).toMatch(/min (less|more)$/);
    work();
    await expect.poll(() => row(CALLS)).toEqual([CALLS, '12.0', '18.0 6.0 more']);
    bench.putAt(1, 'coil', withSetting(larger, 'coil.length', 20));
    await expect.poll(() => row('Recovery time')[2]).toBe('being computed');
    expect(asked).toHaveLength(4);
    await reheat();
    await expect.poll(() => asked.length).toBe(6);
  });

  test('a variant that is changed while its day is computed never shows the day of before', async () => {
    const { pool, asked, work } = inventedPool(invented);
    const { row, bench, reheat, unmount } = await shown([first, larger], 1440, pool);
    await expect.poll(() => asked.length).toBe(4);
    const day = asked.find(({ job }) => job.base.coil.length === 18 && job.asked.length > 1);
    bench.putAt(1, 'coil', withSetting(larger, 'coil.length', 20));
    // what a worker had already finished comes after the change
    day?.found([{ key: 0, point: invented({ base: larger, measures: day.job.asked }) }]);
    await expect.poll(() => row(CALLS)).toEqual([CALLS, 'being computed', 'being computed']);
    await reheat();
    await expect.poll(() => asked.length).toBe(8);
    work();
    await expect.poll(() => row(CALLS)).toEqual([CALLS, '12.0', '20.0 8.0 more']);
    bench.undo();
    await expect.poll(() => row(CALLS)).toEqual([CALLS, '12.0', '18.0 6.0 more']);
    expect(asked.filter(({ job }) => job.asked.length > 1 && job.base.coil.length === 18)).toEqual([
      day,
    ]);
    await unmount();
  });

  test('a day that ended early says so where its numbers would be, and the rest is compared', async () => {
    const { pool, asked, work } = inventedPool((grid) =>
      grid.base.coil.length === 18 && grid.measures.length > 1 ? early(grid) : invented(grid),
    );
    const { row } = await shown([first, larger, cooler], 1440, pool);
    await expect.poll(() => asked.length).toBe(6);
    work();
    const sentence = 'The run ended early, after 13 h 20 min: it needed too many steps.';
    await expect.poll(() => row(CALLS)).toEqual([CALLS, '12.0', sentence, '12.0 the same']);
    expect(row('Usable at 40 °C when drawn until the stat calls')[2]).toMatch(/ l [\d ]+ l more$/);
  });

  test('with rooms that are not heated it says that there is no lowest room temperature', async () => {
    const unheated = withSetting(first, 'heating.arrangement', 'hotWaterOnly');
    const { row } = await shown([first, unheated]);
    await expect
      .poll(() => row('Lowest room temperature')[2], { timeout: 20_000 })
      .toBe('No rooms are heated.');
  });

  test('0 workers are left when the view is left', async () => {
    const pool = pointPool();
    const { row, unmount } = await shown([first], 1440, pool);
    await expect.poll(() => row(CALLS)[1], { timeout: 20_000 }).toMatch(/^[\d.]+$/);
    expect(pool.size).toBeGreaterThan(0);
    await unmount();
    expect(pool.size).toBe(0);
  });
});

test('where the worker of the reheats is lost, 0 cells say that they are being computed', async () => {
  const { container, row } = await shown([first, larger], 1440, pointPool(), () => {
    throw new Error('no worker');
  });
  await expect.poll(() => row('Recovery time')).toEqual(['Recovery time', '–', '–']);
  expect(plain(container)).not.toContain('being computed');
});

describe.each([
  [320, 'a small phone'],
  [390, 'a phone'],
  [1440, 'a desk'],
])('at %i pixels, %s', (width) => {
  test('0 rules of access are broken, 0 texts overlap and the page does not scroll sideways', async () => {
    const { container } = await shown(four, width);
    await expect.poll(() => container.querySelectorAll('svg .line.side').length).toBe(4);
    expect((await axe.run(container)).violations.map(({ id }) => id)).toEqual([]);
    expect(clashes(drawnTexts())).toEqual([]);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  });
});

test('a phone shows 2 of 3 at a time, any 2; the same one twice changes their sides', async () => {
  const { row } = await shown([first, larger, cooler], 390);
  await expect.poll(() => row('Tube length')).toEqual(['Tube length', '12 m', '18 m']);
  await page.getByRole('combobox', { name: 'Right' }).selectOptions('2');
  expect(row('Flow target for hot water')).toEqual(['Flow target for hot water', '80 °C', '70 °C']);
  await page.getByRole('combobox', { name: 'Left' }).selectOptions('2');
  expect(row('Flow target for hot water')).toEqual(['Flow target for hot water', '70 °C', '80 °C']);
});

test('settings that do not go together are said in their column, the others still compared', async () => {
  const high = withSetting(first, 'stat.sensorHeight', first.cylinder.height + 0.5);
  const { container, row } = await shown([first, high]);
  await expect.poll(() => row('Recovery time')[1]).toMatch(/min$/);
  expect(row('Recovery time')[2]).toBe('–');
  expect(plain(container.querySelector('thead p'))).toMatch(/\.$/);
});

test('1 variant alone is drawn, and says how to compare', async () => {
  const { container, bench } = await shown([first]);
  await expect.poll(() => container.querySelectorAll('svg .line.side').length).toBe(1);
  expect(plain(container.querySelector('.lead'))).toContain('Add another');
  await page.getByRole('button', { name: 'Add variant B' }).click();
  expect([bench.placed.length, bench.inHand]).toEqual([2, 1]);
});
