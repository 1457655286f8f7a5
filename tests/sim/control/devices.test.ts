import { describe, expect, test } from 'vitest';
import { type Calls, modeFor } from '../../../shared/arrangements.ts';
import { sensorRate } from '../../../sim/control/sensor.ts';
import { callsAtStart, statCrossing } from '../../../sim/control/stat.ts';

const stat = { setPoint: 60, differential: 6 };

describe('a stat at 60 °C with a differential of 6 K', () => {
  test.each([
    // calls, reading, past its switching point by
    [true, 59, -1],
    [true, 61, 1],
    [false, 55, -1],
    [false, 53, 1],
  ])('calling %s at %i °C is %i K past its switching point', (calls, reading, past) => {
    expect(statCrossing(stat, calls, reading)).toBe(past);
  });

  test('that wakes up at 53.9 °C calls, at 54 °C and 57 °C it does not', () => {
    expect([53.9, 54, 57].map((reading) => callsAtStart(stat, reading))).toEqual([
      true,
      false,
      false,
    ]);
  });

  test('never has to switch both ways at one reading, 0 to 100 °C in steps of 0.1 K', () => {
    for (let tenth = 0; tenth <= 1000; tenth++) {
      const reading = tenth / 10;
      expect(statCrossing(stat, true, reading) > 0 && statCrossing(stat, false, reading) > 0).toBe(
        false,
      );
    }
  });

  test('having switched is a whole differential away from switching back', () => {
    expect(statCrossing(stat, false, 60)).toBe(-6);
    expect(statCrossing(stat, true, 54)).toBe(-6);
  });
});

describe('a sensor', () => {
  test('with a lag of 60 s, 30 K behind, warms at 0.5 K/s whatever the water does', () => {
    expect(sensorRate(60, 0, 30, 60)).toBe(0.5);
    expect(sensorRate(60, 9, 30, 60)).toBe(0.5);
  });

  test('level with its water stands still', () => {
    expect(sensorRate(45, 0.01, 45, 60)).toBe(0);
  });

  test('with no lag follows the water at its 0.01 K/s', () => {
    expect(sensorRate(60, 0.01, 60, 0)).toBe(0.01);
  });
});

describe('who gets the boiler', () => {
  const none: Calls = { hotWater: false, heating: false };
  const water: Calls = { hotWater: true, heating: false };
  const rooms: Calls = { hotWater: false, heating: true };
  const both: Calls = { hotWater: true, heating: true };
  const open = (arrangement: Parameters<typeof modeFor>[0], calls: Calls) => {
    const { coilRuns, radiatorsRun, limitOf } = modeFor(arrangement, calls);
    return [coilRuns ? 'coil' : '', radiatorsRun ? 'radiators' : '', limitOf].join(' ').trim();
  };

  test.each([
    ['priority', none, 'heating'],
    ['priority', water, 'coil  hotWater'],
    ['priority', rooms, 'radiators heating'],
    ['priority', both, 'coil  hotWater'],
    ['simultaneous', water, 'coil  hotWater'],
    ['simultaneous', rooms, 'radiators heating'],
    ['simultaneous', both, 'coil radiators hotWater'],
    ['hotWaterOnly', rooms, 'heating'],
    ['hotWaterOnly', both, 'coil  hotWater'],
  ] as const)('under %s with calls %o: %s', (arrangement, calls, expected) => {
    expect(open(arrangement, calls)).toBe(expected);
  });
});
