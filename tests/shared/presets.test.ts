import { describe, expect, test } from 'vitest';
import { defaultVariant, fieldAt, fields } from '../../shared/fields.ts';
import { presetNamed, presets, presetVariant } from '../../shared/presets.ts';
import { problemsOf } from '../../shared/problems.ts';
import { toSI } from '../../shared/units.ts';
import { settingOf } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';

const defaults = defaultVariant('Defaults');

// what these two show is that it never comes: tests/sim/run/causes.test.ts
const neverSatisfied = new Set(['sensor-too-high', 'sensor-too-low']);

describe.each(presets)('$key', (preset) => {
  const variant = presetVariant(preset);

  test('has 0 problems, a name in small letters, and says in 1 line that it is invented', () => {
    expect(problemsOf(variant)).toEqual([]);
    expect(preset.key).toMatch(/^[a-z]+(-[a-z]+)*$/);
    expect(preset.description).toMatch(/^Invented: [^\n]{20,100}$/);
    expect(variant.name).toBe(preset.title);
  });

  test('sets what it says, each setting once, and leaves the other settings at their defaults', () => {
    const paths = preset.sets.map(([path]) => path);
    expect(new Set(paths).size).toBe(paths.length);
    for (const [path, value] of preset.sets) {
      const field = fieldAt(path);
      const inside = field.kind === 'number' ? toSI(value as number, field.unit) : value;
      expect(settingOf(variant, path)).toBe(inside);
      expect(field.default, `${path} is at its default anyway`).not.toBe(value);
      expect(field.matters?.(variant) ?? true, `${path} has no say`).toBe(true);
    }
    const others = fields.filter(({ path }) => !paths.includes(path));
    expect(others.length).toBe(fields.length - paths.length);
    for (const { path } of others) expect(settingOf(variant, path)).toBe(settingOf(defaults, path));
  });

  if (neverSatisfied.has(preset.key)) return;
  test('satisfies its stat within the run, so that there is something to explain', () => {
    const { outcome, measures } = simulateToEnd(variant);
    expect(outcome.kind).toBe('finished');
    expect(measures.recovery).toBeGreaterThan(10 * 60);
    expect(measures.recovery).toBeLessThan(variant.run.duration);
  });
});

test('there are 9 installations and 19 causes of 28 names; the 1st is the worked example; an unknown name finds none', () => {
  expect(new Set(presets.map(({ key }) => key)).size).toBe(28);
  expect(presets.filter(({ group }) => group === 'cause')).toHaveLength(19);
  expect(presets[0].key).toBe('family-as-found');
  expect(presetNamed('far-away')?.title).toBe('Far-away cylinder');
  expect(presetNamed('constructor')).toBeUndefined();
});
