import { expect, test } from 'vitest';
import { presets, presetVariant } from '../../../shared/presets.ts';
import type { Keep } from '../../../src/state/keep.ts';
import { keepBench } from '../../../src/state/keptBench.ts';
import { KnownExamples } from '../../../src/state/KnownExamples.svelte.ts';
import { beginVisit } from '../../../src/state/visit.ts';

function memory(): Keep {
  const entries = new Map<string, string>();
  return {
    works: true,
    read: (key) => entries.get(key) ?? null,
    write: (key, text) => entries.set(key, text) !== undefined,
  };
}

test('a first visit knows 1 example, the worked one', async () => {
  const { kept, examples } = await beginVisit(memory());
  expect(kept).toEqual({ kind: 'nothing' });
  expect(examples.all).toEqual(presets.slice(0, 1));
  expect(examples.at(presetVariant(presets[0]))?.key).toBe('family-as-found');
  expect(examples.at(presetVariant(presets[1]))).toBeNull();
});

test('a visit to a kept example knows from the start which of all it is', async () => {
  const keep = memory();
  const last = presets.at(-1) ?? presets[0];
  await keepBench(
    keep,
    { variants: [presetVariant(last)], inHand: 0 },
    new Date('2026-03-04T05:06:07Z'),
  );
  const { kept, examples } = await beginVisit(keep);
  if (kept.kind !== 'bench') throw new Error(`what was kept is ${kept.kind}`);
  expect(examples.all).toEqual(presets);
  expect(examples.at(kept.bench.variants[0])?.key).toBe(last.key);
});

test('each example is found again by its settings, under another name too', async () => {
  const examples = new KnownExamples();
  await examples.fetch();
  const found = presets.map(
    (preset) => examples.at({ ...presetVariant(preset), name: 'my house' })?.key,
  );
  expect(found).toEqual(presets.map(({ key }) => key));
});
