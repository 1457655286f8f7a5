import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/app.css';
import type { DayRun } from '../../../shared/day.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import { type FieldPath, type Variant, withSetting } from '../../../shared/variant.ts';
import DayText from '../../../src/explain/DayText.svelte';
import Delivery from '../../../src/explain/Delivery.svelte';
import Hygiene from '../../../src/explain/Hygiene.svelte';
import Day from '../../../src/figures/Day.svelte';
import WithOpener from '../../make/WithOpener.svelte';
import { dayToEnd, deliveredToEnd } from '../../make/dayToEnd.ts';
import { breaches } from './breaches.ts';
import { drawnTexts } from './drawnTexts.ts';

type Sets = readonly (readonly [FieldPath, number | string])[];
const withSets = (variant: Variant, sets: Sets) =>
  sets.reduce((v, [path, value]) => withSetting(v, path, value), variant);

const base = defaultVariant('day');
const small: Sets = [
  ['cylinder.volume', 0.08],
  ['coil.coilDiameter', 0.2],
];
const timed: Sets = [...small, ['programme.hotWater', 'timed']];
const cold = dayToEnd(withSets(base, [...timed, ['day.pattern', 'XXL']]));
const week = dayToEnd(
  withSets(base, [...timed, ['day.showers', 6], ['day.repeat', 'stated'], ['day.days', 7]]),
);
const still = dayToEnd({
  ...withSets(base, [
    ['day.pattern', 'own'],
    ['heating.arrangement', 'hotWaterOnly'],
    ['immersion.used', 'withBoiler'],
  ]),
  ownDraws: [],
});
const warm = dayToEnd(withSets(base, [['day.pasteurise', 'once']]));
const stopped = endedAt(warm, 48_000);

const days: readonly (readonly [string, DayRun])[] = [
  ['load profile XXL from 80 l, at set times', cold],
  ['7 days in which 70 of 105 draws run cold', week],
  ['0 draws, hot water only, with an immersion heater', still],
  ['a household from 210 l', warm],
  ['a run that ends at 13:20', stopped],
];

/** The same day, of which nothing is known after a moment. */
function endedAt(day: DayRun, at: number): DayRun {
  const { time, layers, layerTemperature, of } = day.trace;
  const samples = time.findIndex((each) => each > at);
  const entries = Object.entries(of).map(([key, values]) => [key, values.slice(0, samples)]);
  return {
    ...day,
    outcome: { kind: 'stopped', at },
    isSteady: false,
    trace: {
      samples,
      layers,
      time: time.slice(0, samples),
      layerTemperature: layerTemperature.slice(0, samples * layers),
      of: Object.fromEntries(entries) as DayRun['trace']['of'],
    },
    phases: day.phases.filter(({ to }) => to <= at),
    marks: day.marks.filter((mark) => mark.at <= at),
    draws: day.draws.filter(({ to }) => to <= at),
  };
}

async function drawn(day: DayRun, width = 390) {
  await page.viewport(width, 900);
  const shown = await render(Day, { study: { kind: 'day', day } });
  await expect.element(page.getByRole('slider', { name: 'Time of day' })).toBeVisible();
  return shown;
}

describe.each([320, 390, 1440])('at %d pixels', (width) => {
  test.each(days)(
    '%s: no 2 texts overlap, none leaves the page, type is 12 px or more, 0 rules broken',
    async (_name, day) => {
      const { container } = await drawn(day, width);
      await userEvent.click(page.getByRole('button', { name: 'Table' }));
      expect(drawnTexts().length).toBeGreaterThan(15);
      expect(await breaches(container, width)).toEqual([]);
      const sizes = [...container.querySelectorAll('svg text, dt, dd b, dd small, p, td, th')].map(
        (node) => Number.parseFloat(getComputedStyle(node).fontSize),
      );
      expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    },
  );

  test.each([
    ['the numbers of a day', DayText],
    ['its hygiene', Hygiene],
  ])('%s break 0 rules and keep the page', async (_name, Text) => {
    await page.viewport(width, 900);
    const { container } = await render(WithOpener, { part: Text, given: { day: cold } });
    expect(await breaches(container, width)).toEqual([]);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  });
});

test('each draw is a bar of 2 pixels or more; those that failed have a flag and are told cold or short', async () => {
  const { container } = await drawn(cold);
  const bars = [...container.querySelectorAll('rect.drawing-off, rect.failed')];
  expect(bars).toHaveLength(cold.draws.length);
  for (const bar of bars) expect(Number(bar.getAttribute('width'))).toBeGreaterThanOrEqual(2);
  const { failedDraws } = cold.measures;
  expect(failedDraws).toBeGreaterThanOrEqual(5);
  expect(container.querySelectorAll('rect.failed')).toHaveLength(failedDraws);
  expect(container.querySelectorAll('path.flag')).toHaveLength(failedDraws);
  const words = drawnTexts().filter(({ text }) => /cold|short/.test(text));
  expect(words.length).toBeGreaterThanOrEqual(1);
  for (const { text } of words) expect(text.length).toBeLessThanOrEqual(50);
});

test('hot water at set times is 14 bands in 7 days, told in a word; always allowed it is 0', async () => {
  const { container, unmount } = await drawn(week, 1440);
  expect(container.querySelectorAll('rect.band')).toHaveLength(14);
  expect(drawnTexts().map(({ text }) => text)).toContain('allowed');
  await unmount();
  const other = await drawn(warm, 1440);
  expect(other.container.querySelectorAll('rect.band')).toHaveLength(0);
});

test('rooms are drawn where they are heated: 5 lines and a reading, else 4 and none', async () => {
  const { container, unmount } = await drawn(warm);
  expect(container.querySelectorAll('path.line')).toHaveLength(5);
  expect(container.querySelector('.read-out')?.textContent).toContain('rooms');
  await unmount();
  const alone = await drawn(still);
  expect(alone.container.querySelectorAll('path.line')).toHaveLength(4);
  expect(alone.container.querySelector('.read-out')?.textContent).not.toContain('rooms');
});

test('the moment begins where the least is usable; arrows move it 1 min, the page keys 60 min', async () => {
  const { container } = await drawn(warm);
  const slider = page.getByRole('slider', { name: 'Time of day' });
  const at = () => slider.element().getAttribute('aria-valuetext') ?? '';
  const minute = Math.round(warm.measures.leastUsableAt / 60);
  const clock = (of: number) =>
    `${String(Math.floor(of / 60)).padStart(2, '0')}:${String(of % 60).padStart(2, '0')}`;
  expect(at()).toBe(clock(minute));
  (slider.element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowRight}');
  expect(at()).toBe(clock(minute + 1));
  await userEvent.keyboard('{PageDown}{PageDown}');
  expect(at()).toBe(clock(minute + 1 - 120));
  await expect.poll(() => container.querySelector('.read-out b')?.textContent).toBe(at());
  await userEvent.keyboard('{End}');
  expect(at()).toBe('24:00');
});

test('no reading moves when the moment does', async () => {
  const { container } = await drawn(warm, 1440);
  const lefts = () =>
    [...container.querySelectorAll('.read-out dd')].map(
      (node) => node.getBoundingClientRect().left,
    );
  const before = lefts();
  expect(before).toHaveLength(7);
  (page.getByRole('slider').element() as HTMLElement).focus();
  await userEvent.keyboard('{Home}');
  await expect.poll(() => container.querySelector('.read-out b')?.textContent).toBe('00:00');
  expect(lefts()).toEqual(before);
});

test('of 105 draws, of which 70 failed, the table has 30 rows and a caption that says which', async () => {
  const { container } = await drawn(week);
  await userEvent.click(page.getByRole('button', { name: 'Table' }));
  await expect.element(page.getByRole('table')).toBeVisible();
  expect(container.querySelectorAll('tbody tr')).toHaveLength(30);
  expect(container.querySelector('caption')?.textContent).toBe(
    '30 of 105 draws: the largest of 70 that failed.',
  );
});

test('7 days of 5000 samples are drawn in paths of 2 points a pixel at most', async () => {
  expect(week.trace.samples).toBeGreaterThan(3000);
  const { container } = await drawn(week, 1440);
  for (const line of container.querySelectorAll('path.line')) {
    const points = (line.getAttribute('d') ?? '').split(/[ML]/).length - 1;
    // and as many again where a line is parted
    expect(points).toBeLessThanOrEqual(2 * 1440);
  }
});

test('water that leaves the tap above 44 °C has its caution, a household at 41 and 42 °C has none', async () => {
  const hot = await render(WithOpener, { part: Hygiene, given: { day: cold } });
  expect(hot.container.querySelector('.caution')?.textContent).toContain(
    'thermostatic mixing valve',
  );
  await hot.unmount();
  const mild = await render(WithOpener, { part: Hygiene, given: { day: warm } });
  expect(mild.container.querySelector('.caution')).toBeNull();
});

test('what the store gives is told drawn and estimated, the first hour under a heading of its own', async () => {
  await page.viewport(390, 900);
  const { container } = await render(WithOpener, {
    part: Delivery,
    given: { delivered: deliveredToEnd(base) },
  });
  expect(container.querySelectorAll('tbody tr').length).toBeGreaterThanOrEqual(2);
  const headings = [...container.querySelectorAll('h3')].map((node) => node.textContent);
  expect(headings).toEqual(['What the store gives in one draw', 'The first hour']);
  expect(await breaches(container, 390)).toEqual([]);
});
