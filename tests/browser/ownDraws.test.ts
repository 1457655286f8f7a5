import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { defaultVariant } from '../../shared/fields.ts';
import { exampleDraws, newDraw } from '../../shared/ownDraws.ts';
import type { Group } from '../../shared/variant.ts';
import { Bench } from '../../src/state/Bench.svelte.ts';
import { Entries } from '../../src/state/Entries.svelte.ts';
import SettingsPanel from '../../src/views/SettingsPanel.svelte';
import WithOpener from '../make/WithOpener.svelte';

const open: readonly Group[] = ['day'];

/** The settings of a day by the own table: shower, washing up, bath; `count` rows where it is given. */
async function table(width = 1440, count?: number) {
  await page.viewport(width, 900);
  const bench = new Bench(defaultVariant('as found'));
  if (count !== undefined) {
    bench.setOwnDraws(
      'rows',
      Array.from({ length: count }, () => newDraw),
    );
  }
  bench.set('day.pattern', 'own');
  const entries = new Entries(bench);
  const given = { bench, entries, open, ontoggle: () => {} };
  const { container } = await render(WithOpener, { part: SettingsPanel, given });
  container.style.paddingInline = width < 700 ? '16px' : '40px'; // the edges of the page
  const cell = (row: number, words: string) =>
    page.getByRole('textbox', { name: `Draw ${row}: ${words}`, exact: true });
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  await expect.element(button('Add a draw')).toBeVisible();
  return { bench, entries, container, cell, button, rows: () => bench.variant.ownDraws };
}

const focused = () => document.activeElement?.getAttribute('aria-label') ?? '';
const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u00a0', ' ');

afterEach(() => {
  delete document.documentElement.dataset.theme;
});

describe('the table of own draws', () => {
  test('it stands in the day only while the day goes by the own table', async () => {
    const { bench, container } = await table();
    expect(container.querySelectorAll('tr.draw')).toHaveLength(3);
    bench.set('day.pattern', 'household');
    await expect.poll(() => container.querySelector('tr.draw')).toBeNull();
  });

  test('it reads as a table of 3 rows of 5 inputs, at 07:00, 13:00 and 19:00', async () => {
    const { container, cell } = await table();
    const heads = page.getByRole('columnheader').elements();
    expect(heads).toHaveLength(7);
    expect(page.getByRole('rowheader').elements()).toHaveLength(3);
    expect(container.querySelectorAll('tr.draw input')).toHaveLength(15);
    const times = await Promise.all([1, 2, 3].map((row) => cell(row, 'time of day').element()));
    expect(times.map((input) => (input as HTMLInputElement).value)).toEqual([
      '07:00',
      '13:00',
      '19:00',
    ]);
    const modes = [...container.querySelectorAll('tr.draw:first-child input')].map((input) =>
      input.getAttribute('inputmode'),
    );
    expect(modes).toEqual(['text', 'text', 'decimal', 'decimal', 'decimal']);
  });

  test.each([
    ['litres', '1,5', 'volume', 1.5e-3, '1.5'],
    ['litres', ' 1.5 ', 'volume', 1.5e-3, '1.5'],
    ['litres', '1.5 l', 'volume', 1.5e-3, '1.5'],
    ['litres per minute', '6', 'flow', 1e-4, '6'],
    ['degrees Celsius at the tap', '39,5 °C', 'mixedTo', 39.5, '39.5'],
    ['time of day', '7:30', 'at', 27_000, '07:30'],
    ['time of day', '7.5', 'at', 27_000, '07:30'],
    ['name', 'Long bath', 'name', 'Long bath', 'Long bath'],
  ] as const)(
    '%s of draw 3: “%s” counts once left, stands as typed until then, and is 1 step',
    async (words, text, key, value, shown) => {
      const { bench, cell, rows } = await table();
      await userEvent.fill(cell(3, words), text);
      expect(rows()).toBe(exampleDraws);
      await userEvent.keyboard('{Enter}');
      const taken = rows()[2][key];
      if (typeof value === 'number')
        expect(taken).toBeCloseTo(value, 12); // rounding
      else expect(taken).toBe(value);
      await expect.element(cell(3, words)).toHaveValue(shown);
      expect(bench.undoes).toBe(`draw 3: ${words}`);
      bench.undo();
      expect(rows()).toBe(exampleDraws);
      await expect.element(cell(3, words)).not.toHaveValue(shown);
    },
  );

  test.each([
    ['Enter', '{Enter}'],
    ['leaving with Tab', '{Tab}'],
  ])(
    '5000 l keeps its text and its message, given only on %s, and is gone at the "5" of 50',
    async (_how, key) => {
      const { entries, container, cell, rows } = await table();
      const litres = cell(2, 'litres');
      const said = () => plain(container.querySelector('#draw-1-volume-problem')?.textContent);
      await userEvent.click(litres);
      await userEvent.keyboard('{Control>}a{/Control}5000');
      expect(said()).toBe('');
      await expect.element(litres).toHaveAttribute('aria-invalid', 'false');
      await userEvent.keyboard(key);
      await expect.element(litres).toHaveAttribute('aria-invalid', 'true');
      await expect.element(litres).toHaveValue('5000');
      await expect.element(litres).toHaveAttribute('aria-describedby', 'draw-1-volume-problem');
      expect(said()).toBe('Volume of draw 2 must be between 0.1 l and 1000 l; it is 5000 l.');
      expect(rows()).toBe(exampleDraws);
      expect(entries.problems).toHaveLength(1);
      await userEvent.click(litres);
      await userEvent.keyboard('{Control>}a{/Control}5');
      await expect.element(litres).toHaveAttribute('aria-invalid', 'false');
      await userEvent.keyboard('0{Enter}');
      expect(rows()[1].volume).toBe(0.05);
      expect(entries.problems).toEqual([]);
    },
  );

  test('Escape puts back 12 l, while typing and after a text was refused, in 0 steps', async () => {
    const { bench, entries, cell, rows } = await table();
    const steps = bench.undoes;
    const litres = cell(2, 'litres');
    await userEvent.fill(litres, '31');
    await userEvent.keyboard('{Escape}');
    await expect.element(litres).toHaveValue('12');
    await userEvent.fill(litres, 'lots');
    await userEvent.keyboard('{Enter}');
    await expect.element(litres).toHaveValue('lots');
    await userEvent.keyboard('{Escape}');
    await expect.element(litres).toHaveValue('12');
    await expect.element(litres).toHaveAttribute('aria-invalid', 'false');
    expect([entries.problems, rows(), bench.undoes]).toEqual([[], exampleDraws, steps]);
  });

  test('a refused text keeps the table on screen when the day goes by a household', async () => {
    const { bench, container, cell } = await table();
    await userEvent.fill(cell(1, 'time of day'), '7.30');
    await userEvent.keyboard('{Enter}');
    bench.set('day.pattern', 'household');
    await expect.element(cell(1, 'time of day')).toHaveValue('7.30');
    expect(plain(container.querySelector('#draw-0-at-problem')?.textContent)).toBe(
      'Time of draw 1 can be read two ways in “7.30”: write 7:30 or 7.3 h.',
    );
  });
});

describe('rows', () => {
  test('a draw added by keyboard is the 4th, with the focus in its name', async () => {
    const { bench, button, rows } = await table();
    (button('Add a draw').element() as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    expect(rows()).toEqual([...exampleDraws, newDraw]);
    await expect.poll(focused).toBe('Draw 4: name');
    expect(bench.undoes).toBe('a draw added');
  });

  test('a copy of draw 1 stands right below it, with the focus in its name; undo takes it back', async () => {
    const { bench, button, cell, rows } = await table();
    await userEvent.click(button('Copy draw 1'));
    expect(rows().map(({ name }) => name)).toEqual(['Shower', 'Shower', 'Washing up', 'Bath']);
    await expect.poll(focused).toBe('Draw 2: name');
    await expect.element(cell(3, 'name')).toHaveValue('Washing up');
    bench.undo();
    await expect.element(cell(3, 'name')).toHaveValue('Bath');
  });

  test('3 removals move the focus to the neighbour, the last before it, and to Add; undo brings them back', async () => {
    const { bench, container, button, rows } = await table();
    await userEvent.click(button('Remove draw 2'));
    await expect.poll(focused).toBe('Remove draw 2');
    expect(bench.undoes).toBe('washing up removed');
    await userEvent.click(button('Remove draw 2'));
    await expect.poll(focused).toBe('Remove draw 1');
    await userEvent.click(button('Remove draw 1'));
    await expect.poll(() => document.activeElement?.textContent).toBe('Add a draw');
    expect(rows()).toEqual([]);
    await expect.element(page.getByText('None: a day without hot water.')).toBeVisible();
    for (let step = 0; step < 3; step += 1) bench.undo();
    expect(rows()).toBe(exampleDraws);
    await expect.poll(() => container.querySelectorAll('tr.draw').length).toBe(3);
  });

  test('1 click on Remove draw 3 removes it, and “lots” being typed in draw 1 is refused and kept', async () => {
    const { entries, button, cell, rows } = await table();
    await userEvent.fill(cell(1, 'litres'), 'lots');
    await userEvent.click(button('Remove draw 3'));
    expect(rows().map(({ name }) => name)).toEqual(['Shower', 'Washing up']);
    await expect.element(cell(1, 'litres')).toHaveValue('lots');
    expect(entries.problems).toHaveLength(1);
  });

  test('50 l being typed in draw 3 count there although draw 1 is removed by 1 click', async () => {
    const { button, cell, rows } = await table();
    await userEvent.fill(cell(3, 'litres'), '50');
    await userEvent.click(button('Remove draw 1'));
    expect(rows().map(({ name, volume }) => [name, volume])).toEqual([
      ['Washing up', 0.012],
      ['Bath', 0.05],
    ]);
  });

  test('at 60 draws Add and Copy are disabled and the reason is said; at 59 they are not', async () => {
    const { container, button } = await table(1440, 60);
    await expect.element(button('Add a draw')).toBeDisabled();
    await expect.element(button('Copy draw 7')).toBeDisabled();
    const reason = button('Add a draw').element().getAttribute('aria-describedby') ?? '';
    expect(container.querySelector(`#${reason}`)?.textContent).toBe(
      'There may be 60 draws at most.',
    );
    await userEvent.click(button('Remove draw 60'));
    await expect.element(button('Add a draw')).toBeEnabled();
    await expect.element(button('Copy draw 7')).toBeEnabled();
  });
});

describe('on any screen', () => {
  test.each([
    ['light', 320],
    ['dark', 320],
    ['light', 390],
    ['dark', 390],
    ['light', 820],
    ['light', 1440],
    ['dark', 1440],
  ])(
    '%s at %i pixels, with 2 problems and the help open, nothing leaves the page and 0 rules of access are broken',
    async (theme, width) => {
      document.documentElement.dataset.theme = theme;
      const { container, cell, button } = await table(width);
      await userEvent.click(button('About the draws of the day'));
      await userEvent.fill(cell(2, 'name'), 'The longest name that can stand in here.');
      await userEvent.fill(cell(2, 'litres'), 'lots');
      await userEvent.fill(cell(2, 'time of day'), '7.30');
      await userEvent.keyboard('{Enter}');
      await expect.element(cell(2, 'time of day')).toHaveAttribute('aria-invalid', 'true');
      expect(container.querySelectorAll('tr.said p')).toHaveLength(2);
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
      const parts = container.querySelectorAll('.draws :is(input, button, p, dd, dt, .label, h3)');
      expect(parts.length).toBeGreaterThan(30);
      for (const part of parts) {
        const { left, right } = part.getBoundingClientRect();
        expect(left, part.outerHTML).toBeGreaterThanOrEqual(0);
        expect(right, part.outerHTML).toBeLessThanOrEqual(width);
      }
      const { violations } = await axe.run(container);
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html.slice(0, 120)}`)).toEqual(
        [],
      );
    },
  );

  test.each([
    [320, 44],
    [390, 44],
    [820, 24],
    [1440, 24],
  ])('at %i pixels every input and button is %i pixels or more both ways', async (width, least) => {
    const { container } = await table(width);
    const controls = [...container.querySelectorAll('.draws :is(input, button)')];
    expect(controls).toHaveLength(3 * 7 + 2);
    const small = controls.filter((control) => {
      const box = control.getBoundingClientRect();
      return Math.min(box.width, box.height) < least;
    });
    expect(small.map((control) => control.outerHTML)).toEqual([]);
  });

  test('at 320 pixels a time of 5 figures, 1000 l and 41.5 °C can be read whole in their cells', async () => {
    const { container, bench } = await table(320);
    bench.setOwnDraws('wide', [{ ...newDraw, at: 84_000, volume: 1, flow: 2e-4, mixedTo: 41.5 }]);
    await expect.poll(() => container.querySelectorAll('tr.draw').length).toBe(1);
    const inputs = [...container.querySelectorAll<HTMLInputElement>('tr.draw input.number')];
    expect(inputs.map(({ value }) => value)).toEqual(['23:20', '1000', '12', '41.5']);
    for (const input of inputs) expect(input.scrollWidth).toBeLessThanOrEqual(input.clientWidth);
  });
});
