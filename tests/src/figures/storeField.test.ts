import { linearScale } from '../../../src/charts/scale.ts';
import { describe, expect, test } from 'vitest';
import { plain } from '../../../shared/sentences.ts';
import { fieldFinding } from '../../../shared/sentences/field.ts';
import { fieldTable } from '../../../src/figures/fieldTable.ts';
import { fieldOf, isothermLabels, isotherms } from '../../../src/figures/isotherms.ts';
import { inventedResult } from '../../make/result.ts';

// 10 to 60 °C in 40 min in a straight line, 2 of 20 layers stay cold
const result = inventedResult();
const x = linearScale([0, 3600], [0, 360]);
const y = linearScale([0, 1.32], [132, 0]);
const field = fieldOf(result.trace, 1.32, 3600, x, y);

describe('isotherms', () => {
  test('the line of 40 °C stands upright at 24 min', () => {
    const [forty] = isotherms(field, [40]);
    const [left] = [...forty.path.matchAll(/[ML]([\d.-]+) ([\d.-]+)/g)]
      .map(([, px, py]) => [Number(px), Number(py)])
      .filter(([, py]) => py > 20 && py < 60)
      .map(([px]) => px)
      .sort((one, other) => one - other);
    expect(Math.abs(left - 144)).toBeLessThan(0.5); // 24 min, straight between columns 38 s apart
  });

  test('the lines of 10 K steps from 20 to 50 °C are labelled 8 min apart', () => {
    const labels = isothermLabels(field, [20, 30, 40, 50], 360);
    expect(labels.map(({ temperature }) => temperature)).toEqual([20, 30, 40, 50]);
    const places = labels.map((label) => label.x);
    places.slice(1).forEach((place, index) => {
      expect(Math.abs(place - places[index] - 48)).toBeLessThan(0.5); // 8 min at 6 px a minute
    });
  });

  test('a line that the store never reaches, 80 °C, is empty and has no label', () => {
    expect(isotherms(field, [80])[0].path).toBe('');
    expect(isothermLabels(field, [80], 360)).toEqual([]);
  });
});

describe('words and rows of the field', () => {
  test('half of the store passes 40 °C after 24 min; 21 l in 2 of 20 layers never do', () => {
    expect(plain(fieldFinding(result).heading)).toBe(
      'Half of the store passes 40 °C after 24.0\u00a0min; 21\u00a0l never do.',
    );
  });

  test('a store that only reaches 50 °C at 120 min passes 40 °C after 90 min', () => {
    const slow = fieldFinding(inventedResult({ recovery: null, coldLayers: 0 }));
    expect(plain(slow.heading)).toMatch(/after 90\.0\smin; in the end all of it does/);
  });

  test('a run of 20 min ends before half of the store passes 40 °C', () => {
    const short = fieldFinding(inventedResult({ recovery: null, end: 1200, coldLayers: 20 }));
    expect(plain(short.heading)).toMatch(/^Less than half .* within 20\.0\smin/);
  });

  test('60 min are told in 13 rows of 5 min and 6 heights', () => {
    const { columns, rows } = fieldTable(result, 3600);
    expect(columns).toHaveLength(7);
    expect(rows).toHaveLength(13);
    expect(rows[6]).toEqual(['30', '10.8', '47.5', '47.5', '47.5', '47.5', '47.5']);
  });
});
