import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/app.css';
import type { CoolDown as Found } from '../../../shared/coolDown.ts';
import CoolDown from '../../../src/figures/CoolDown.svelte';
import StandingLoss from '../../../src/explain/StandingLoss.svelte';
import { inventedResult } from '../../make/result.ts';
import WithOpener from '../../make/WithOpener.svelte';
import { breaches } from './breaches.ts';

const plain = (text: string | null | undefined) =>
  (text ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

/** An invented cool-down from 60 °C in air at 20 °C. @param spread  bottom below top at the end, K */
function invented(spread: number): Found {
  const time = Float64Array.from({ length: 193 }, (_, i) => i * 900);
  const line = (drop: number) => time.map((t) => 60 - (drop * t) / 172_800);
  return {
    capacity: 880_000,
    surroundings: 20,
    time,
    top: line(8),
    mean: line(8 + spread / 4),
    bottom: line(8 + spread),
    loss: time.map((t) => 66.7 - (13 * t) / 172_800),
    lostInDay: 1.7 * 3.6e6,
    readAt: 172_800,
    conductance: 1.65,
    coolAfter: null,
  };
}

describe.each([320, 390, 1100])('a store left alone, at %i pixels', (width) => {
  test.each([0, 0.4, 12])(
    'keeps the page and breaks 0 rules with its bottom %f K below its top',
    async (spread) => {
      await page.viewport(width, 900);
      const { container } = await render(CoolDown, { study: invented(spread) });
      await expect.poll(() => container.querySelectorAll('path.line').length).toBe(3);
      expect(container.querySelectorAll('path.rule.set')).toHaveLength(1);
      expect(await breaches(container, width)).toEqual([]);
    },
  );

  test('is explained with 3 numbers that open and 1 caution, and breaks 0 rules', async () => {
    await page.viewport(width, 900);
    const given = { study: invented(4), result: inventedResult(), place: 'loss' };
    const { container } = await render(WithOpener, { part: StandingLoss, given });
    expect(container.querySelectorAll('button.live')).toHaveLength(3);
    expect(plain(container.querySelector('.caution')?.textContent)).toContain('Legionella');
    expect(await breaches(container, width)).toEqual([]);
  });
});

test('its names stand at the ends of 3 lines with their values, and its heading says 1.70 kWh', async () => {
  const { container } = await render(CoolDown, { study: invented(12) });
  await expect.poll(() => container.querySelectorAll('text.end').length).toBe(3);
  const names = [...container.querySelectorAll('text.end')].map((node) => plain(node.textContent));
  expect(names).toEqual(['top 52.0', 'mean 49.0', 'bottom 40.0']);
  expect(plain(container.querySelector('h2')?.textContent)).toBe(
    'Left alone the store loses 1.70 kWh in the first 24 h, and its top is at 52.0 °C after 48 h',
  );
  expect(plain(container.querySelector('.summary')?.textContent)).toMatch(
    /^All of it starts at 60\.0 °C .* its bottom 40\.0 °C\. The top stays at 40 °C or more for those 48 h\.$/,
  );
});

test('Table opens 25 rows by keyboard, the last at 48 h with 53.7 W', async () => {
  const { container } = await render(CoolDown, { study: invented(12) });
  (page.getByRole('button', { name: 'Table' }).element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => container.querySelectorAll('tbody tr').length).toBe(25);
  const last = [...container.querySelectorAll('tbody tr:last-child > *')];
  expect(last.map((cell) => plain(cell.textContent))).toEqual([
    '48',
    '52.0',
    '49.0',
    '40.0',
    '53.7',
  ]);
});

test('the working of the cool-down opens by keyboard, with 880 kJ/K over 48 h', async () => {
  const given = { study: invented(4), result: inventedResult(), place: 'loss' };
  const { container } = await render(WithOpener, { part: StandingLoss, given });
  const summary = container.querySelector('summary');
  summary?.focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => container.querySelector('details')?.open).toBe(true);
  const words = plain(container.querySelector('.formula')?.textContent);
  expect(words).toContain('880');
  expect(words).toContain('48');
});
