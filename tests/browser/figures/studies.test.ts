import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/tokens.css';
import type { StudyPoint } from '../../../shared/study.ts';
import Differential from '../../../src/figures/Differential.svelte';
import Placement from '../../../src/figures/Placement.svelte';
import Rooms from '../../../src/figures/Rooms.svelte';
import StoreField from '../../../src/figures/StoreField.svelte';
import { TimeCursor } from '../../../src/state/TimeCursor.svelte.ts';
import { inventedResult } from '../../make/result.ts';
import { breaches } from './breaches.ts';

const result = inventedResult();
const moment = new TimeCursor(1800);

/** @param most  value at which the usable water at the call is 0.1 m³ */
const point = (value: number, isReached: boolean, most: number): StudyPoint => ({
  value,
  callsAtStart: true,
  recovery: isReached ? 2400 - 600 * (value / most) : null,
  usableAtSatisfied: isReached ? 0.3 : null,
  usableAtCall: isReached ? 0.25 - 0.15 * (value / most) : null,
  reheatAfterCall: isReached ? 900 : null,
  callsPerDay: isReached ? 3 : null,
});
const heights = [0.05, 0.3, 0.6, 0.9, 1.2];
const placement = {
  kind: 'placement' as const,
  points: heights.map((height) => point(height, height > 0.1, 1.32)),
};
const differential = {
  kind: 'differential' as const,
  points: [1, 3, 6, 10, 20].map((value) => point(value, true, 20)),
};
const arrangement = {
  kind: 'arrangement' as const,
  priority: result,
  simultaneous: inventedResult({ recovery: 3000 }),
};

describe.each([320, 390, 1100])('figures at %i pixels', (width) => {
  test('sensor placement keeps the page and breaks 0 rules', async () => {
    await page.viewport(width, 900);
    const { container } = await render(Placement, { study: placement, result, onpick: () => {} });
    await expect.element(page.getByRole('slider')).toBeInTheDocument();
    expect(container.querySelectorAll('svg text').length).toBeGreaterThan(10);
    expect(await breaches(container, width)).toEqual([]);
  });

  test('the differential keeps the page and breaks 0 rules', async () => {
    await page.viewport(width, 900);
    const { container } = await render(Differential, {
      study: differential,
      result,
      onpick: () => {},
    });
    await expect.element(page.getByRole('slider')).toBeInTheDocument();
    expect(container.querySelectorAll('svg text').length).toBeGreaterThan(10);
    expect(await breaches(container, width)).toEqual([]);
  });

  test('rooms and sensor under 2 arrangements keep the page and break 0 rules', async () => {
    await page.viewport(width, 900);
    const { container } = await render(Rooms, { study: arrangement, result, moment });
    await expect.element(page.getByRole('slider')).toBeVisible();
    expect(container.querySelectorAll('path.line')).toHaveLength(4);
    expect(await breaches(container, width)).toEqual([]);
  });

  test('the field of the store keeps the page and breaks 0 rules', async () => {
    await page.viewport(width, 900);
    const { container } = await render(StoreField, { result, moment });
    await expect.element(page.getByRole('slider')).toBeVisible();
    expect(container.querySelectorAll('path.isotherm').length).toBeGreaterThan(4);
    expect(await breaches(container, width)).toEqual([]);
  });
});

test('from 0.44 m an arrow up picks the next height of the study, 0.60 m, and End 1.20 m', async () => {
  const picked: number[] = [];
  await render(Placement, { study: placement, result, onpick: (height) => picked.push(height) });
  (page.getByRole('slider').element() as HTMLElement).focus();
  await userEvent.keyboard('{ArrowUp}{End}{ArrowDown}');
  expect(picked).toEqual([0.6, 1.2, 0.3]);
});

test('heights at which the stat is never satisfied are told in words, 2 times, and no call 1 time', async () => {
  const { container } = await render(Placement, { study: placement, result, onpick: () => {} });
  await expect.element(page.getByRole('slider')).toBeInTheDocument();
  const texts = [...container.querySelectorAll('svg text')].map((node) => node.textContent);
  expect(texts.filter((text) => text === 'not satisfied')).toHaveLength(2);
  expect(texts.filter((text) => text === 'no call')).toHaveLength(1);
});

test('the day under which calls are counted is said to be invented, of 120 l', async () => {
  const { container } = await render(Differential, {
    study: differential,
    result,
    onpick: () => {},
  });
  await expect.element(page.getByRole('slider')).toBeInTheDocument();
  expect(container.textContent?.replace(/\s/g, ' ')).toContain('invented day, 120 l');
});

test('before its study has come a figure says so and has 0 sliders', async () => {
  const { container } = await render(Placement, { study: null, result, onpick: () => {} });
  expect(container.textContent).toContain('under way');
  expect(container.querySelectorAll('input')).toHaveLength(0);
});
