import axe from 'axe-core';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { defaultVariant } from '../../shared/fields.ts';
import { quantityText } from '../../shared/format.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import { withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { TimeCursor } from '../../src/state/TimeCursor.svelte.ts';
import PhysicsView from '../../src/views/PhysicsView.svelte';
import { dayToEnd } from '../make/dayToEnd.ts';

const variant = withSetting(defaultVariant('physics'), 'run.layers', 20);
const result = simulateToEnd(variant);
const day = dayToEnd(variant);
const half = Math.round((result.measures.recovery ?? 0) / 120) * 60;

async function shown(width = 1440, given: { day: typeof day | null } = { day }) {
  await page.viewport(width, width < 500 ? 844 : 900);
  const moment = new TimeCursor(half);
  const { container } = await render(PhysicsView, { result, moment, ...given });
  const ideas = () => [...container.querySelectorAll<HTMLElement>('section.idea')];
  return { container, moment, ideas };
}

describe.each([
  [390, 'the phone'],
  [1440, 'the desk'],
])('at %i pixels, %s', (width) => {
  test('each of 19 sections has a heading, a live number and a formula with its source and range', async () => {
    const { ideas } = await shown(width);
    expect(ideas()).toHaveLength(19);
    for (const idea of ideas()) {
      const heading = idea.querySelector('h2')?.textContent ?? '';
      expect(heading.length, heading).toBeGreaterThan(6);
      expect(idea.querySelectorAll('.said button.live').length, heading).toBeGreaterThan(0);
      const formulas = [...idea.querySelectorAll('.formula')];
      expect(formulas.length, heading).toBeGreaterThan(0);
      for (const formula of formulas) {
        expect(formula.querySelector('math'), heading).not.toBeNull();
        expect(formula.querySelector('.margin')?.textContent, heading).toMatch(/Source\. .{10}/s);
        expect(formula.querySelector('.margin')?.textContent, heading).toContain('Holds for');
      }
    }
  });

  // a browser shows a lone letter as a character of its own for maths, blank where no font has it
  test('every letter of a formula is a letter of the page’s own font, one by itself in italics', async () => {
    const { container } = await shown(width);
    const symbols = [...container.querySelectorAll('math mi')];
    expect(symbols.length).toBeGreaterThan(200);
    for (const symbol of symbols) {
      const { textTransform, fontStyle } = getComputedStyle(symbol);
      const isLetter = /^\p{L}$/u.test(symbol.textContent ?? '');
      expect(textTransform, symbol.textContent ?? '').toBe('none');
      expect(fontStyle, symbol.textContent ?? '').toBe(isLetter ? 'italic' : 'normal');
    }
  });

  test('the page does not scroll sideways, with 0 and with 19 workings opened one after the other', async () => {
    const { container, ideas } = await shown(width);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    for (const idea of ideas()) {
      idea.querySelector<HTMLElement>('button.live')?.click();
      await expect.poll(() => idea.querySelector('.working')).not.toBeNull();
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    }
    // one is open at a time
    expect(container.querySelectorAll('.working')).toHaveLength(1);
  });

  test('0 rules of access are broken, and no text is smaller than 12 px', async () => {
    const { container } = await shown(width);
    expect((await axe.run(container)).violations.map(({ id }) => id)).toEqual([]);
    const sizes = [...container.querySelectorAll('p, dt, dd, li, h2, h3, button')].map((node) =>
      Number.parseFloat(getComputedStyle(node).fontSize),
    );
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(12);
  }, 30_000);
});

test('a number opens its working by keyboard, with its source, and gives the focus back', async () => {
  const { container, ideas } = await shown();
  const passes = ideas().find((idea) => idea.querySelector('#passes')) as HTMLElement;
  const sampled = valueAt(result.trace.time, result.trace.of.coilHeat, half);
  const text = quantityText('coilHeat', sampled);
  const number = [...passes.querySelectorAll<HTMLElement>('.live')].find(
    (button) => button.textContent === text,
  ) as HTMLElement;
  number.focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => passes.querySelector('.working h3')).not.toBeNull();
  const heading = passes.querySelector('.working h3');
  expect(heading?.textContent).toContain(text);
  expect(document.activeElement).toBe(heading);
  expect(passes.querySelector('.working .margin')?.textContent).toContain('Source.');
  await userEvent.click(page.getByRole('button', { name: 'Close' }));
  expect(container.querySelector('.working')).toBeNull();
  expect(document.activeElement).toBe(number);
});

test('the moment is shared: at its start the coil has not run, and numbers follow it', async () => {
  const { container, moment } = await shown();
  const said = () => container.querySelector('#layers')?.parentElement?.textContent ?? '';
  const top = (at: number) =>
    quantityText('top', valueAt(result.trace.time, result.trace.of.top, at));
  expect(said()).toContain(top(half));
  moment.set(0);
  await expect.poll(said).toContain(top(0));
  expect(top(0)).not.toBe(top(half));
});

test('the list of contents leads to each of its 19 sections, by keyboard', async () => {
  const { container } = await shown(390);
  const links = [...container.querySelectorAll<HTMLElement>('nav a')];
  expect(links).toHaveLength(19);
  const last = links[18];
  last.focus();
  await userEvent.keyboard('{Enter}');
  const heading = document.getElementById(last.getAttribute('href')?.slice(1) ?? '');
  expect(document.activeElement).toBe(heading);
  expect(heading?.textContent).toContain(last.textContent);
});

test('without a day in use 19 sections stand all the same, and without a run it says so', async () => {
  const { ideas, container } = await shown(1440, { day: null });
  expect(ideas()).toHaveLength(19);
  expect(container.textContent).toContain('No day in use has been computed yet');
  expect(container.textContent).not.toMatch(/NaN|undefined/);
  const none = await render(PhysicsView, { result: null, day: null, moment: new TimeCursor(0) });
  expect(none.container.textContent).toContain('The first run is under way');
});
