import axe from 'axe-core';
import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { catalogueToCsv } from '../../shared/codec/catalogue.ts';
import { startingCatalogue } from '../../shared/catalogueStart.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { withSetting } from '../../shared/variant.ts';
import { Bench } from '../../src/state/Bench.svelte.ts';
import { Catalogue } from '../../src/state/Catalogue.svelte.ts';
import type { Keep } from '../../src/state/keep.ts';
import CataloguePick from '../../src/views/CataloguePick.svelte';
import CatalogueView from '../../src/views/CatalogueView.svelte';

function place(): Keep {
  const held = new Map<string, string>();
  return {
    works: true,
    read: (key) => held.get(key) ?? null,
    write: (key, text) => held.set(key, text) !== undefined,
  };
}

const house = withSetting(defaultVariant('a house'), 'coil.length', 13.5);
const plain = (node: Element | null | undefined) =>
  (node?.textContent ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

async function shown(width = 1440) {
  await page.viewport(width, width < 500 ? 844 : 900);
  const keep = place();
  const catalogue = new Catalogue(keep);
  const bench = new Bench(house);
  const { container } = await render(CatalogueView, { bench, catalogue });
  const read = async (name: string, text: string) => {
    const chooser = page.getByLabelText('Read a catalogue from a CSV file');
    await userEvent.upload(chooser, new File([text], name, { type: 'text/csv' }));
  };
  const names = () => [...container.querySelectorAll('tbody th')].map(plain);
  const said = () => plain(container.querySelector('[aria-live]'));
  const problems = () => [...container.querySelectorAll('.problems li')].map(plain);
  return { keep, catalogue, bench, container, read, names, said, problems };
}

const row = (name: string) =>
  page.getByRole('row').filter({ has: page.getByRole('rowheader', { name, exact: true }) });

describe('the catalogue', () => {
  test.each([390, 1440])('%i px wide: no breach of the rules for access', async (width) => {
    const { container } = await shown(width);
    const { violations } = await axe.run(container, { rules: { region: { enabled: false } } });
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ html }) => html)])).toEqual([]);
    expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
  });

  test('every entry says where its figures are from, and opens all its settings', async () => {
    const { container } = await shown();
    const sources = [...container.querySelectorAll('tbody td:nth-child(3)')].map(plain);
    expect(sources).toHaveLength(16); // 4 boilers, 4 coils and those in 4 cylinders, 4 cylinders
    expect(new Set(sources)).toEqual(new Set(['invented']));
    await row('Boiler of 24 kW that turns down to 5').getByText('24 kW, at least 5 kW').click();
    await expect
      .element(row('Boiler of 24 kW that turns down to 5').getByText('Water in the boiler: 6 l'))
      .toBeVisible();
  });

  test('an entry goes into the variant in hand in one step, and Undo takes it back', async () => {
    const { bench, said } = await shown();
    await row('Long coil, 18 m of 22 mm copper')
      .getByRole('button', { name: /^Put into A/ })
      .click();
    expect(bench.variant.coil.length).toBe(18);
    expect(said()).toBe('Long coil, 18 m of 22 mm copper is in A.');
    await expect
      .element(row('Long coil, 18 m of 22 mm copper').getByText('in A', { exact: true }))
      .toBeVisible();
    bench.undo();
    expect(bench.variant).toEqual(house);
  });

  test('what is on the bench is kept under a name, replaced under the same, removed and brought back', async () => {
    const { catalogue, names, bench } = await shown();
    await page.getByLabelText('Of variant A').selectOptions('the coil');
    await page.getByLabelText('Name', { exact: true }).fill('coil of mine');
    await page.getByLabelText('Figures from').fill('measured on site');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await expect.poll(names).toContain('coil of mine');
    bench.set('coil.length', 11);
    await page.getByLabelText('Name', { exact: true }).fill('coil of mine');
    await page.getByRole('button', { name: 'Replace coil of mine', exact: true }).click();
    const length = () => new Map(catalogue.named('coil of mine')?.settings).get('coil.length');
    expect(length()).toBe(11);
    await row('coil of mine')
      .getByRole('button', { name: /^Remove/ })
      .click();
    expect(names()).not.toContain('coil of mine');
    await page
      .getByRole('button', { name: 'Take back the removal of coil of mine', exact: true })
      .click();
    await expect.poll(names).toContain('coil of mine');
    expect(length()).toBe(11);
  });

  test('without a name it says so beside the field, and keeps what was typed', async () => {
    const { catalogue } = await shown();
    await page.getByLabelText('Figures from').fill('data sheet');
    await page.getByRole('button', { name: 'Keep', exact: true }).click();
    await expect.element(page.getByText('To be kept, it needs a name.')).toBeVisible();
    await expect.element(page.getByLabelText('Figures from')).toHaveValue('data sheet');
    expect(catalogue.entries).toEqual(startingCatalogue());
  });
});

describe('a file', () => {
  const header = 'name,source,coil.given,coil.areaSquareMetres\n';

  test('is read: new names come, known names are replaced, and it says how many', async () => {
    const { read, said, catalogue, names } = await shown();
    const known = startingCatalogue()[4].name;
    await read('list.csv', `${header}one of mine,rating plate,area,1.2\n"${known}",mine,area,2\n`);
    await expect.poll(said).toBe('list.csv: 1 new, 1 in place of what had the same name.');
    expect(names()).toContain('one of mine');
    expect(catalogue.named(known)?.source).toBe('mine');
    await page.getByRole('button', { name: 'Take back the reading of list.csv' }).click();
    expect(catalogue.entries).toEqual(startingCatalogue());
  });

  test.each([
    [
      'wrong headers',
      'Model,Area\nx,1\n',
      'The first two columns must be called name and source; the header begins with Model, Area.',
    ],
    [
      'a missing unit',
      'name,source,coil.area\nx,y,1\n',
      'Column 3: coil.area is not a setting; the nearest is coil.areaSquareMetres.',
    ],
    [
      'a million rows',
      'a,b,1\n'.repeat(1e6),
      'The file holds 6 MB; a catalogue has at most 500 rows, which take less than 1 MB.',
    ],
    [
      'a formula',
      `${header}"=cmd|' /C calc'!A1",y,area,1\n`,
      "Row 1: the name “=cmd|' /C calc'!A1” looks like a formula to a spreadsheet; begin it with a letter or a figure.",
    ],
  ])('with %s: one sentence, and the catalogue is as it was', async (_what, text, sentence) => {
    const { read, problems, catalogue } = await shown();
    await read('list.csv', text);
    await expect.poll(problems).toEqual([sentence]);
    await expect
      .element(page.getByText('list.csv was not read, and the catalogue is as it was'))
      .toBeVisible();
    expect(catalogue.entries).toEqual(startingCatalogue());
  });

  test('with marks of a page in its cells: they are text and nothing of them is run', async () => {
    const { read, names, container } = await shown();
    const name = '<img src=x onerror="window.ran = 1">';
    await read('list.csv', `${header}"${name.replaceAll('"', '""')}",<script>,area,1\n`);
    await expect.poll(names).toContain(name);
    expect(container.querySelector('img, script')).toBeNull();
    expect('ran' in window).toBe(false);
  });

  test('that is saved has every entry, and read again is the same', async () => {
    const { catalogue } = await shown();
    let saved: Blob | undefined;
    const own = URL.createObjectURL;
    URL.createObjectURL = (blob: Blob) => {
      saved = blob;
      return '#';
    };
    await page.getByRole('button', { name: 'Save as CSV' }).click();
    URL.createObjectURL = own;
    expect(await saved?.text()).toBe(catalogueToCsv(catalogue.entries));
  });
});

describe('picking in the settings', () => {
  test('fills in the group in one step, and says own settings as soon as one is another', async () => {
    const catalogue = new Catalogue(place());
    const bench = new Bench(house);
    await render(CataloguePick, { props: { bench, target: 'coil', catalogue } });
    const pick = page.getByLabelText('From the catalogue');
    await expect.element(pick).toHaveDisplayValue('Own settings');
    await pick.selectOptions('Long coil, 18 m of 22 mm copper');
    expect(bench.variant.coil.length).toBe(18);
    await expect.element(pick).toHaveDisplayValue('Long coil, 18 m of 22 mm copper');
    bench.set('coil.length', 17);
    await expect.element(pick).toHaveDisplayValue('Own settings');
    bench.undo();
    bench.undo();
    expect(bench.variant).toEqual(house);
  });
});
