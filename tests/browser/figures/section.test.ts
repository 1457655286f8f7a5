import axe from 'axe-core';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/tokens.css';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { withSetting } from '../../../shared/variant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import CylinderSection from '../../../src/drawing/CylinderSection.svelte';
import { TimeCursor } from '../../../src/state/TimeCursor.svelte.ts';
import { inventedResult } from '../../make/result.ts';
import { clashes, drawnTexts } from './drawnTexts.ts';

const result = inventedResult(); // sensor at 0.44 m of 1.32 m

async function drawn(width = 414) {
  await page.viewport(width, 900);
  const moves: [number, string][] = [];
  const shown = await render(CylinderSection, {
    result,
    moment: new TimeCursor(1800),
    onsensor: (height, phase) => moves.push([height, phase]),
  });
  const slider = page.getByRole('slider', { name: 'Sensor height' });
  await expect.element(slider).toBeInTheDocument();
  const handle = shown.container.querySelector<HTMLElement>('[data-handle]');
  if (handle === null) throw new Error('no handle; expected one on the sensor');
  return { ...shown, moves, slider, handle };
}

const pointer = (kind: string, node: Element, y: number) =>
  node.dispatchEvent(
    new PointerEvent(kind, {
      clientX: 0,
      clientY: y,
      pointerId: 1,
      pointerType: 'mouse',
      bubbles: true,
    }),
  );

const middle = (node: Element) => {
  const { top, height } = node.getBoundingClientRect();
  return top + height / 2;
};

describe('the sensor as a slider', () => {
  test('it is upright, from 0.02 to 1.32 m, and says "0.44 metres up, 33 percent of height"', async () => {
    const { slider } = await drawn();
    await expect.element(slider).toHaveAttribute('aria-orientation', 'vertical');
    await expect.element(slider).toHaveAttribute('min', '0.02');
    await expect.element(slider).toHaveAttribute('max', '1.32');
    const spoken = '0.44 metres up, 33 percent of height';
    await expect.element(slider).toHaveAttribute('aria-valuetext', spoken);
  });

  test('arrow up, page down, home and end commit 0.46, 0.26, 0.02 and 1.32 m', async () => {
    const { slider, moves } = await drawn();
    (slider.element() as HTMLElement).focus();
    await userEvent.keyboard('{ArrowUp}{PageDown}{Home}{End}');
    expect(moves).toEqual([
      [0.46, 'commit'],
      [0.26, 'commit'],
      [0.02, 'commit'],
      [1.32, 'commit'],
    ]);
  });

  test('its handle is 44 pixels each way and alone claims vertical drags', async () => {
    const { handle, container } = await drawn();
    const { width, height } = handle.getBoundingClientRect();
    expect([width, height]).toEqual([44, 44]);
    expect(getComputedStyle(handle).touchAction).toBe('none');
    const wall = container.querySelector('div.wall');
    expect(wall && getComputedStyle(wall).touchAction).toBe('pan-y');
  });
});

describe('the handle dragged', () => {
  test('it moves while held and commits once when let go', async () => {
    const { handle, moves } = await drawn();
    const start = middle(handle);
    handle.setPointerCapture = () => {};
    pointer('pointerdown', handle, start);
    pointer('pointermove', handle, start - 30);
    pointer('pointermove', handle, start - 60);
    pointer('pointerup', handle, start - 60);
    expect(moves.map(([, phase]) => phase)).toEqual(['move', 'move', 'commit']);
    expect(moves[2][0]).toBeGreaterThan(0.5);
    expect(moves[2][0]).toBe(moves[1][0]);
  });

  test('the drawing follows the hand before a new run has come: the slider reads the moved height', async () => {
    const { handle, moves, slider } = await drawn();
    handle.setPointerCapture = () => {};
    const start = middle(handle);
    pointer('pointerdown', handle, start);
    pointer('pointermove', handle, start - 40);
    const spoken = `${moves[0][0].toFixed(2)} metres up`;
    await expect.element(slider).toHaveAttribute('aria-valuetext', expect.stringContaining(spoken));
  });

  test('Escape puts it back to 0.44 m and what follows moves nothing', async () => {
    const { handle, moves } = await drawn();
    handle.setPointerCapture = () => {};
    const start = middle(handle);
    pointer('pointerdown', handle, start);
    pointer('pointermove', handle, start - 30);
    window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
    pointer('pointermove', handle, start - 90);
    pointer('pointerup', handle, start - 90);
    expect(moves.map(([, phase]) => phase)).toEqual(['move', 'cancel']);
    expect(moves[1][0]).toBe(0.44);
  });

  test('a pointer that is taken away puts it back to 0.44 m', async () => {
    const { handle, moves } = await drawn();
    handle.setPointerCapture = () => {};
    const start = middle(handle);
    pointer('pointerdown', handle, start);
    pointer('pointermove', handle, start + 20);
    pointer('pointercancel', handle, start + 20);
    expect(moves.at(-1)).toEqual([0.44, 'cancel']);
  });
});

test('a tap on the wall 0.30 m lower commits a height 0.30 m lower', async () => {
  const { handle, moves, container } = await drawn();
  const wall = container.querySelector('div.wall');
  if (wall === null) throw new Error('no wall; expected one to tap');
  const box = wall.getBoundingClientRect();
  const scale = box.height / 1.32;
  const tap = { clientX: box.left + 10, clientY: middle(handle) + 0.3 * scale, bubbles: true };
  wall.dispatchEvent(new MouseEvent('click', tap));
  expect(moves).toEqual([[0.14, 'commit']]);
});

test.each([320, 390, 768])(
  'at %i pixels no text leaves the page and 0 rules of access are broken',
  async (width) => {
    const { container } = await drawn(width);
    for (const text of container.querySelectorAll('svg text')) {
      const { left, right } = text.getBoundingClientRect();
      expect(left, text.textContent ?? '').toBeGreaterThanOrEqual(0);
      expect(right, text.textContent ?? '').toBeLessThanOrEqual(width);
    }
    const { violations } = await axe.run(container);
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`)).toEqual([]);
  },
);

test.each(
  presets.flatMap((preset) =>
    [320, 390, 430].map((width) => [preset.title, width, preset] as const),
  ),
)(
  '"%s" at %i pixels: no 2 texts overlap, with the sensor low, as set and high',
  async (_title, width, preset) => {
    await page.viewport(width, 900);
    const variant = presetVariant(preset);
    for (const share of [0.05, variant.stat.sensorHeight / variant.cylinder.height, 0.97]) {
      const height = share * variant.cylinder.height;
      const run = simulateToEnd(withSetting(variant, 'stat.sensorHeight', height));
      const { unmount } = await render(CylinderSection, {
        result: run,
        moment: new TimeCursor(run.measures.recovery ?? 1800),
        onsensor: () => {},
      });
      await expect.element(page.getByRole('slider', { name: 'Sensor height' })).toBeInTheDocument();
      expect(drawnTexts().length).toBeGreaterThan(6);
      expect(clashes(drawnTexts())).toEqual([]);
      await unmount();
    }
  },
);
