import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { withSetting } from '../../../shared/variant.ts';
import { fileNameOf, openFile } from '../../../src/state/files.ts';
import { browserKeep, type Keep } from '../../../src/state/keep.ts';
import { keepBench, readBench } from '../../../src/state/keptBench.ts';
import { Preferences } from '../../../src/state/Preferences.svelte.ts';

function memory(entries: Record<string, string> = {}): Keep & { entries: Record<string, string> } {
  return {
    works: true,
    entries,
    read: (key) => entries[key] ?? null,
    write: (key, text) => {
      entries[key] = text;
      return true;
    },
  };
}

const variant = withSetting(defaultVariant('my house'), 'stat.sensorHeight', 0.6);
const bench = { variants: [variant], inHand: 0 };
const at = new Date('2026-03-04T05:06:07Z');

test('a bench with its sensor at 0.6 m comes back the same, with the minute it was kept', async () => {
  const keep = memory();
  expect(await keepBench(keep, bench, at)).toBe(true);
  expect(await readBench(keep)).toEqual({ kind: 'bench', bench, at });
});

test('0 kept benches are nothing, and say nothing', async () => {
  expect(await readBench(memory())).toEqual({ kind: 'nothing' });
});

test.each([
  ['cut short', (text: string) => text.slice(0, 80)],
  ['with its time lost', (text: string) => text.replace(/^[^\n]+/, 'yesterday')],
  ['with 9999 m of sensor height', (text: string) => text.replace('0.6', '9999')],
  ['in 1 line', (text: string) => text.replaceAll('\n', ' ')],
  ['empty, with 0 letters', () => ''],
])('a kept bench %s is 1 sentence, not a blank page', async (_what, spoil) => {
  const keep = memory();
  await keepBench(keep, bench, at);
  const [key] = Object.keys(keep.entries);
  keep.entries[key] = spoil(keep.entries[key]);
  expect(await readBench(keep)).toMatchObject({ kind: 'unreadable', message: /worked example/ });
});

test('storage that throws on every use reads nothing, writes nothing and says so, with 0 faults', () => {
  const keep = browserKeep(() => {
    throw new Error('access denied');
  });
  expect([keep.works, keep.read('a'), keep.write('a', 'b')]).toEqual([false, null, false]);
});

test('the theme set to dark is dark on the next of 2 visits, and follows the device before', () => {
  const keep = memory();
  const first = new Preferences(keep);
  expect([first.theme, first.mark]).toEqual(['system', null]);
  first.setTheme('dark');
  const second = new Preferences(keep);
  expect([second.theme, second.mark]).toEqual(['dark', 'dark']);
  second.setTheme('system');
  expect(new Preferences(keep).mark).toBeNull();
});

test('a file that is not JSON is 1 problem or more, under its own name', async () => {
  const opened = await openFile(new File(['hot water'], 'notes.txt'));
  expect(opened).toMatchObject({ fileName: 'notes.txt' });
  expect('problems' in opened && opened.problems.length).toBeGreaterThanOrEqual(1);
});

test('a file of 2 MB is refused unread, with its size', async () => {
  const opened = await openFile(new File([new Uint8Array(2e6)], 'film.json'));
  expect('problems' in opened && opened.problems[0].message).toBe(
    'film.json holds 2 MB; a bench needs a few kilobytes.',
  );
});

test.each([
  ['My house, loft 2', 'my-house-loft-2.json'],
  ['...', 'bench.json'],
  ['', 'bench.json'],
])('a bench called "%s" is saved as %s', (name, file) => {
  expect(fileNameOf({ ...variant, name })).toBe(file);
});
