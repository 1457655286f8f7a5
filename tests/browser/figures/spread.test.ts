import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/app.css';
import type { FieldPath } from '../../../shared/variant.ts';
import ReheatCurve from '../../../src/figures/ReheatCurve.svelte';
import SpreadFigure from '../../../src/figures/SpreadFigure.svelte';
import { TimeCursor } from '../../../src/state/TimeCursor.svelte.ts';
import FindingMore from '../../../src/views/FindingMore.svelte';
import SpreadRow from '../../../src/views/SpreadRow.svelte';
import WithOpener from '../../make/WithOpener.svelte';
import { inventedSpread } from '../../make/inventedSpread.ts';
import { inventedResult } from '../../make/result.ts';
import { breaches } from './breaches.ts';
import { clashes, drawnTexts } from './drawnTexts.ts';

const spread = inventedSpread(); // 20 runs from 36 to 55 min: the coil explains 60 %
const result = inventedResult(); // satisfied after 40 min

async function drawn(
  width: number,
  wish: Parameters<typeof inventedSpread>[0] = {},
  present = 2400,
) {
  await page.viewport(width, 900);
  const reached: FieldPath[] = [];
  const shown = await render(SpreadFigure, {
    spread: inventedSpread(wish),
    present,
    onreach: (path: FieldPath) => reached.push(path),
  });
  await expect.element(page.getByRole('figure')).toBeVisible();
  return { ...shown, reached };
}

test.each([320, 390, 700, 1100])(
  'at %i pixels it keeps the page, no 2 texts overlap and 0 rules are broken',
  async (width) => {
    const { container } = await drawn(width);
    await expect.poll(() => drawnTexts().length).toBeGreaterThan(5);
    expect(clashes(drawnTexts())).toEqual([]);
    expect(await breaches(container, width)).toEqual([]);
  },
);

test.each(
  [320, 700, 1100].flatMap((width) =>
    [1200, 1800, 6000].map((present) => [width, present] as const),
  ),
)(
  'at %i pixels what is set, at %i s at an edge of the cases, overlaps no text',
  async (width, present) => {
    const { container } = await drawn(width, {}, present);
    await expect.poll(() => drawnTexts().length).toBeGreaterThan(5);
    expect(await breaches(container, width)).toEqual([]);
  },
);

test('5 unknowns stand in order with 60, 20, 10, 2 and 0 %, their bars as long as they say', async () => {
  const { container } = await drawn(390);
  const rows = [...container.querySelectorAll('li')];
  expect(rows.map((row) => row.querySelector('.share')?.textContent)).toEqual([
    '60\u00a0%',
    '20\u00a0%',
    '10\u00a0%',
    '2\u00a0%',
    '0\u00a0%',
  ]);
  const shares = rows.map((row) => {
    const bar = row.querySelector('.bar');
    const inside = bar?.firstElementChild;
    return (inside?.getBoundingClientRect().width ?? 0) / (bar?.clientWidth ?? 1);
  });
  [0.6, 0.2, 0.1, 0.02, 0].forEach((share, row) => {
    expect(Math.abs(shares[row] - share)).toBeLessThan(0.01); // a pixel of a hundred
  });
});

test('the range of the cold leads to its setting, by keyboard', async () => {
  const { reached } = await drawn(390);
  const range = page.getByRole('button', {
    name: /^7 to 13\s°C\s?, set how far incoming cold may be off/,
  });
  (range.element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  expect(reached).toEqual(['unknowns.cold']);
});

test('the table has 10 rows: half of the cases within 45.0 min, all within 55.0', async () => {
  await drawn(390);
  await userEvent.click(page.getByRole('button', { name: 'Table' }));
  const rows = [...document.querySelectorAll('tbody tr')].map((row) =>
    (row.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim(),
  );
  expect(rows).toHaveLength(10);
  expect(rows[4]).toMatch(/^50 ?45\.0 min$/);
  expect(rows[9]).toMatch(/^100 ?55\.0 min$/);
});

test('with 12 of 20 there the table says more than 2 h from 70 % on, and the line ends at 60 %', async () => {
  await drawn(390, { recoveries: spread.recoveries.slice(0, 12), reached: 12, high: null });
  await userEvent.click(page.getByRole('button', { name: 'Table' }));
  const rows = [...document.querySelectorAll('tbody tr')].map((row) => row.textContent ?? '');
  expect(rows.filter((row) => row.includes('more than'))).toHaveLength(4);
});

test.each([
  [
    'none unknown',
    { of: 1, runs: 1, reached: 1, firstOrder: [], recoveries: Float64Array.of(2400) },
  ],
  [
    'none there',
    {
      low: null,
      median: null,
      high: null,
      reached: 0,
      firstOrder: [],
      recoveries: new Float64Array(),
    },
  ],
])('with %s it is still drawn and breaks 0 rules', async (_name, wish) => {
  const { container } = await drawn(390, wish);
  await expect.poll(() => drawnTexts().length).toBeGreaterThan(2);
  expect(clashes(drawnTexts())).toEqual([]);
  expect(await breaches(container, 390)).toEqual([]);
});

test('the reheat curve has 1 hatched band with a spread, and none without', async () => {
  await page.viewport(390, 900);
  const moment = new TimeCursor(1200);
  const { container, rerender } = await render(ReheatCurve, {
    result,
    before: null,
    moment,
    spread,
  });
  await expect.poll(() => container.querySelectorAll('path.spread').length).toBe(1);
  expect(container.querySelector('path.spread')?.getAttribute('d')).toMatch(/^M.+Z$/);
  await expect.element(page.getByText('Hatched: 8 of 10 cases.')).toBeVisible();
  await rerender({ spread: null });
  await expect.poll(() => container.querySelectorAll('path.spread').length).toBe(0);
});

test('the finding says 37 to 54 min once it is known, and the words before it do not move', async () => {
  await page.viewport(1100, 900);
  const { container, rerender } = await render(WithOpener, {
    part: FindingMore as never,
    given: { result, reason: '', spread: null },
  });
  const height = container.getBoundingClientRect().height;
  await rerender({ part: FindingMore as never, given: { result, reason: '', spread } });
  await expect.element(page.getByText(/37 to 54\smin in 8 of 10 cases/)).toBeVisible();
  expect(container.getBoundingClientRect().height).toBe(height);
});

test('a row of another installation says that it is from before the last change', async () => {
  await page.viewport(1100, 900);
  const { container, rerender } = await render(SpreadRow, {
    study: null,
    result,
    onreach: () => {},
  });
  await expect
    .element(page.getByRole('heading', { name: 'What is not known for certain' }))
    .toBeVisible();
  await rerender({ study: inventedSpread({ variant: result.variant }) });
  const stale = () => getComputedStyle(container.querySelector('.stale') as Element).visibility;
  await expect.poll(stale).toBe('hidden');
  const other = { ...result.variant, boiler: { ...result.variant.boiler, output: 9000 } };
  await rerender({ study: inventedSpread({ variant: other }) });
  await expect.poll(stale).toBe('visible');
});
