import axe from 'axe-core';
import { afterEach, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { defaultVariant } from '../../shared/fields.ts';
import type { Group } from '../../shared/variant.ts';
import { Bench } from '../../src/state/Bench.svelte.ts';
import { Entries } from '../../src/state/Entries.svelte.ts';
import SettingsPanel from '../../src/views/SettingsPanel.svelte';

const open: readonly Group[] = ['boiler', 'coil', 'stat'];

/** The settings of a fresh bench: boiler 24 kW, 12 m of tube, sensor at 0.44 m of 1.32 m. */
async function settings(width = 1440) {
  await page.viewport(width, 900);
  const bench = new Bench(defaultVariant('as found'));
  const entries = new Entries(bench);
  const { container } = await render(SettingsPanel, { bench, entries, open, ontoggle: () => {} });
  const output = page.getByRole('textbox', { name: /^Boiler output ?, kilowatts$/ });
  await expect.element(output).toHaveValue('24');
  return { bench, entries, container, output };
}

afterEach(() => {
  delete document.documentElement.dataset.theme;
});

test.each(['1,5', ' 1.5 ', '1.5 kW', '1.5kW', '1.5 kilowatts'])(
  '"%s" and Enter makes a boiler of 1500 W, shown as 1.5, in 1 step',
  async (text) => {
    const { bench, output } = await settings();
    await userEvent.fill(output, text);
    expect(bench.variant.boiler.output).toBe(24_000);
    await userEvent.keyboard('{Enter}');
    expect(bench.variant.boiler.output).toBe(1500);
    await expect.element(output).toHaveValue('1.5');
    bench.undo();
    expect(bench.variant.boiler.output).toBe(24_000);
    expect(bench.undoes).toBe(null);
  },
);

test.each([
  ['Enter', '{Enter}'],
  ['leaving with Tab', '{Tab}'],
])(
  '500 kW keeps its text and is answered by a message with its label only on %s, gone at the "5" of 50',
  async (_how, key) => {
    const { bench, output, container } = await settings();
    const said = () => container.querySelector('#field-boiler-output-problem')?.textContent ?? '';
    await userEvent.click(output);
    await userEvent.keyboard('{Control>}a{/Control}500');
    expect(said()).toBe('');
    await expect.element(output).toHaveAttribute('aria-invalid', 'false');
    await userEvent.keyboard(key);
    await expect.element(output).toHaveAttribute('aria-invalid', 'true');
    await expect.element(output).toHaveValue('500');
    expect(said()).toMatch(/^Boiler output .*1.*100/);
    expect(output.element().getAttribute('aria-describedby')?.split(' ')).toContain(
      'field-boiler-output-problem',
    );
    expect(bench.variant.boiler.output).toBe(24_000);
    await userEvent.click(output);
    await userEvent.keyboard('{Control>}a{/Control}5');
    await expect.element(output).toHaveAttribute('aria-invalid', 'false');
    expect(said()).toBe('');
    await userEvent.keyboard('0{Enter}');
    expect(bench.variant.boiler.output).toBe(50_000);
  },
);

test('Escape puts back the 24 that stood there, and no step is made', async () => {
  const { bench, output } = await settings();
  await userEvent.fill(output, '31');
  await userEvent.keyboard('{Escape}');
  await expect.element(output).toHaveValue('24');
  await userEvent.keyboard('{Tab}');
  expect(bench.undoes).toBe(null);
});

test('5 turns of the wheel either way over a field in focus change neither a number nor a choice', async () => {
  const { bench, output, container } = await settings();
  const before = bench.variant;
  const given = page.getByRole('combobox').first();
  for (const control of [output, given]) {
    await userEvent.click(output);
    (control.element() as HTMLElement).focus();
    await userEvent.wheel(control, { direction: 'down', times: 5 });
    await userEvent.wheel(control, { direction: 'up', times: 5 });
  }
  expect(bench.variant).toBe(before);
  expect(container.querySelector<HTMLInputElement>('#field-boiler-output')?.value).toBe('24');
});

test('arrows go 1 step and Page keys 10: 24, 25, 24, 34, 24 kW', async () => {
  const { bench, output } = await settings();
  await userEvent.click(output);
  const seen: number[] = [];
  for (const key of ['{ArrowUp}', '{ArrowDown}', '{PageUp}', '{PageDown}']) {
    await userEvent.keyboard(key);
    seen.push(bench.variant.boiler.output);
  }
  expect(seen).toEqual([25_000, 24_000, 34_000, 24_000]);
});

test('the buttons step the sensor from 0.44 to 0.46 and back, and stop at the top, 1.32 m', async () => {
  const { bench } = await settings();
  const more = page.getByRole('button', { name: 'Sensor height: more' });
  const less = page.getByRole('button', { name: 'Sensor height: less' });
  await userEvent.click(more);
  expect(bench.variant.stat.sensorHeight).toBe(0.46);
  await userEvent.click(less);
  expect(bench.variant.stat.sensorHeight).toBe(0.44);
  bench.set('stat.sensorHeight', 1.3);
  await userEvent.click(more);
  expect(bench.variant.stat.sensorHeight).toBe(1.32);
  await expect.element(more).toBeDisabled();
  await expect.element(less).toBeEnabled();
});

test('the choice of an area for the coil hides its 12 m of tube and shows its square metres', async () => {
  const { bench, container } = await settings();
  const given = container.querySelector<HTMLSelectElement>('#field-coil-given');
  if (!given) throw new Error('no choice of how the coil is given');
  const length = page.getByRole('textbox', { name: /, metres$/ });
  const lengths = length.elements().length;
  await userEvent.selectOptions(given, 'area');
  expect(bench.variant.coil.given).toBe('area');
  await expect.element(page.getByRole('textbox', { name: /, square metres$/ })).toBeVisible();
  expect(length.elements().length).toBeLessThan(lengths);
});

test('at 390 pixels every stepper, number and choice is 44 pixels or more both ways', async () => {
  const { container } = await settings(390);
  const controls = [...container.querySelectorAll('.stepper button, .stepper input, select')];
  expect(controls.length).toBeGreaterThan(20);
  const small = controls.filter((control) => {
    const { width, height } = control.getBoundingClientRect();
    return Math.min(width, height) < 44;
  });
  expect(small.map((control) => control.outerHTML.slice(0, 80))).toEqual([]);
});

test.each([
  ['light', 1440],
  ['dark', 1440],
  ['light', 390],
  ['dark', 390],
])(
  '%s at %d pixels, with a problem and a help open, breaks 0 rules of access',
  async (theme, width) => {
    document.documentElement.dataset.theme = theme;
    const { container, output } = await settings(width);
    await userEvent.fill(output, '500');
    await userEvent.keyboard('{Enter}');
    await userEvent.click(page.getByRole('button', { name: 'About boiler output' }));
    await expect.element(output).toHaveAttribute('aria-invalid', 'true');
    const { violations } = await axe.run(container);
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html.slice(0, 120)}`)).toEqual([]);
  },
);
