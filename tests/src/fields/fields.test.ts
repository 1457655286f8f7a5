import { expect, test } from 'vitest';
import { defaultVariant, fieldAt, fields, type NumberField } from '../../../shared/fields.ts';
import { limitsOf } from '../../../shared/problems/ranges.ts';
import { settingOf, withSetting, groups } from '../../../shared/variant.ts';
import { digest } from '../../../src/fields/digest.ts';
import { fieldId } from '../../../src/fields/fieldId.ts';
import { inputText, stepped } from '../../../src/fields/inputText.ts';

const variant = defaultVariant('as found');
const number = (
  path: 'stat.sensorHeight' | 'coil.scaleThickness' | 'boiler.output' | 'house.outside',
) => fieldAt(path) as NumberField;

test.each([
  ['coil.scaleThickness', 0.001, '1.0'],
  ['boiler.output', 24_000, '24'],
  ['boiler.output', 24_250, '24.25'],
  ['stat.sensorHeight', 0.4, '0.40'],
  ['house.outside', -5, '−5'],
] as const)('%s of %d stands in its field as %s', (path, value, text) => {
  expect(inputText(value, number(path))).toBe(text);
});

test.each([
  [0.44, 1, 0.46],
  [0.44, -10, 0.24],
  [1.3, 10, 1.32],
  [0.04, -10, 0.02],
])('the sensor at %d m goes %d steps to %d m in a cylinder of 1.32 m', (from, steps, to) => {
  const field = number('stat.sensorHeight');
  expect(stepped(from, field, steps, limitsOf(field, variant))).toBe(to);
});

test('60 fields or more have 1 id each', () => {
  const ids = new Set(fields.map(({ path }) => fieldId(path)));
  expect(fields.length).toBeGreaterThanOrEqual(60);
  expect(ids.size).toBe(fields.length);
});

test('each of the 18 groups has a digest of 45 letters at most, and it follows the settings', () => {
  expect(groups).toHaveLength(18);
  for (const group of groups) expect(digest(group, variant).length).toBeLessThanOrEqual(45);
  expect(digest('coil', variant)).toBe('12\u00a0m of tube');
  const scaled = withSetting(variant, 'coil.scaleThickness', 0.001);
  expect(digest('coil', scaled)).toBe('12\u00a0m of tube, 1\u00a0mm scale');
  expect(digest('secondCoil', variant)).toBe('none');
  expect(settingOf(variant, 'draw.volume')).toBe(0);
  expect(digest('draw', variant)).toBe('none');
});
