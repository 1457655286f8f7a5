import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { withSetting } from '../../../shared/variant.ts';
import { keyedHeight, sensorReach, settledHeight } from '../../../src/drawing/sensorHeight.ts';

const reach = sensorReach(defaultVariant('drawn'));

test('in a cylinder of 1.32 m the sensor reaches from 0.02 to 1.32 m in steps of 0.02 m', () => {
  expect(reach).toEqual({ least: 0.02, most: 1.32, step: 0.02 });
});

test('in a cylinder of 1.29 m it reaches to 1.28 m, the last whole step below the top', () => {
  expect(sensorReach(withSetting(defaultVariant('drawn'), 'cylinder.height', 1.29)).most).toBe(
    1.28,
  );
});

describe('the height a pointer or a key leads to', () => {
  test.each([
    [0.443, 0.44],
    [-1, 0.02],
    [9, 1.32],
  ])('%f m settles at %f m', (wanted, height) => {
    expect(settledHeight(wanted, reach)).toBe(height);
  });

  test.each([
    ['ArrowUp', 0.46],
    ['ArrowDown', 0.42],
    ['PageUp', 0.64],
    ['PageDown', 0.24],
    ['Home', 0.02],
    ['End', 1.32],
    ['a', null],
  ])('from 0.44 m %s leads to %s m', (key, height) => {
    expect(keyedHeight(key, 0.44, reach)).toBe(height);
  });

  test('PageUp from 1.30 m stops at 1.32 m', () => {
    expect(keyedHeight('PageUp', 1.3, reach)).toBe(1.32);
  });
});
