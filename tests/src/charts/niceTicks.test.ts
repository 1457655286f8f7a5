import { describe, expect, test } from 'vitest';
import { niceEnd, timeAxis, timeTicks, valueTicks } from '../../../src/charts/niceTicks.ts';

const minutes = (seconds: number[]) => seconds.map((each) => each / 60);

describe('ticks of time', () => {
  test('65 min on 440 pixels are ticked every 10 min', () => {
    expect(minutes(timeTicks(65 * 60, 440))).toEqual([0, 10, 20, 30, 40, 50, 60]);
  });

  test('65 min on 200 pixels are ticked every 20 min, at least 44 pixels apart', () => {
    expect(minutes(timeTicks(65 * 60, 200))).toEqual([0, 20, 40, 60]);
  });

  test('8 h are ticked in hours, 5 h in minutes', () => {
    const long = timeAxis(8 * 3600, 440);
    expect(long.unit).toBe('h');
    expect(long.ticks.map(long.text)).toEqual(['0', '1', '2', '3', '4', '5', '6', '7', '8']);
    expect(timeAxis(5 * 3600, 440).unit).toBe('min');
  });

  test.each([
    [51, 55],
    [52.4, 55],
    [60, 60],
    [7.2, 8],
    [170, 180],
  ])('an axis that holds %f min ends at %i min', (needed, end) => {
    expect(niceEnd(needed * 60) / 60).toBe(end);
  });
});

describe('ticks of a value', () => {
  test('0 to 90 on 216 pixels are ticked every 20', () => {
    expect(valueTicks([0, 90], 216)).toEqual([0, 20, 40, 60, 80]);
  });

  test('18 to 21 on 88 pixels are ticked every 1', () => {
    expect(valueTicks([18, 21], 88, 24)).toEqual([18, 19, 20, 21]);
  });

  test('0 to 1.32 on 164 pixels are ticked at 0, 0.5 and 1', () => {
    expect(valueTicks([0, 1.32], 164, 30)).toEqual([0, 0.5, 1]);
  });
});
