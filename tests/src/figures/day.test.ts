import { scaleLinear } from 'd3';
import { beforeAll, describe, expect, test } from 'vitest';
import type { DayRun } from '../../../shared/day.ts';
import { fails } from '../../../shared/drawFails.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import { warmTime } from '../../../shared/sentences/dayDraws.ts';
import { type FieldPath, withSetting } from '../../../shared/variant.ts';
import { textWidth } from '../../../src/charts/endLabels.ts';
import { failureTexts } from '../../../src/figures/dayDraws.ts';
import { dayFrames } from '../../../src/figures/dayFrames.ts';
import { roomDomain, storeTop, tenthOf } from '../../../src/figures/dayLines.ts';
import { callStretches, dayStrips, drawnStretches } from '../../../src/figures/dayStretches.ts';
import { dayTable } from '../../../src/figures/dayTable.ts';
import { hotWaterWindows, windowTexts } from '../../../src/figures/hotWaterWindows.ts';
import { dayToEnd } from '../../make/dayToEnd.ts';
import { inventedDay, inventedDraw } from '../../make/inventedDay.ts';

const hour = 3600;
const day = 24 * hour;
/** A small store that may be heated at set times only: it runs cold. */
const sets: readonly (readonly [FieldPath, number | string])[] = [
  ['cylinder.volume', 0.12],
  ['cylinder.height', 1],
  ['coil.coilDiameter', 0.2],
  ['programme.hotWater', 'timed'],
  ['day.baths', 2],
  ['heating.arrangement', 'hotWaterOnly'],
];
const timed = sets.reduce(
  (v, [path, value]) => withSetting(v, path, value),
  defaultVariant('timed'),
);

let cold: DayRun;
beforeAll(() => {
  cold = dayToEnd(timed);
});

describe('a day that runs cold', () => {
  test('its failing draws were warm for as long as their marks say: the rest of each is its cold time', () => {
    const failing = cold.draws.filter(fails);
    expect(failing.length).toBeGreaterThanOrEqual(1);
    for (const draw of failing) {
      const warm = warmTime(cold, draw);
      // marks and the book of the taps are written at one event; 1e-6 s for the sums of times
      if (warm !== null) expect(warm + draw.coldTime).toBeCloseTo(draw.to - draw.from, 6);
      expect(draw.coldVolume).toBeLessThanOrEqual(draw.volume);
    }
  });

  test('its coldest tenth is between bottom and top at each of its samples', () => {
    const tenth = tenthOf(cold);
    expect(tenth).toHaveLength(cold.trace.samples);
    tenth.forEach((value, sample) => {
      expect(value).toBeGreaterThanOrEqual(cold.trace.of.bottom[sample] - 1e-9); // the sum of a mean
      expect(value).toBeLessThanOrEqual(cold.trace.of.top[sample] + 1e-9);
    });
  });

  test('the axis reaches above the hottest water and the set-point of 60 °C', () => {
    const hottest = Math.max(...cold.trace.of.top);
    expect(storeTop(cold)).toBeGreaterThanOrEqual(Math.max(hottest, 60) + 2);
    expect(storeTop(cold) % 10).toBe(0);
  });

  test('its calls are as many as the measure says and fill the day without gaps', () => {
    const stretches = callStretches(cold);
    expect(stretches[0].from).toBe(0);
    expect(stretches.at(-1)?.to).toBe(day);
    stretches.slice(1).forEach(({ from }, index) => {
      expect(from).toBe(stretches[index].to);
    });
    const called = stretches.filter(({ pattern }) => pattern === 'called');
    // one that is still on at midnight was made the day before
    const begun = called.filter(({ from }) => from > 0);
    expect(begun).toHaveLength(cold.measures.hotWaterCalls);
  });

  test('its table has 12 rows, and the ones that failed say so', () => {
    const { rows, caption } = dayTable(cold);
    expect(rows).toHaveLength(cold.draws.length);
    expect(rows).toHaveLength(12);
    expect(caption).toBeUndefined();
    const bad = rows.filter((row) => /^(cold for|never came warm)/.test(row[5]));
    expect(bad).toHaveLength(cold.measures.failedDraws);
  });
});

describe('where the frames stand', () => {
  test('at 254 to 1000 pixels no frame reaches into the next, and the drawing holds them all', () => {
    for (const width of [254, 358, 640, 1000]) {
      for (const run of [cold, inventedDay()]) {
        const frames = dayFrames(width, run, 3);
        const spans = [frames.draws, frames.store, ...frames.strips, frames.power];
        if (frames.rooms !== null) spans.push(frames.rooms);
        spans.slice(1).forEach(({ top }, index) => {
          expect(top - spans[index].bottom).toBeGreaterThanOrEqual(20); // a line of text and its air
        });
        expect(frames.axis).toBe(spans.at(-1)?.bottom);
        expect(frames.height).toBeGreaterThanOrEqual(frames.axis + 20);
        expect(frames.right - frames.left).toBeGreaterThanOrEqual(120);
      }
    }
  });

  test('the rooms have a frame where they are heated, with the 20 °C of their set-point inside', () => {
    expect(dayFrames(358, cold, 2).rooms).toBeNull();
    expect(dayFrames(358, inventedDay(), 2).rooms).not.toBeNull();
    const [least, most] = roomDomain(inventedDay());
    expect(least).toBeLessThan(20);
    expect(most).toBeGreaterThan(20);
  });
});

describe('what is written over draws that ran cold', () => {
  const x = scaleLinear([0, day], [28, 264]);
  const failing = (hours: readonly number[], name = 'bath') =>
    inventedDay({
      draws: hours.map((at) =>
        inventedDraw({
          name,
          from: at * hour,
          to: at * hour + 300,
          coldTime: 60,
          coldVolume: 0.038,
        }),
      ),
    });
  const texts = (run: DayRun) =>
    failureTexts(run, x, 28, 264).map(({ text }) => text.replaceAll('\u00a0', ' '));

  test('one has name and litres, two far apart too, near ones one word each, nearer ones their number', () => {
    expect(texts(failing([7]))).toEqual(['bath cold, 38 l']);
    expect(texts(failing([3, 20]))).toEqual(['bath cold, 38 l', 'bath cold, 38 l']);
    expect(texts(failing([7, 12]))).toEqual(['cold', 'cold']);
    expect(texts(failing([7, 8, 20]))).toEqual(['2 cold', 'bath cold, 38 l']);
    expect(texts(failing([]))).toEqual([]);
  });

  test('one that was warm but short of its heat is called short', () => {
    const draws = failing([7, 8]).draws.map((draw) => ({
      ...draw,
      coldTime: 0,
      usefulAsked: 2 * draw.useful,
    }));
    expect(failureTexts(inventedDay({ draws }), x, 28, 264)[0].text).toBe('2 short');
  });

  test('77 draws of 7 days are told in a few texts that stand clear of each other within the frame', () => {
    const week = scaleLinear([0, 7 * day], [28, 264]);
    const hours = Array.from({ length: 7 }, (_, at) =>
      [6.75, 7.25, 7.75, 8.25, 12.5, 13, 17.5, 18.5, 19.5, 21, 22].map((each) => each + 24 * at),
    ).flat();
    const placed = failureTexts(failing(hours), week, 28, 264);
    expect(placed.length).toBeGreaterThanOrEqual(2);
    expect(placed.reduce((sum, { at }) => sum + at.length, 0)).toBe(77);
    placed.forEach(({ left, text }, index) => {
      expect(left).toBeGreaterThanOrEqual(28);
      expect(left + textWidth(text)).toBeLessThanOrEqual(264);
      const next = placed[index + 1];
      if (next) expect(next.left - left).toBeGreaterThanOrEqual(textWidth(text) + 8);
    });
  });

  test('a name of 200 letters leaves one word, for the plot has 236 pixels', () => {
    const own = withSetting(inventedDay().variant, 'day.pattern', 'own');
    const long = { ...failing([7], 'Dog wash '.repeat(25)), variant: own };
    expect(failureTexts(long, x, 28, 264).map(({ text }) => text)).toEqual(['cold']);
  });
});

describe('strips', () => {
  test('the immersion heater has a strip of its own where there is one: 3 in place of 2', () => {
    expect(dayStrips(cold).map(({ name }) => name)).toEqual(['calls', 'burner']);
    const heater = withSetting(timed, 'immersion.used', 'withBoiler');
    expect(dayStrips({ ...cold, variant: heater })).toHaveLength(3);
  });

  test('3 narrow neighbours become one stretch on and off; a single narrow one stays', () => {
    const stretch = (from: number, to: number) => ({
      pattern: 'off' as const,
      words: ['off'],
      minutes: '',
      from,
      to,
    });
    const all = [stretch(0, 100), stretch(100, 105), stretch(105, 110), stretch(110, 118)];
    const drawn = drawnStretches([...all, stretch(118, 200), stretch(200, 204)], 10);
    expect(drawn.map(({ from, to, words }) => [from, to, words[0]])).toEqual([
      [0, 100, 'off'],
      [100, 118, 'on and off'],
      [118, 200, 'off'],
      [200, 204, 'off'],
    ]);
  });

  test('a sensor fault ends a call, and the longest time without one is named', () => {
    const marks = [
      { at: 100, kind: 'hotWaterCalled' as const },
      { at: 400, kind: 'statSatisfied' as const },
      { at: 1000, kind: 'hotWaterCalled' as const },
      { at: 1300, kind: 'faultShown' as const },
    ];
    const told = callStretches(inventedDay({ marks })).map(({ from, pattern, words }) => [
      from,
      pattern,
      words[0] ?? '',
    ]);
    expect(told).toEqual([
      [0, 'off', ''],
      [100, 'called', 'hot water called'],
      [400, 'off', ''],
      [1000, 'called', 'hot water called'],
      [1300, 'off', 'no call'],
    ]);
  });
});

describe('times at which hot water is allowed', () => {
  const programme = (from: number, length: number, again: number, againFor: number) => ({
    ...timed.programme,
    hotWaterFrom: from * hour,
    hotWaterFor: length * hour,
    hotWaterAgainFrom: again * hour,
    hotWaterAgainFor: againFor * hour,
  });

  test('06:00 for 1 h and 17:00 for 2 h are 2 windows a day, 14 in 7 days; always has none', () => {
    const windows = hotWaterWindows(programme(6, 1, 17, 2), day);
    expect(windows).toEqual([
      { from: 6 * hour, to: 7 * hour },
      { from: 17 * hour, to: 19 * hour },
    ]);
    expect(hotWaterWindows(programme(6, 1, 17, 2), 7 * day)).toHaveLength(14);
    expect(hotWaterWindows(defaultVariant('always').programme, day)).toEqual([]);
  });

  test('23:00 for 3 h goes over midnight; windows that touch are one; heating’s times cut nothing', () => {
    const late = hotWaterWindows(programme(23, 3, 12, 0), day);
    expect(late).toEqual([
      { from: 0, to: 2 * hour },
      { from: 23 * hour, to: day },
    ]);
    const touching = { ...programme(6, 2, 8, 2), heating: 'timed' as const };
    expect(hotWaterWindows(touching, day)).toEqual([{ from: 6 * hour, to: 10 * hour }]);
  });

  test('their word is in full with room, short with less, and once where there is least', () => {
    const x = (width: number, days: number) => scaleLinear([0, days * day], [0, width]);
    const windows = (days: number) => hotWaterWindows(programme(6, 1, 17, 2), days * day);
    const texts = (width: number, days: number) =>
      windowTexts(windows(days), x(width, days), 0, width).map(({ text }) => text);
    expect(texts(760, 1)).toEqual(['hot water allowed', 'hot water allowed']);
    expect(texts(200, 1)).toEqual(['allowed', 'allowed']);
    expect(texts(236, 7)).toEqual(['allowed']);
    expect(windowTexts([], x(236, 1), 0, 236)).toEqual([]);
  });
});

test('of 112 draws the table has 30, in order of time: 5 that failed and the largest', () => {
  const draws = Array.from({ length: 112 }, (_, at) =>
    inventedDraw({
      from: 600 * at,
      to: 600 * at + 60,
      volume: 0.001 * (at + 1),
      coldTime: at % 25 === 0 ? 5 : 0,
    }),
  );
  const { rows, caption } = dayTable(inventedDay({ draws }));
  expect(rows).toHaveLength(30);
  expect(caption).toBe('30 of 112 draws: 5 that failed and the largest of the others.');
  expect(rows.filter((row) => row[5].startsWith('cold'))).toHaveLength(5);
  const times = rows.map(([time]) => time);
  expect([...times].sort()).toEqual(times);
  expect(rows.at(-1)?.[2]).toBe('112.0');
});
