import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../shared/fields.ts';
import { withOverrides } from '../../shared/grid.ts';
import { mapCsv } from '../../shared/mapCsv.ts';
import { mapChoices, mapNumbers, standsAt, usualRange } from '../../shared/mapSettings.ts';
import { rangeProblemsOf } from '../../shared/problems/mapRange.ts';
import { mapFinding } from '../../shared/sentences/map.ts';
import { plain } from '../../shared/sentences.ts';
import { inventedMap, inventedPoint, type MapShape } from '../make/inventedMap.ts';

const variant = defaultVariant('as found');
const data = (shape: MapShape, count?: number, done?: number) => {
  const map = inventedMap(shape, count, done);
  return { ...map, values: map.values.values };
};
const spaced = (text: string) => text.replaceAll('\u00a0', ' ');

describe('what a map may take', () => {
  const paths = (groups: ReturnType<typeof mapNumbers>) =>
    groups.flatMap(({ fields }) => fields.map(({ path }) => path));

  test.each([
    'coil.area',
    'boiler.hotWaterFlow',
    'stat.sensorHeight',
    'stat.differential',
    'boiler.output',
    'cylinder.volume',
  ])('%s is among the numbers', (path) => {
    expect(paths(mapNumbers(variant))).toContain(path);
  });

  test('the bore of the primary and who goes first are among the choices', () => {
    expect(paths(mapChoices(variant))).toEqual(
      expect.arrayContaining(['primary.size', 'heating.arrangement']),
    );
  });

  test('0 prices and 0 unknowns are offered, on which no measure depends', () => {
    expect(paths(mapNumbers(variant)).filter((path) => /^(prices|unknowns)/.test(path))).toEqual(
      [],
    );
  });

  test('a coil of 0.85 m² is mapped from 0.45 to 1.7 m², a flow of 80 °C from 65 to 90, its limit', () => {
    const area = withOverrides(variant, [['coil.given', 'area']]);
    expect(usualRange(area, 'coil.area')).toEqual({ from: 0.45, to: 1.7 });
    expect(usualRange(area, 'boiler.hotWaterFlow')).toEqual({ from: 65, to: 90 });
  });

  test('a coil that is known by its tube has the area of 12 m of 22 mm', () => {
    expect(standsAt(variant, 'coil.area')).toBeCloseTo(0.8294, 4); // π × 0.022 × 12
  });
});

describe('a range that makes no map is told beside its field', () => {
  const range = { from: 0.5, to: 1.5, count: 15 };

  test('one that does has 0 problems', () => {
    expect(rangeProblemsOf('coil.area', range, variant)).toEqual({});
  });

  test.each([
    [{ from: 0.01 }, 'from', 'Coil area from must be between 0.05 m² and 6 m²; it is 0.01 m².'],
    [{ to: 7 }, 'to', 'Coil area to must be between 0.05 m² and 6 m²; it is 7 m².'],
    [{ to: 0.5 }, 'to', 'Coil area to must be above 0.5 m², where the map begins; it is 0.5 m².'],
    [{ count: 33 }, 'count', 'Points along coil area must be between 2 and 32; it is 33.'],
    [{ count: 2.5 }, 'count', 'Points along coil area must be a whole number; it is 2.5.'],
    [{ from: Number.NaN }, 'from', 'Coil area from needs a number in square metres.'],
  ])('%o', (wrong, part, message) => {
    const found = rangeProblemsOf('coil.area', { ...range, ...wrong }, variant);
    expect(spaced(found[part as 'from'] ?? '')).toBe(message);
    expect(Object.keys(found)).toEqual([part]);
  });

  test('the sensor goes no higher than the cylinder', () => {
    const found = rangeProblemsOf('stat.sensorHeight', { from: 0.1, to: 2.5, count: 9 }, variant);
    expect(found.to).toContain('the height of this cylinder');
  });
});

describe('the finding', () => {
  test('of a map has the least and the greatest value with their places, and tells what is missing', () => {
    const { heading, summary } = mapFinding(data('plane'));
    // 20 + 400 / (1.5 × 36) and 20 + 400 / (0.5 × 15)
    expect(spaced(plain(heading))).toBe(
      'Recovery time goes from 27.4 min at coil area 1.5 m² and flow target for hot water 86 °C to 73.3 min at coil area 0.5 m² and flow target for hot water 65 °C.',
    );
    expect(spaced(summary.map(plain).join(' '))).toBe(
      'All 81 points are computed; between them lines are drawn straight. Not satisfied at 18 points. The first: The stat was not satisfied within the run.',
    );
  });

  test('of a map that is under way speaks of the points that are there', () => {
    expect(plain(mapFinding(data('plane', 9, 25)).summary[0])).toContain('25 of 81 points');
    expect(plain(mapFinding(data('plane', 9, 0)).heading)).toMatch(/no point is computed yet\.$/);
  });

  test('of values that read alike, 40.00 and 40.01 min, says them once', () => {
    const map = data('line');
    const values = Float64Array.from({ length: 9 }, (_, place) => 2400 + (place === 4 ? 0.6 : 0));
    expect(spaced(plain(mapFinding({ ...map, values }).heading))).toBe(
      'Recovery time is 40.0 min at each of 9 points.',
    );
  });

  test('without any value says so', () => {
    const map = data('plane');
    const values = new Float64Array(81).fill(Number.NaN);
    expect(plain(mapFinding({ ...map, values }).heading)).toBe(
      'None of 81 points has a value for recovery time.',
    );
  });
});

describe('the CSV', () => {
  test('has units in its headers, every digit, and the reason in place of a value', () => {
    const lines = mapCsv(data('plane')).trimEnd().split('\n');
    expect(lines).toHaveLength(82);
    expect(lines[0]).toBe(
      'coil.areaSquareMetres,boiler.hotWaterFlowCelsius,recoveryMinutes,whyNot',
    );
    expect(lines[1]).toBe('0.5,58,,"The stat was not satisfied within the run."');
    const map = inventedMap('plane');
    const value = inventedPoint(map.grid, 80).values[0] ?? 0;
    expect(lines[81]).toBe(`1.5,86,${value / 60},`);
  });

  test('leaves out the 56 of 81 points that were not computed', () => {
    expect(
      mapCsv(data('plane', 9, 25))
        .trimEnd()
        .split('\n'),
    ).toHaveLength(26);
  });

  test('of lines for words has the word in each row', () => {
    const lines = mapCsv(data('words')).trimEnd().split('\n');
    expect(lines).toHaveLength(28);
    expect(lines.filter((line) => line.includes(',heatingFirst,,'))).toHaveLength(9);
  });
});
