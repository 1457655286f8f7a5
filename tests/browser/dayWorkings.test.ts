import axe from 'axe-core';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { defaultVariant } from '../../shared/fields.ts';
import { withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { Bench } from '../../src/state/Bench.svelte.ts';
import { Entries } from '../../src/state/Entries.svelte.ts';
import DayRows from '../../src/views/DayRows.svelte';
import SettingsPanel from '../../src/views/SettingsPanel.svelte';
import { dayToEnd, deliveredToEnd } from '../make/dayToEnd.ts';
import WithOpener from '../make/WithOpener.svelte';

const variant = withSetting(defaultVariant('day'), 'run.layers', 20);
const result = simulateToEnd(variant);
const studies = {
  day: { kind: 'day', day: dayToEnd(variant) },
  delivery: { kind: 'delivery', delivered: deliveredToEnd(variant) },
} as const;

async function rows(width: number) {
  await page.viewport(width, 900);
  const given = { studies, isStale: false, result, at: 600 };
  const { container } = await render(WithOpener, { part: DayRows, given });
  await expect.poll(() => container.querySelectorAll('.read-out button').length).toBe(6);
  return container;
}

/** Opens one number after the other by keyboard, and gives the headings of what opened. */
async function opened(container: Element, numbers: readonly HTMLElement[]): Promise<string[]> {
  const headings: string[] = [];
  for (const number of numbers) {
    number.focus();
    await userEvent.keyboard('{Enter}');
    await expect
      .poll(() => container.querySelector('.working .margin'), { timeout: 10_000 })
      .not.toBeNull();
    headings.push(container.querySelector('.working h3')?.textContent ?? '');
    await userEvent.click(page.getByRole('button', { name: 'Close' }));
  }
  return headings;
}

describe.each([390, 1440])('at %i pixels the day in use', (width) => {
  test('opens a working from each of its numbers, by keyboard, and keeps the page', async () => {
    const container = await rows(width);
    const numbers = [...container.querySelectorAll<HTMLElement>('.live')];
    expect(numbers.length).toBeGreaterThan(30);
    const headings = await opened(container, numbers);
    for (const heading of headings) expect(heading).toMatch(/^Working: .*\d/);
    expect(headings.join()).not.toMatch(/NaN|undefined|not been computed/);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  }, 60_000);

  test('opens the 6 readings of its moment by the time of day, with 0 rules of access broken', async () => {
    const container = await rows(width);
    const buttons = [...container.querySelectorAll<HTMLElement>('.read-out button')];
    const headings = await opened(container, buttons);
    // the coldest tenth is told of the whole day
    expect(headings.filter((heading) => /^Working: at \d\d:\d\d, /.test(heading))).toHaveLength(5);
    expect((await axe.run(container)).violations.map(({ id }) => id)).toEqual([]);
  }, 60_000);
});

test('under the settings of the day the 4 numbers of the usual household open their source', async () => {
  await page.viewport(1440, 900);
  const bench = new Bench(variant);
  const given = {
    bench,
    entries: new Entries(bench),
    open: ['day' as const],
    ontoggle: () => {},
    result,
  };
  const { container } = await render(WithOpener, { part: SettingsPanel, given });
  await expect.poll(() => container.querySelectorAll('p .live').length).toBe(4);
  const headings = await opened(container, [...container.querySelectorAll<HTMLElement>('p .live')]);
  expect(headings[0]).toContain('baths a day');
  expect(headings[3]).toContain('floor area');
});
