import { expect, test } from 'vitest';
import { askedFileKey, askedFileValue } from '../../../../shared/asked.ts';
import { comparedApart } from '../../../../shared/comparedMeasures.ts';
import { variantAt, withOverrides } from '../../../../shared/grid.ts';
import { presetNamed, presets, presetVariant } from '../../../../shared/presets.ts';
import { computeRows } from '../../../../sim/cli/batch/rows.ts';
import { pointOf } from '../../../../sim/run/pointOf.ts';
import { toEnd } from '../../../../sim/run/toEnd.ts';
import { VariantPoints } from '../../../../src/state/VariantPoints.svelte.ts';
import { inventedPool } from '../../../make/inventedMap.ts';

const base = presetVariant(presetNamed('family-as-found') ?? presets[0]);
const rows = [
  [['coil.scaleThickness', 0]],
  [['stat.setPoint', 55]],
  [['heating.arrangement', 'hotWaterOnly']],
] as const;

test('4 measures of 3 variants side by side are, to the last bit, those of a batch', () => {
  const { text } = computeRows({
    base,
    words: [],
    paths: [],
    measures: comparedApart,
    form: 'ndjson',
    mark: '',
    from: 1,
    rows: rows.map((settings) => ({ settings, words: [] })),
  });
  const lines = text.trimEnd().split('\n');
  // a pool that computes here as its workers do
  const { pool, work } = inventedPool((grid, place) =>
    toEnd(pointOf(variantAt(grid, place), grid.measures)),
  );
  const points = new VariantPoints(pool);
  const variants = rows.map((settings) => withOverrides(base, settings));
  points.want('table', variants, comparedApart);
  work();
  for (const [index, line] of lines.entries()) {
    const row = JSON.parse(line);
    for (const key of comparedApart) {
      const cell = points.of(variants[index], key);
      const value = askedFileValue(key, cell?.value ?? null);
      expect(row[askedFileKey(key)], `${key} of row ${index + 1}`).toBe(value);
      if (cell?.gap) expect(row.note).toContain(cell.gap.sentences[0]);
    }
  }
  expect(points.of(variants[2], 'dayLowestRoom')?.gap?.sentences).toEqual(['No rooms are heated.']);
  expect(points.of(variants[2], 'fuelPerDay')?.value).toBeGreaterThan(1e6);
  expect(points.of(variants[0], 'dayLowestRoom')?.value).toBeGreaterThan(10);
});
