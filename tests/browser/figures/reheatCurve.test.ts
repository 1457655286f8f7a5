import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/tokens.css';
import { presets, presetVariant } from '../../../shared/presets.ts';
import type { Result } from '../../../shared/result.ts';
import { withSetting } from '../../../shared/variant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import ReheatCurve from '../../../src/figures/ReheatCurve.svelte';
import { TimeCursor } from '../../../src/state/TimeCursor.svelte.ts';
import { inventedResult } from '../../make/result.ts';
import { clashes, drawnTexts, struckThrough } from './drawnTexts.ts';

const result = inventedResult(); // satisfied after 40 min
const before = inventedResult({ recovery: 3120 });

afterEach(() => page.viewport(414, 896));

async function drawn(width: number, former: Result | null = null, run: Result = result) {
  await page.viewport(width, 900);
  const moment = new TimeCursor(1800);
  const shown = await render(ReheatCurve, { result: run, before: former, moment });
  await expect.element(page.getByRole('slider', { name: 'Moment' })).toBeVisible();
  return { moment, ...shown };
}

describe.each([320, 390, 768, 1440])('the reheat curve at %i pixels', (width) => {
  test.each([
    ['alone', null],
    ['beside the former one', before],
  ])(
    '%s: no 2 texts overlap, no line strikes one through, all are 12 px or more and inside the page',
    async (_how, former) => {
      await drawn(width, former);
      const all = drawnTexts();
      expect(all.length).toBeGreaterThan(14);
      expect(clashes(all)).toEqual([]);
      expect(struckThrough()).toEqual([]);
      for (const { text, box, size } of all) {
        expect(size, text).toBeGreaterThanOrEqual(12);
        expect(box.left, text).toBeGreaterThanOrEqual(0);
        expect(box.right, text).toBeLessThanOrEqual(width);
      }
    },
  );
});

test.each(
  presets.flatMap((preset) =>
    [320, 390, 1440].map((width) => [preset.title, width, preset] as const),
  ),
)(
  '"%s" at %i pixels: no 2 texts overlap, no line strikes one through and none leaves the page',
  async (_title, width, preset) => {
    const run = simulateToEnd(presetVariant(preset));
    const nearby = withSetting(run.variant, 'coil.scaleThickness', 0.002);
    for (const former of [null, simulateToEnd(nearby)]) {
      const { unmount } = await drawn(width, former, run);
      const all = drawnTexts();
      expect(clashes(all)).toEqual([]);
      expect(struckThrough()).toEqual([]);
      expect(all.filter(({ box }) => box.left < 0 || box.right > width)).toEqual([]);
      await unmount();
    }
  },
);

describe('the moment under the curve', () => {
  test('it says "30 minutes", and an arrow makes it 31', async () => {
    const { moment } = await drawn(390);
    const slider = page.getByRole('slider', { name: 'Moment' });
    await expect.element(slider).toHaveAttribute('aria-valuetext', '30 minutes');
    await userEvent.click(page.getByRole('button', { name: 'Table' }));
    await userEvent.click(page.getByRole('button', { name: 'Close table' }));
    (slider.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowRight}');
    expect(moment.seconds).toBe(1860);
    await userEvent.keyboard('{PageDown}');
    expect(moment.seconds).toBe(1260);
    await expect.element(slider).toHaveAttribute('aria-valuetext', '21 minutes');
  });

  test('a press of the mouse half way along the axis of 60 min puts it to 30 min', async () => {
    const { moment } = await drawn(1440);
    moment.set(0);
    const svg = document.querySelector('svg.scrubbed');
    if (svg === null) throw new Error('no drawing; expected one to press on');
    const ticks = drawnTexts().filter(({ text }) => text === '0' || text === '60');
    const [start, end] = [ticks[ticks.length - 2].box, ticks[ticks.length - 1].box];
    const x = (start.left + start.right + end.left + end.right) / 4;
    const press = { clientX: x, clientY: svg.getBoundingClientRect().top + 100, pointerId: 1 };
    svg.dispatchEvent(
      new PointerEvent('pointerup', { ...press, pointerType: 'touch', bubbles: true }),
    );
    expect(moment.seconds).toBe(0); // nothing was pressed yet
    svg.dispatchEvent(
      new PointerEvent('pointerdown', { ...press, pointerType: 'touch', bubbles: true }),
    );
    expect(moment.seconds).toBe(0); // a finger may still be about to scroll
    svg.dispatchEvent(
      new PointerEvent('pointerup', { ...press, pointerType: 'touch', bubbles: true }),
    );
    expect(moment.seconds).toBe(1800);
  });
});

describe('the figure around the curve', () => {
  test('its table opens with 30 rows at most, and 0 rules of access are broken', async () => {
    const { container } = await drawn(390);
    await userEvent.click(page.getByRole('button', { name: 'Table' }));
    const rows = container.querySelectorAll('tbody tr');
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.length).toBeLessThanOrEqual(30);
    const { violations } = await axe.run(container);
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`)).toEqual([]);
  });

  test('there is 1 value axis a frame and no line without a name', async () => {
    await drawn(1440);
    const names = drawnTexts().map(({ text }) => text);
    for (const name of ['sensor 60.0', 'top 60.0', 'middle 60.0', 'bottom 11.0', 'flow 80.0']) {
      expect(names).toContain(name);
    }
    expect(names.filter((name) => name.includes('temperature, °C'))).toHaveLength(1);
    expect(names.filter((name) => name.includes('boiler output, kW'))).toHaveLength(1);
  });

  test('a run that ended early after 20 min is marked where it ended', async () => {
    const early = inventedResult({
      recovery: null,
      end: 1200,
      outcome: { kind: 'tooManySteps', at: 1200 },
    });
    await render(ReheatCurve, { result: early, before: null, moment: new TimeCursor(0) });
    await expect.element(page.getByRole('slider', { name: 'Moment' })).toBeVisible();
    expect(drawnTexts().map(({ text }) => text.replace(/\s/g, ' '))).toContain('ended at 20.0 min');
  });
});
