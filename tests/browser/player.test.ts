import axe from 'axe-core';
import { tick } from 'svelte';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import type { ArrangementThrow } from '../../shared/arrangementThrow.ts';
import { figure } from '../../shared/format.ts';
import type { Reply } from '../../shared/messages.ts';
import { presets, presetVariant } from '../../shared/presets.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import { withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { simulateThrown } from '../../sim/run/thrown.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import type { Port } from '../../src/state/Run.svelte.ts';
import { TimeCursor } from '../../src/state/TimeCursor.svelte.ts';
import Player from '../../src/views/Player.svelte';

// a worker starts and computes meanwhile, on whatever machine this is
vi.setConfig({ testTimeout: 60_000 });
const soon = <T>(look: () => T) => expect.poll(look, { timeout: 20_000 });

const variant = withSetting(presetVariant(presets[0]), 'heating.arrangement', 'priority');
const root = document.documentElement;
const button = (name: string) => page.getByRole('button', { name, exact: true });
const way = (name: string) => page.getByRole('radio', { name });
const section = () => document.querySelector<HTMLElement>('.player') as HTMLElement;
const heading = () => section().querySelector('h2')?.textContent?.replaceAll('\u00a0', ' ') ?? '';

async function played(width = 1440, height = 900, isProjected = false, start?: () => Port) {
  await page.viewport(width, height);
  const moment = new TimeCursor();
  const props = { variant, moment, isProjected, ...(start && { start }) };
  const shown = await render(Player, props);
  if (!start) await soon(() => section().querySelector('figure')).not.toBeNull();
  return { ...shown, moment };
}

async function steps(count: number) {
  const step = button('Step a minute').element() as HTMLElement;
  for (let done = 0; done < count; done++) step.click();
  await tick();
}

/** Rows of the table, by minute. */
async function tabled(): Promise<Map<string, string[]>> {
  await button('Table').click();
  const rows = [...document.querySelectorAll('.player table tbody tr')].map((row) =>
    [...row.children].map((cell) => cell.textContent?.trim() ?? ''),
  );
  await button('Close table').click();
  return new Map(rows.map((row) => [row[0], row]));
}

afterEach(() => {
  delete root.dataset.projected;
  delete root.dataset.theme;
});

describe('running', () => {
  test('nothing starts by itself; Run runs, Pause pauses', async () => {
    const { moment } = await played();
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(moment.seconds).toBe(0);
    expect(heading()).toMatch(
      /^At the start the cylinder is at \d+\.\d °C at the sensor, the rooms/,
    );
    await button('Run').click();
    await soon(() => moment.seconds).toBeGreaterThan(30);
    await button('Pause').click();
    const paused = moment.seconds;
    await new Promise((resolve) => setTimeout(resolve, 300));
    expect(moment.seconds).toBe(paused);
  });

  test('12 steps are 12 min, and of the lines nothing is drawn to the right of the moment', async () => {
    const { moment } = await played();
    await steps(12);
    expect(moment.seconds).toBe(720);
    expect(heading()).toMatch(/^After 12 min the cylinder is at/);
    const line = section().querySelector('.moment')?.getBoundingClientRect();
    const drawn = [...section().querySelectorAll('path.line')];
    expect(drawn).toHaveLength(8);
    for (const path of drawn) {
      // half the width of a line
      expect(path.getBoundingClientRect().right).toBeLessThanOrEqual((line?.right ?? 0) + 2);
    }
  });
});

describe('the switch thrown at 12 min', () => {
  test('leaves its mark and its words; what was before stays to the last digit, what comes is the run with the throw', async () => {
    await played();
    await steps(12);
    expect(section().querySelectorAll('.thrown')).toHaveLength(0);
    const before = await tabled();
    await way('heating first').click();
    await soon(() => section().querySelectorAll('.thrown').length).toBe(1);
    expect(section().querySelector('[aria-live]')?.textContent?.replaceAll('\u00a0', ' ')).toBe(
      'At 12 min the switch is thrown to heating first.',
    );
    const throws: ArrangementThrow[] = [{ at: 720, arrangement: 'heatingFirst' }];
    const [plain, thrown] = [
      simulateToEnd(variant).trace,
      toEnd(simulateThrown(variant, throws)).trace,
    ];
    await steps(10);
    const sensor = ({ time, of }: typeof plain) => figure(valueAt(time, of.sensor, 1320), 1);
    expect(sensor(thrown)).not.toBe(sensor(plain));
    await soon(heading).toContain(`at ${sensor(thrown)} °C at the sensor`);
    const after = await tabled();
    for (let minute = 0; minute < 12; minute++) {
      expect(after.get(String(minute))).toEqual(before.get(String(minute)));
    }
    expect(after.get('22')?.at(-1)).toBe('heating first');
  });

  test('back to start: 0 marks, 0 min, and the switch as the installation has it', async () => {
    const { moment } = await played();
    await steps(2);
    await way('both at once').click();
    await button('Back to start').click();
    expect(moment.seconds).toBe(0);
    expect(section().querySelectorAll('.thrown')).toHaveLength(0);
    await expect.element(way('hot water first')).toBeChecked();
  });
});

test('a click on the drawing brings the keys to the player', async () => {
  const { moment } = await played();
  await userEvent.click(section().querySelector('svg') as Element);
  await userEvent.keyboard('{ArrowRight}');
  expect(moment.seconds).toBe(60);
});

test('by keyboard alone: space runs and pauses, the arrow steps, 3 and 1 throw, Home goes back', async () => {
  const { moment } = await played();
  const press = (keys: string) => userEvent.keyboard(keys);
  (section().querySelector('.run') as HTMLElement).focus();
  await press(' ');
  await soon(() => moment.seconds).toBeGreaterThan(10);
  await press(' ');
  await expect.element(button('Run')).toBeVisible();
  const paused = moment.seconds;
  await press('{ArrowRight}');
  expect(moment.seconds).toBe((Math.floor(paused / 60) + 1) * 60);
  await press('3');
  await expect.element(way('heating first')).toBeChecked();
  await press('{ArrowRight}1');
  await expect.element(way('hot water first')).toBeChecked();
  await soon(() => section().querySelectorAll('.thrown').length).toBe(2);
  await press('{Home}');
  expect(moment.seconds).toBe(0);
  // outside the player the same keys do nothing
  (document.activeElement as HTMLElement).blur();
  expect(section().contains(document.activeElement)).toBe(false);
  await press('3{ArrowRight}');
  expect([moment.seconds, section().querySelectorAll('.thrown').length]).toEqual([0, 0]);
});

describe('a worker that does not answer', () => {
  const port = (): Port => ({
    onmessage: null,
    onerror: null,
    onmessageerror: null,
    postMessage() {},
    terminate() {},
  });

  test('is waited for with a Stop, and one that is lost is started again by 1 button', async () => {
    const ports: Port[] = [];
    await played(1440, 900, false, () => {
      ports.push(port());
      return ports[ports.length - 1];
    });
    await expect.element(button('Stop')).toBeVisible();
    ports[0].onerror?.({ message: 'gone', filename: 'a', lineno: 1 } as ErrorEvent);
    await expect.element(page.getByRole('alert')).toBeVisible();
    await button('Start again').click();
    await soon(() => ports.length).toBe(2);
    await soon(() => document.querySelector('[role=alert]')).toBeNull();
  });

  test('a throw that is stopped before it is computed is no throw', async () => {
    const silent = port();
    const { moment } = await played(1440, 900, false, () => silent);
    const say = (data: Reply) => silent.onmessage?.({ data } as MessageEvent);
    say({ kind: 'result', number: 1, result: simulateToEnd(variant) });
    say({ kind: 'finished', number: 1 });
    await soon(() => section().querySelector('figure')).not.toBeNull();
    await steps(2);
    await way('heating first').click();
    await soon(() => section().querySelectorAll('.thrown').length).toBe(1);
    await expect.element(button('Stop')).toBeVisible();
    await userEvent.keyboard('{Escape}');
    await soon(() => section().querySelectorAll('.thrown').length).toBe(0);
    await expect.element(way('hot water first')).toBeChecked();
    expect(moment.seconds).toBe(120);
  });
});

describe('project mode at 1920 by 1080', () => {
  test.each(['light', 'dark'])(
    '%s: 0 texts under 24 px, lines of 4 px, no scroll, nothing cut',
    async (theme) => {
      root.dataset.theme = theme;
      root.dataset.projected = '';
      const { container } = await played(1920, 1080, true);
      await steps(12);
      (way('heating first').element() as HTMLElement).click();
      await steps(3);
      await soon(() => section().querySelectorAll('.thrown').length).toBe(1);
      const small = [...section().querySelectorAll<HTMLElement>('*')].filter(
        (node) =>
          [...node.childNodes].some((child) => child.nodeType === 3 && child.textContent?.trim()) &&
          node.checkVisibility({ visibilityProperty: true }) &&
          Number.parseFloat(getComputedStyle(node).fontSize) < 24,
      );
      expect(small.map(({ textContent }) => textContent)).toEqual([]);
      for (const line of section().querySelectorAll('path.line')) {
        expect(getComputedStyle(line).strokeWidth).toBe('4px');
      }
      expect(section().scrollHeight).toBeLessThanOrEqual(1080);
      expect(section().scrollWidth).toBeLessThanOrEqual(1920);
      const plot = section().querySelector('svg')?.getBoundingClientRect();
      const controls = section().querySelector('.controls')?.getBoundingClientRect();
      expect(plot?.bottom).toBeLessThanOrEqual(controls?.top ?? 0);
      expect(controls?.bottom).toBeLessThanOrEqual(1080);
      expect((await axe.run(container)).violations.map(({ id }) => id)).toEqual([]);
    },
  );

  test('its button and Escape leave it', async () => {
    await played(1920, 1080, true);
    root.dataset.projected = '';
    await button('Leave project mode').click();
    expect(root.dataset.projected).toBeUndefined();
    root.dataset.projected = '';
    await userEvent.keyboard('{Escape}');
    expect(root.dataset.projected).toBeUndefined();
  });

  test('it works where the whole screen is refused', async () => {
    await played();
    const refused = root.requestFullscreen;
    root.requestFullscreen = () => Promise.reject(new TypeError('not now'));
    await button('Project').click();
    root.requestFullscreen = refused;
    expect(root.dataset.projected).toBe('');
  });
});

test.each([
  [390, 844],
  [1440, 900],
])('at %d by %d axe finds 0 violations and every control is 44 px high', async (width, height) => {
  const { container } = await played(width, height);
  await steps(3);
  expect((await axe.run(container)).violations.map(({ id }) => id)).toEqual([]);
  for (const control of section().querySelectorAll(
    '.controls :is(button, select, fieldset label)',
  )) {
    expect(control.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
  }
  expect(root.scrollWidth).toBeLessThanOrEqual(width);
});
