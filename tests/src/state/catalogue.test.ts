import { describe, expect, test } from 'vitest';
import { type CatalogueEntry, entryFrom } from '../../../shared/catalogue.ts';
import { startingCatalogue } from '../../../shared/catalogueStart.ts';
import { catalogueToCsv } from '../../../shared/codec/catalogue.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import { Catalogue } from '../../../src/state/Catalogue.svelte.ts';
import { catalogueFromFile, catalogueFromText } from '../../../src/state/catalogueText.ts';
import type { Keep } from '../../../src/state/keep.ts';

const KEY = 'reheat-bench catalogue';

function place(text?: string): Keep & { readonly held: Map<string, string> } {
  const held = new Map(text === undefined ? [] : [[KEY, text]]);
  return {
    held,
    works: true,
    read: (key) => held.get(key) ?? null,
    write: (key, what) => {
      held.set(key, what);
      return true;
    },
  };
}

const mine = (name: string, length = 15): CatalogueEntry =>
  entryFrom(
    { ...defaultVariant('x'), coil: { ...defaultVariant('x').coil, length } },
    'coil',
    name,
    'rating plate',
  );

const names = ({ entries }: Catalogue) => entries.map(({ name }) => name);

describe('the catalogue of a browser', () => {
  test('begins with invented entries and keeps nothing until something is done', () => {
    const keep = place();
    const catalogue = new Catalogue(keep);
    expect(catalogue.entries).toEqual(startingCatalogue());
    expect(keep.held.size).toBe(0);
  });

  test('what is kept is there at the next visit, with every setting', () => {
    const keep = place();
    expect(new Catalogue(keep).put(mine('my coil'))).toBeNull();
    const next = new Catalogue(keep);
    expect(next.named('my coil')).toEqual(mine('my coil'));
    expect(next.entries).toHaveLength(startingCatalogue().length + 1);
  });

  test('a name stands once: the same name again replaces what it was, in its place', () => {
    const catalogue = new Catalogue(place());
    const first = catalogue.entries[0].name;
    catalogue.put(mine(first, 20));
    expect(names(catalogue)).toEqual(startingCatalogue().map(({ name }) => name));
    expect(catalogue.entries[0]).toEqual(mine(first, 20));
  });

  test('everything can be taken back, step by step', () => {
    const catalogue = new Catalogue(place());
    catalogue.put(mine('a'));
    catalogue.remove(catalogue.entries[0].name);
    catalogue.take([mine('b'), mine('a', 30)], 'reading of list.csv');
    expect(catalogue.undoes).toBe('reading of list.csv');
    expect(catalogue.named('a')).toEqual(mine('a', 30));
    catalogue.undo();
    expect(catalogue.named('a')).toEqual(mine('a'));
    catalogue.undo();
    catalogue.undo();
    expect(catalogue.entries).toEqual(startingCatalogue());
    expect(catalogue.undoes).toBeNull();
  });

  test('one that was emptied stays empty', () => {
    const keep = place();
    const catalogue = new Catalogue(keep);
    for (const name of names(catalogue)) catalogue.remove(name);
    const next = new Catalogue(keep);
    expect(next.entries).toEqual([]);
    expect(next.unreadable).toBeNull();
  });

  test('two pages of one browser lose nothing of each other', () => {
    const keep = place();
    const one = new Catalogue(keep);
    const other = new Catalogue(keep);
    one.put(mine('from one'));
    other.put(mine('from the other'));
    expect(names(new Catalogue(keep)).slice(-2)).toEqual(['from one', 'from the other']);
  });

  test('what cannot be read stays where it is and can be had as text', () => {
    const keep = place('not a catalogue');
    const catalogue = new Catalogue(keep);
    expect(catalogue.entries).toEqual(startingCatalogue());
    expect(catalogue.unreadable).toBe('not a catalogue');
    expect(keep.held.get(KEY)).toBe('not a catalogue');
  });

  test('says when the browser keeps nothing', () => {
    const catalogue = new Catalogue({ ...place(), write: () => false });
    catalogue.put(mine('a'));
    expect(catalogue.isKept).toBe(false);
    expect(catalogue.named('a')).toEqual(mine('a'));
  });

  test('refuses what a spreadsheet would work out, and more than fits, and changes nothing', () => {
    const catalogue = new Catalogue(place());
    expect(catalogue.put(mine('=1+1'))).toBe(
      'To be kept, the name “=1+1” looks like a formula to a spreadsheet; begin it with a letter or a figure.',
    );
    expect(catalogue.put(mine(''))).toBe('To be kept, it needs a name.');
    expect(catalogue.put(mine('a', 500))).toBe(
      'Tube length must be between 0.5\u00a0m and 80\u00a0m; it is 500\u00a0m.',
    );
    const many = Array.from({ length: 495 }, (_, index) => mine(`coil ${index}`));
    expect(catalogue.take(many, 'reading')).toMatch(
      /^With these there would be 507 entries; a catalogue holds at most 500\.$/,
    );
    expect(catalogue.entries).toEqual(startingCatalogue());
    expect(catalogue.undoes).toBeNull();
  });
});

describe('a file', () => {
  const file = (text: string) => new File([text], 'list.csv');
  const said = async (text: string) => {
    const read = await catalogueFromFile(file(text));
    return 'problems' in read ? read.problems.map(({ message }) => message) : [];
  };

  test('as a spreadsheet saves it: with a mark at the start, other line ends and an empty last line', async () => {
    const text = `\ufeff${catalogueToCsv(startingCatalogue()).replaceAll('\n', '\r\n')}\r\n`;
    expect(await catalogueFromFile(file(text))).toEqual({ entries: startingCatalogue() });
  });

  test('of a million rows is not read: one sentence', async () => {
    expect(await said('x,y,1\n'.repeat(1e6))).toEqual([
      'The file holds 6\u00a0MB; a catalogue has at most 500 rows, which take less than 1\u00a0MB.',
    ]);
  });

  test('of very many short rows: one sentence', async () => {
    expect(await said(`name,source\n${'x,\n'.repeat(300_000)}`)).toEqual([
      'The table has 300\u00a0000 rows; a catalogue holds at most 500.',
    ]);
  });

  test('without the second of two quotation marks: one sentence', () => {
    expect(catalogueFromText('name,source,coil.areaSquareMetres\n"x,y,1\n')).toEqual({
      problems: [
        {
          field: '',
          path: null,
          code: 'quotes',
          message: 'A quotation mark is missing: there is an odd number of them.',
        },
      ],
    });
  });
});
