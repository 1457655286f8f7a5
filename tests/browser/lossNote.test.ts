import axe from 'axe-core';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { defaultVariant } from '../../shared/fields.ts';
import { Bench } from '../../src/state/Bench.svelte.ts';
import { Entries } from '../../src/state/Entries.svelte.ts';
import SettingsPanel from '../../src/views/SettingsPanel.svelte';
import { inventedResult } from '../make/result.ts';
import WithOpener from '../make/WithOpener.svelte';

/** The settings of a cylinder of 210 l that loses 1.8 kWh in 24 h, and what is said under them. */
async function settings(width = 1440) {
  await page.viewport(width, 900);
  const bench = new Bench(defaultVariant('as found'));
  const entries = new Entries(bench);
  const given = {
    bench,
    entries,
    open: ['cylinder' as const],
    ontoggle: () => {},
    result: inventedResult(),
  };
  const { container } = await render(WithOpener, { part: SettingsPanel, given });
  const said = () =>
    (container.querySelector('.note')?.textContent ?? '').replace(/\s+/g, ' ').trim();
  await expect.poll(said).toContain('75.0 W');
  return {
    bench,
    container,
    said,
    from: page.getByRole('combobox', { name: 'Standing loss from' }),
  };
}

describe('under the settings of the cylinder', () => {
  test('stand its 75.0 W, class C, the limit of 87.4 W and the guide of 2.30 kWh', async () => {
    const { said } = await settings();
    expect(said()).toBe(
      'With 45 K between store and air it loses 75.0 W, 1.67 W/K: class C (B below 62.3 W). ' +
        'Limit for new cylinders, European Union: 87.4 W, class C. ' +
        'Guide of the United Kingdom: 2.30 kWh/24 h.',
    );
  });

  test('50 mm of foam in place of the label are 110.3 W, class E, above the limit, and only its fields show', async () => {
    const { said, from, container } = await settings();
    await userEvent.selectOptions(from, 'insulation');
    await expect.poll(said).toContain('110.3 W, 2.45 W/K: class E (D below 108.7 W)');
    expect(said()).toContain('87.4 W, class C; this store is above it.');
    const shown = [...container.querySelectorAll('label')].map((label) => label.textContent ?? '');
    expect(shown.some((label) => label.trim().startsWith('Insulation thickness'))).toBe(true);
    expect(shown.some((label) => /^\s*Standing loss,/.test(label))).toBe(false);
  });

  test('600 l have no class and no guide, only a limit of 124.3 W', async () => {
    const { said, bench } = await settings();
    bench.replace('volume', {
      ...bench.variant,
      cylinder: { ...bench.variant.cylinder, volume: 0.6 },
    });
    await expect
      .poll(said)
      .toBe(
        'With 45 K between store and air it loses 75.0 W, 1.67 W/K. ' +
          'Limit for new cylinders, European Union: 124.3 W.',
      );
  });

  test('each of its 4 numbers opens its source by keyboard', async () => {
    const { container } = await settings();
    const sources: string[] = [];
    for (const button of container.querySelectorAll<HTMLElement>('.note button')) {
      button.focus();
      await userEvent.keyboard('{Enter}');
      await expect.poll(() => button.getAttribute('aria-expanded')).toBe('true');
      await expect.poll(() => container.querySelector('.working .margin')).not.toBeNull();
      sources.push(container.querySelector('.working .margin')?.textContent ?? '');
    }
    expect(sources).toHaveLength(4);
    for (const [index, document] of ['EN 12897', '812/2013', '814/2013', 'Compliance'].entries()) {
      expect(sources[index]).toContain(document);
    }
  });

  test.each([390, 1440])('at %i pixels 0 rules of access are broken', async (width) => {
    const { container } = await settings(width);
    expect((await axe.run(container)).violations.map(({ id }) => id)).toEqual([]);
  });
});
