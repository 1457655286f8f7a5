import { describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { lessonVariant } from '../../../shared/lessons.ts';
import { withSettings } from '../../../shared/presets.ts';
import { named, plain, soon, told, view } from '../../make/lessonPage.ts';

// every page starts a worker that computes, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

describe('a number in the prose', () => {
  test('it is a slider with its label and unit in words, and arrows, page keys, Home and End go along its field', async () => {
    const { container } = await view('coil');
    const slider = container.querySelector<HTMLElement>('[role=slider][aria-label^="Scale"]');
    if (!slider) throw new Error('no slider of the scale');
    const at = () => slider.getAttribute('aria-valuetext');
    expect(slider.getAttribute('aria-label')).toBe('Scale, millimetres');
    expect(slider.getAttribute('aria-valuemin')).toBe('0');
    expect(slider.getAttribute('aria-valuemax')).toBe('5');
    expect(at()).toBe('1 millimetres');
    slider.focus();
    const found: (string | null)[] = [];
    for (const key of ['ArrowRight', 'ArrowDown', 'PageUp', 'PageDown', 'End', 'Home']) {
      await userEvent.keyboard(`{${key}}`);
      found.push(at());
    }
    expect(found).toEqual(['1.1', '1', '2', '1', '5', '0'].map((value) => `${value} millimetres`));
  });

  test('text, drawing and curve follow it, and the bench does not', async () => {
    const { container, bench, shownText } = await view('coil');
    const before = bench.variant;
    const slider = container.querySelector<HTMLElement>(
      '[role=slider][aria-label^="Boiler output"]',
    );
    slider?.focus();
    await userEvent.keyboard('{ArrowUp}');
    const variant = withSettings(lessonVariant(named('coil')), [['boiler.output', 25]]);
    await expect.poll(() => shownText().join(' '), soon).toBe(told('coil', variant).join(' '));
    const heading = plain(container.querySelectorAll('figure h2')[1]?.textContent);
    expect(heading).toMatch(/\d/);
    expect(bench.variant).toBe(before);
    expect(bench.undoes).toBeNull();
  });

  test('dragged 60 pixels to the right it goes up by 10 steps, and Escape takes a drag back', async () => {
    const { container } = await view('coil');
    const slider = container.querySelector<HTMLElement>(
      '[role=slider][aria-label^="Boiler output"]',
    );
    if (!slider) throw new Error('no slider of the boiler output');
    slider.setPointerCapture = () => {};
    const pointer = (kind: string, x: number) =>
      slider.dispatchEvent(
        new PointerEvent(kind, { clientX: x, clientY: 0, pointerId: 1, bubbles: true }),
      );
    const now = () => slider.getAttribute('aria-valuenow');
    pointer('pointerdown', 100);
    pointer('pointermove', 130);
    await expect.poll(now).toBe('29');
    pointer('pointermove', 160);
    pointer('pointerup', 160);
    await expect.poll(now).toBe('34');
    pointer('pointerdown', 100);
    pointer('pointermove', 130);
    await expect.poll(now).toBe('39');
    window.dispatchEvent(new KeyboardEvent('keydown', { key: 'Escape' }));
    await expect.poll(now).toBe('34');
    pointer('pointermove', 200);
    await expect.poll(now).toBe('34');
  });

  test('the buttons beside it go one step, and are not in the way of the tab key', async () => {
    const { container } = await view('coil');
    const [less, more] = ['less', 'more'].map((which) =>
      container.querySelector<HTMLElement>(`button[aria-label="Boiler output: ${which}"]`),
    );
    const slider = container.querySelector('[role=slider][aria-label^="Boiler output"]');
    more?.click();
    await expect.poll(() => slider?.getAttribute('aria-valuenow')).toBe('25');
    less?.click();
    less?.click();
    await expect.poll(() => slider?.getAttribute('aria-valuenow')).toBe('23');
    expect([less?.tabIndex, more?.tabIndex]).toEqual([-1, -1]);
  });

  test('1 kW with a least output of 5 kW is said to be wrong, the figures stay, and the set-up comes back', async () => {
    const { container, shownText } = await view('coil');
    const before = shownText().slice(1);
    const slider = container.querySelector<HTMLElement>(
      '[role=slider][aria-label^="Boiler output"]',
    );
    slider?.focus();
    await userEvent.keyboard('{Home}');
    await expect
      .poll(() => plain(container.querySelector('.problem')?.textContent))
      .toBe(
        'Least boiler output must be at most 1 kW, the boiler output; it is 5 kW. The figures are for the last settings that go together.',
      );
    expect(shownText().slice(1, before.length + 1)).toEqual(before);
    await page.getByRole('button', { name: 'Back to the set-up of the lesson' }).click();
    await expect.poll(() => container.querySelector('.problem')).toBeNull();
    expect(slider?.getAttribute('aria-valuenow')).toBe('24');
  });
});
