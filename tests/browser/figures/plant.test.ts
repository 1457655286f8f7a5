import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/app.css';
import { defaultVariant } from '../../../shared/fields.ts';
import { quantityText } from '../../../shared/format.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { type Quantity, quantities, type Result } from '../../../shared/result.ts';
import { valueAt } from '../../../shared/sampleAt.ts';
import { type FieldPath, withSetting } from '../../../shared/variant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import PlantDrawing from '../../../src/drawing/PlantDrawing.svelte';
import { TimeCursor } from '../../../src/state/TimeCursor.svelte.ts';
import { inventedResult } from '../../make/result.ts';

const invented = inventedResult(); // 24 kW to 20 min, at rest from 40 min

const full = simulateToEnd(
  (
    [
      ['immersion.used', 'withBoiler'],
      ['draw.volume', 0.06],
      ['heating.arrangement', 'simultaneous'],
    ] as const satisfies readonly (readonly [FieldPath, number | string])[]
  ).reduce((v, [path, value]) => withSetting(v, path, value), defaultVariant('full')),
);

async function drawn(result: Result, seconds: number, width = 1048) {
  await page.viewport(width, 900);
  const opened: Quantity[] = [];
  const moment = new TimeCursor(seconds);
  const shown = await render(PlantDrawing, {
    result,
    moment,
    end: result.outcome.at,
    onopen: (quantity: Quantity) => opened.push(quantity),
  });
  await expect.element(page.getByRole('region', { name: 'The plant in numbers' })).toBeVisible();
  const buttons = () => [...shown.container.querySelectorAll<HTMLElement>('.numbers button')];
  return { ...shown, moment, opened, buttons };
}

const plain = (node: Element) =>
  [...node.querySelectorAll('.value')]
    .map((part) => part.textContent ?? '')
    .join('')
    .replaceAll('\u00a0', ' ')
    .trim();

afterEach(() => {
  delete document.documentElement.dataset.theme;
});

describe('numbers at the moment', () => {
  test.each([10, 30])('at %d min each number is the one of the run', async (minutes) => {
    const { buttons } = await drawn(full, minutes * 60);
    const { time, of } = full.trace;
    const wanted = (key: Quantity) =>
      quantityText(key, valueAt(time, of[key], minutes * 60)).replaceAll('\u00a0', ' ');
    const byLabel = new Map(
      (Object.keys(quantities) as Quantity[]).map((key) => [quantities[key].label, key] as const),
    );
    expect(buttons().length).toBeGreaterThanOrEqual(18);
    for (const button of buttons()) {
      const label = button.querySelector('.unseen')?.textContent ?? '';
      const key = byLabel.get(label as never);
      expect(key, label).toBeDefined();
      if (key) expect(plain(button), label).toBe(wanted(key));
    }
  });

  test('the moment moves from 10 to 60 min: the boiler goes from 24.0 to 0.0 kW, and no number moves', async () => {
    const { moment, buttons } = await drawn(invented, 600);
    const boiler = page.getByRole('button', { name: /^boiler gives 24\.0 kilowatts, open/ });
    await expect.element(boiler).toBeVisible();
    const places = () => buttons().map(({ style }) => `${style.left} ${style.top}`);
    const before = places();
    moment.set(3600);
    await expect
      .element(page.getByRole('button', { name: /^boiler gives 0\.0 kilowatts, open/ }))
      .toBeVisible();
    expect(places()).toEqual(before);
    await expect
      .element(page.getByRole('heading', { name: /^At 60 min no primary/ }))
      .toBeVisible();
  });
});

describe('keys', () => {
  test('Tab reaches 14 numbers or more in turn, and Enter opens the working of each', async () => {
    const { buttons, opened } = await drawn(invented, 600);
    expect(buttons().length).toBeGreaterThanOrEqual(14);
    buttons()[0].focus();
    for (let step = 0; step < buttons().length; step++) {
      expect(document.activeElement).toBe(buttons()[step]);
      await userEvent.keyboard('{Enter}{Tab}');
    }
    expect(opened).toHaveLength(buttons().length);
    expect(opened).toContain('coilHeat');
  });
});

test('the table has a row for each number, with the same text, and one for burner and valve', async () => {
  const { buttons, container } = await drawn(invented, 600);
  await userEvent.click(page.getByRole('button', { name: 'Table' }));
  await expect.element(page.getByRole('table')).toBeVisible();
  const rows = [...container.querySelectorAll('tbody tr')].map((row) =>
    [...row.children].map((cell) => (cell.textContent ?? '').replaceAll('\u00a0', ' ')),
  );
  expect(rows.slice(0, 2)).toEqual([
    ['boiler', 'burner', 'at full output'],
    ['primary', 'valve', 'to the coil'],
  ]);
  const numbers = rows.slice(2).map(([, , now]) => now);
  expect(numbers).toEqual(buttons().map(plain));
});

describe('what is open is drawn strong', () => {
  const strong = (container: Element) => container.querySelectorAll('path.pipe.open').length;

  test('at 10 min of the coil alone: 2 pipes to it and 2 of the boiler; at rest none', async () => {
    const { container, moment } = await drawn(invented, 600);
    expect(strong(container)).toBe(4);
    moment.set(3600);
    await expect.poll(() => strong(container)).toBe(0);
  });

  test('with both open all 6 are', async () => {
    const both = full.phases.find(({ coilRuns, radiatorsRun }) => coilRuns && radiatorsRun);
    const { container } = await drawn(full, ((both?.from ?? 0) + (both?.to ?? 0)) / 2);
    expect(strong(container)).toBe(6);
  });
});

describe.each([320, 390, 700, 1048])('at %d pixels', (width) => {
  test.each(
    [...presets.slice(0, 9).map((preset) => simulateToEnd(presetVariant(preset))), full].map(
      (result) => [result.variant.name, result] as const,
    ),
  )(
    '"%s": no 2 numbers or words overlap, none leaves the page, the type is 12 px or more',
    async (_name, result) => {
      const { buttons, unmount, container } = await drawn(result, 1200, width);
      const boxOf = (node: Element) => ({
        name: node.textContent?.trim() ?? '',
        box: node.getBoundingClientRect(),
      });
      const boxes = buttons().map(boxOf);
      const words = [...container.querySelectorAll('svg text')].map(boxOf);
      expect(words.length).toBeGreaterThanOrEqual(1);
      for (const { name, box } of boxes) {
        expect(box.left, name).toBeGreaterThanOrEqual(0);
        expect(box.right, name).toBeLessThanOrEqual(width);
        expect(box.height, name).toBeGreaterThanOrEqual(24);
      }
      const all = [...boxes, ...words];
      const clashes = all.flatMap((one, index) =>
        all
          .slice(index + 1)
          .filter(
            ({ box }) =>
              box.left < one.box.right - 1 &&
              one.box.left < box.right - 1 &&
              box.top < one.box.bottom - 1 &&
              one.box.top < box.bottom - 1 &&
              // lines of one text stand closer than its letters are high
              !(words.includes(one) && box.left === one.box.left),
          )
          .map((other) => `${one.name} / ${other.name}`),
      );
      expect(clashes).toEqual([]);
      for (const node of container.querySelectorAll('svg text, .numbers span, .numbers small')) {
        expect(Number.parseFloat(getComputedStyle(node).fontSize)).toBeGreaterThanOrEqual(12);
      }
      await unmount();
    },
  );
});

test.each([
  ['light', 390],
  ['dark', 390],
  ['light', 1048],
  ['dark', 1048],
])('%s at %d pixels breaks 0 rules of access', async (theme, width) => {
  document.documentElement.dataset.theme = theme;
  const { container } = await drawn(full, 1200, width);
  await userEvent.click(page.getByRole('button', { name: 'Table' }));
  const { violations } = await axe.run(container);
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html.slice(0, 140)}`)).toEqual([]);
});
