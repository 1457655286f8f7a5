import axe from 'axe-core';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { differenceText } from '../../shared/sentences/compare.ts';
import { withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { clashes, drawnTexts, struckThrough } from './figures/drawnTexts.ts';
import { cooler, first, four, larger, plain, shown } from './sideBySideShown.ts';

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

  test('Enter ends a name, which stays on 1 line of text however many it is shown on', async () => {
    const { bench } = await shown(four);
    const name = page.getByRole('textbox', { name: 'Name of variant C' });
    await name.fill('the coil\nas found');
    (name.element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    expect(bench.placed[2].variant.name).toBe('the coil as found');
    expect(document.activeElement).not.toBe(name.element());
  });

  test('Change takes C in hand and goes to the bench', async () => {
    const { bench, visits } = await shown(four);
    await page.getByRole('button', { name: 'Change C on the bench' }).click();
    expect([bench.inHand, visits()]).toEqual([2, 1]);
  });
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
    expect(struckThrough()).toEqual([]);
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

test('a coil of the catalogue is put into a variant of its own, called after it, in one step', async () => {
  const { bench, row } = await shown([first]);
  const pick = page.getByLabelText('Add variant B with this from the catalogue');
  await pick.selectOptions('Long coil, 18 m of 22 mm copper');
  expect(bench.placed.map(({ variant }) => variant.coil.length)).toEqual([12, 18]);
  expect(bench.variant.name).toBe('Long coil, 18 m of 22 mm copper');
  await expect.poll(() => row('Tube length').slice(0, 3)).toEqual(['Tube length', '12 m', '18 m']);
  await expect
    .element(page.getByLabelText('Add variant C with this from the catalogue'))
    .toHaveDisplayValue('Boiler, coil or cylinder');
  bench.undo();
  expect(bench.placed).toHaveLength(1);
});
