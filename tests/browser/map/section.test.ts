import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/app.css';
import type { Override } from '../../../shared/grid.ts';
import { withOverrides } from '../../../shared/grid.ts';
import Page from '../../bench/mapPage/Page.svelte';
import { inventedGrid, inventedPool } from '../../make/inventedMap.ts';
import { breaches } from '../figures/breaches.ts';

const { base } = inventedGrid('plane');
const first = [0.85, 1.2].map((area, index) => ({
  letter: 'AB'[index],
  name: ['as found', 'larger coil'][index],
  variant: withOverrides(base, [['coil.area', area]]),
}));

async function shown(width: number, height: number) {
  await page.viewport(width, height);
  const { pool, work, asked, wakes, rests } = inventedPool();
  const set: [number, readonly Override[]][] = [];
  const view = await render(Page, {
    first,
    pool,
    onset: (index: number, settings: readonly Override[]) => void set.push([index, settings]),
  });
  return { ...view, work, asked, wakes, rests, set };
}

async function computed(width: number, height: number) {
  const view = await shown(width, height);
  await userEvent.click(page.getByRole('button', { name: /^Compute 225 points/ }));
  view.work();
  await expect.element(page.getByRole('figure')).toBeVisible();
  await expect.element(page.getByRole('slider', { name: /A Coil area/ })).toBeVisible();
  view.work(); // the variants by themselves
  return view;
}

describe.each([
  [390, 844],
  [1440, 900],
])('the map at %i × %i', (width, height) => {
  test('breaks 0 rules before it is asked for, and 0 once it is drawn', async () => {
    const { container, work } = await shown(width, height);
    expect(await breaches(container, width)).toEqual([]);
    await userEvent.click(page.getByRole('button', { name: /^Compute 225 points/ }));
    work();
    await expect.poll(() => container.querySelectorAll('path.contour').length).toBeGreaterThan(4);
    await expect.element(page.getByRole('slider', { name: /A Coil area/ })).toBeVisible();
    expect(await breaches(container, width)).toEqual([]);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  });

  test('one setting is drawn as a line and the 3 ways of sharing as 3, 1 of them never satisfied', async () => {
    const { container, work } = await computed(width, height);
    const second = page.getByLabelText('Second setting');
    await userEvent.selectOptions(second, 'none');
    work();
    await expect.poll(() => container.querySelectorAll('path.line').length).toBe(1);
    expect(await breaches(container, width)).toEqual([]);
    await userEvent.selectOptions(second, 'heating.arrangement');
    work();
    await expect.poll(() => container.querySelectorAll('path.line').length).toBe(3);
    expect(container.querySelector('figure')?.textContent).toContain(
      'heating first: not satisfied',
    );
    expect(await breaches(container, width)).toEqual([]);
  });
});

test('in view it draws both axes, A and B and 0 lines, and then wakes the workers 1 time', async () => {
  const { container, work, asked, wakes } = await shown(1440, 900);
  await expect.poll(() => container.querySelectorAll('.mark').length).toBe(2);
  await expect.poll(wakes, { timeout: 5000 }).toBe(1);
  expect(asked.map(({ job }) => job.asked)).toEqual([['recovery'], ['recovery']]); // A and B by themselves
  const heading = container.querySelector('figure h2')?.textContent;
  expect(heading).toMatch(/^Recovery time by coil area and flow .*: no point is computed yet$/);
  work(); // the variants by themselves
  await expect
    .poll(() => container.querySelector('.read-out strong')?.textContent)
    .toMatch(/^[\d.]+\smin$/);
  expect(container.querySelectorAll('path.contour')).toHaveLength(0);
  expect(page.getByRole('button', { name: 'Save as CSV' }).elements()).toHaveLength(0);
});

test('the heading says from where to where, and points without a value have pattern, word and reason', async () => {
  const { container, work } = await computed(1440, 900);
  const from = page.getByRole('textbox', { name: /^Flow target for hot water from/ });
  await userEvent.fill(from, '55');
  await userEvent.keyboard('{Enter}');
  work();
  await expect.poll(() => container.querySelectorAll('[data-gap=notReached]').length).toBe(1);
  const texts = [...container.querySelectorAll('svg text')].map((node) => node.textContent);
  expect(texts).toContain('not satisfied');
  const heading = container.querySelector('figure h2')?.textContent ?? '';
  expect(heading).toMatch(/^Recovery time goes from [\d.]+\smin at coil area/);
  const slider = page.getByRole('slider', { name: /A Flow target/ });
  (slider.element() as HTMLElement).focus();
  await userEvent.keyboard('{Home}');
  work();
  await expect
    .poll(() => container.querySelector('.read-out')?.textContent?.replace(/\s+/g, ' '))
    .toContain('not satisfied. The stat was not satisfied within the run.');
});

test('by keyboard: 2 sliders set both settings of A, a step at a time, and B can be chosen instead', async () => {
  const { set } = await computed(1440, 900);
  (page.getByRole('slider', { name: /A Coil area/ }).element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowRight}');
  expect(set[0][0]).toBe(0);
  expect(set[0][1].find(([path]) => path === 'coil.area')?.[1]).toBeCloseTo(0.9, 12);
  (page.getByRole('slider', { name: /A Flow target/ }).element() as HTMLElement).focus();
  await userEvent.keyboard('{PageDown}');
  expect(set[1][1].find(([path]) => path === 'boiler.hotWaterFlow')?.[1]).toBe(70);
  expect(set[1][1].find(([path]) => path === 'coil.area')?.[1]).toBeCloseTo(0.9, 12);
  await userEvent.click(page.getByRole('radio', { name: /^B/ }));
  (page.getByRole('slider', { name: /B Coil area/ }).element() as HTMLElement).focus();
  await userEvent.keyboard('{End}');
  expect(set[2][0]).toBe(1);
  expect(set[2][1].find(([path]) => path === 'coil.area')?.[1]).toBe(1.7);
});

/** Drags a letter by some pixels in 4 moves; the last step is told by `end`. */
function drag(letter: string, x: number, y: number, end: 'pointerup' | 'Escape') {
  const mark = document.querySelector(`[data-letter=${letter}]`) as HTMLElement;
  const box = mark.getBoundingClientRect();
  const at = (share: number) => ({
    clientX: box.x + 22 + share * x,
    clientY: box.y + 22 + share * y,
    pointerId: 1,
    button: 0,
    bubbles: true,
  });
  mark.setPointerCapture = () => {};
  mark.dispatchEvent(new PointerEvent('pointerdown', at(0)));
  for (const share of [0.25, 0.5, 0.75, 1])
    mark.dispatchEvent(new PointerEvent('pointermove', at(share)));
  if (end === 'pointerup') mark.dispatchEvent(new PointerEvent('pointerup', at(1)));
  else window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
}

test('a letter dragged right and down sets both settings once; Escape sets 0', async () => {
  const { set } = await computed(1440, 900);
  drag('A', 120, 60, 'Escape');
  expect(set).toHaveLength(0);
  drag('A', 120, 60, 'pointerup');
  expect(set).toHaveLength(1);
  const settings = Object.fromEntries(set[0][1]);
  expect(settings['coil.area']).toBeGreaterThan(0.9);
  expect(settings['boiler.hotWaterFlow']).toBeLessThan(80);
});

test('a range from 9 m² stands as it was typed with its reason beside it, and the last map stays, marked', async () => {
  const { container, work, asked } = await computed(1440, 900);
  const tasks = asked.length;
  await userEvent.fill(page.getByRole('textbox', { name: /^Coil area from/ }), '9');
  await userEvent.keyboard('{Enter}');
  await expect.element(page.getByText(/Coil area from must be between/)).toBeVisible();
  expect(asked).toHaveLength(tasks);
  await expect.element(page.getByText('From before the last change.')).toBeVisible();
  await userEvent.fill(page.getByRole('textbox', { name: /^Coil area from/ }), '0.6');
  await userEvent.keyboard('{Enter}');
  work();
  await expect
    .poll(() => container.querySelector('figure h2')?.textContent?.replace(/\s/g, ' '))
    .toContain('coil area 0.6 m²');
});

test('Stop keeps what is there, and Go on computes the rest', async () => {
  const { container, work } = await shown(1440, 900);
  await userEvent.click(page.getByRole('button', { name: /^Compute 225 points/ }));
  await expect.element(page.getByRole('button', { name: 'Stop' })).toBeVisible();
  work(100);
  await userEvent.click(page.getByRole('button', { name: 'Stop' }));
  await expect.element(page.getByText(/^Stopped\. The points/)).toBeVisible();
  expect(container.querySelector('.summary')?.textContent).toContain('100 of 225 points');
  await userEvent.click(page.getByRole('button', { name: 'Go on' }));
  work();
  await expect
    .poll(() => container.querySelector('.summary')?.textContent)
    .toContain('All 225 points');
});

test('a drag across the map asks for 0 new maps, and leaving the page ends the workers', async () => {
  const { asked, rests, unmount } = await computed(1440, 900);
  const maps = () => asked.filter(({ lane }) => lane === 'map').length;
  const before = maps();
  drag('A', 80, 40, 'pointerup');
  await new Promise((resolve) => setTimeout(resolve, 50));
  expect(maps()).toBe(before);
  await unmount();
  expect(rests()).toBe(1);
});
