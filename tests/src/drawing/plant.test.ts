import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { quantityText } from '../../../shared/format.ts';
import type { Quantity } from '../../../shared/result.ts';
import { valueAt } from '../../../shared/sampleAt.ts';
import { type FieldPath, type Variant, withSetting } from '../../../shared/variant.ts';
import { narrowPlan } from '../../../src/drawing/plantNarrow.ts';
import { type PlantPlan, valveKind, wideFrom, zigzag } from '../../../src/drawing/plantPlan.ts';
import { plantReadings, plantTable } from '../../../src/drawing/plantReadings.ts';
import { widePlan } from '../../../src/drawing/plantWide.ts';
import { inventedResult } from '../../make/result.ts';

const base = defaultVariant('plant');
const made = (...sets: readonly (readonly [FieldPath, number | string])[]): Variant =>
  sets.reduce((variant, [path, value]) => withSetting(variant, path, value), base);

const full = made(['immersion.used', 'withBoiler'], ['draw.volume', 0.06]);
const variants: readonly (readonly [string, Variant])[] = [
  ['the default', base],
  ['heater and draw', full],
  ['two zone valves', made(['heating.arrangement', 'simultaneous'])],
  ['no heating', made(['heating.arrangement', 'hotWaterOnly'])],
  ['flow into the bottom of the coil', made(['coil.flowEnters', 'bottom'])],
  [
    'a coil up to the top, sensor at the base',
    made(['coil.top', 1.2], ['stat.sensorHeight', 0.02]),
  ],
];

const planAt = (variant: Variant, width: number): PlantPlan =>
  width < wideFrom ? narrowPlan(variant, width) : widePlan(variant, width);

describe.each(variants)('the plant drawn for %s', (_name, variant) => {
  test.each([288, 358, 640, 1048])(
    'at %d pixels every reading has a place, within the drawing',
    (width) => {
      const plan = planAt(variant, width);
      const readings = plantReadings(inventedResult({ variant }), 600);
      expect(readings.length).toBeGreaterThanOrEqual(12);
      for (const { key } of readings) {
        const place = plan.numbers[key];
        expect(place, key).toBeDefined();
        expect(place?.x).toBeGreaterThanOrEqual(0);
        expect(place?.x).toBeLessThanOrEqual(width);
        expect(place?.y).toBeGreaterThanOrEqual(10);
        expect(place?.y).toBeLessThanOrEqual(plan.height);
      }
    },
  );
});

describe('valves', () => {
  test.each([
    ['priority', 'threePort'],
    ['priorityWithLimit', 'threePort'],
    ['midPosition', 'threePort'],
    ['simultaneous', 'zones'],
    ['hotWaterOnly', 'twoPort'],
  ])('%s is drawn with %s', (arrangement, kind) => {
    expect(valveKind(made(['heating.arrangement', arrangement]))).toBe(kind);
  });

  test('without heating and without a travel time there is none to draw', () => {
    const alone = made(['heating.arrangement', 'hotWaterOnly'], ['primary.valveTravel', 0]);
    expect(valveKind(alone)).toBe('none');
    expect(widePlan(alone, 900).valves).toEqual([]);
  });
});

describe('a coil as a zigzag from 10 to 50 over 100 to 145 pixels', () => {
  const points = (path: string) =>
    path
      .slice(1)
      .split('L')
      .map((point) => point.split(' ').map(Number));

  test('it ends on the side it began on, or on the other one, at 145', () => {
    const one = points(zigzag(10, 50, 100, 145, 'oneSide'));
    const both = points(zigzag(10, 50, 100, 145, 'bothSides'));
    expect([one[0], one.at(-1)]).toEqual([
      [10, 100],
      [10, 145],
    ]);
    expect([both[0], both.at(-1)]).toEqual([
      [10, 100],
      [50, 145],
    ]);
  });
});

describe('what stands in the drawing at 10 min', () => {
  const result = inventedResult({ variant: full });
  const readings = plantReadings(result, 600);
  const value = (key: Quantity) => valueAt(result.trace.time, result.trace.of[key], 600);

  test('each of its numbers is the sample of the run, printed as everywhere', () => {
    for (const { key, whole, text } of readings) {
      expect(whole).toBe(quantityText(key, value(key)));
      expect(whole.startsWith(text)).toBe(true);
    }
    expect(readings.find(({ key }) => key === 'boilerHeat')?.whole).toBe('24.0\u00a0kW');
  });

  test('its table has 1 row for each number and each state, with the same texts', () => {
    const table = plantTable(readings, [['boiler', 'burner', 'at full output']]);
    expect(table.rows).toHaveLength(readings.length + 1);
    expect(table.rows[0]).toEqual(['boiler', 'burner', 'at full output']);
    expect(table.rows.slice(1).map(([, , now]) => now)).toEqual(readings.map(({ whole }) => whole));
  });

  test('a quantity without a value is a dash, read as none', () => {
    const later = plantReadings(result, 3600); // the coil at rest
    const inlet = later.find(({ key }) => key === 'coilInlet');
    expect([inlet?.text, inlet?.words]).toEqual(['–', 'none']);
  });
});
