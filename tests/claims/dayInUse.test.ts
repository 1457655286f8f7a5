import { describe, expect } from 'vitest';
import type { DayRun } from '../../shared/day.ts';
import { litres } from '../../shared/format.ts';
import { dayRun } from '../../sim/run/day.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { lossPerKelvin } from '../../sim/closures/storeLoss.ts';
import { hygieneWorking } from '../../src/explain/hygieneWorkings.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import { houseWith, type Settings } from '../support/houseWith.ts';

const days = new Map<string, DayRun>();
/** A day in few layers that repeats itself, unless it is stated once. */
function dayWith(settings: Settings = {}): DayRun {
  const house = houseWith({
    'heating.arrangement': 'hotWaterOnly',
    'run.layers': 16,
    ...settings,
  });
  const key = JSON.stringify(house);
  const day = days.get(key) ?? toEnd(dayRun(house));
  days.set(key, day);
  return day;
}
const measuresOf = (settings: Settings = {}) => dayWith(settings).measures;

/** A small store on a small boiler, of which more is asked than it has. */
const asked: Settings = {
  'day.repeat': 'stated',
  'coil.coilDiameter': 0.2,
  'cylinder.volume': 90,
  'cylinder.height': 0.8,
  'boiler.output': 2,
  'boiler.minimumOutput': 1,
};
const bathers: Settings = { ...asked, 'day.baths': 3, 'day.showers': 6 };
const profile: Settings = {
  ...asked,
  'day.pattern': 'XL',
  'cylinder.volume': 60,
  'boiler.output': 6,
};
/** Days of a household and by a load profile, behind a pipe or not, that ran cold or did not. */
const unlike = [{}, { 'draw.pipeLength': 10 }, bathers, profile];

describe('at the tap', () => {
  claim('A shorter or smaller pipe to the tap, a larger or hotter store.', () => {
    expectMoves('ranFor', { flow: [1e-5, 4e-4], time: [1, 3600] }, { flow: 'up', time: 'up' });
    const waited = (settings: Settings) =>
      measuresOf({ 'day.repeat': 'stated', ...settings }).waitVolume;
    expectRising([0, 4, 10].map((length) => waited({ 'draw.pipeLength': length })));
    expectRising(
      ['15', '22', '28'].map((size) => waited({ 'draw.pipeLength': 10, 'draw.pipeSize': size })),
    );
    const cold = (settings: Settings) => measuresOf({ ...bathers, ...settings }).coldVolume;
    expectFalling([60, 90, 120].map((volume) => cold({ 'cylinder.volume': volume })));
    expectFalling([50, 60, 70].map((setPoint) => cold({ 'stat.setPoint': setPoint })));
  });

  claim('What is not useful came while the tap ran cooler than wanted.', () => {
    let cooler = 0;
    for (const settings of unlike) {
      for (const { heat, useful, waitTime, coldTime } of dayWith(settings).draws) {
        const ranCool = waitTime === null || waitTime > 0 || coldTime > 0;
        if (ranCool) cooler++;
        // a millionth is the rounding of the two sums
        if (ranCool) expect(useful).toBeLessThan(heat);
        else expect(useful / heat).toBeCloseTo(1, 6);
      }
    }
    expect(cooler).toBeGreaterThan(10);
  });

  claim('Each draw of a profile asks for a heat, and what one got too much helps no other.', () => {
    for (const settings of [profile, { ...profile, 'stat.setPoint': 50 }]) {
      const { draws, measures } = dayWith(settings);
      const missing = draws.map(({ usefulAsked, useful }) => (usefulAsked ?? Number.NaN) - useful);
      const short = missing.filter((heat) => heat > 0).reduce((sum, heat) => sum + heat, 0);
      // 100 J: an event that ends a draw is found to a tenth of a millisecond of some 20 kW
      expect(Math.abs((measures.shortfall ?? Number.NaN) - short)).toBeLessThan(100);
      expect(measures.shortfall).toBeGreaterThan(1e4);
    }
  });

  claim('More hot water in the store when the large draws come.', () => {
    expectMoves('stillMissing', { asked: [2e7, 8e7], got: [0, 2e7] }, { asked: 'up', got: 'down' });
    const short = (settings: Settings) => measuresOf({ ...profile, ...settings }).shortfall ?? 0;
    expectFalling([50, 60, 75].map((volume) => short({ 'cylinder.volume': volume })));
    expectFalling([50, 60, 65].map((setPoint) => short({ 'stat.setPoint': setPoint })));
  });
});

describe('what a day costs', () => {
  claim('Better insulation, a cooler return, less run off while waiting.', () => {
    expectMoves(
      'efficiencyOfDay',
      { useful: [1e7, 4e7], fuel: [4e7, 9e7], electricity: [0, 1e7] },
      { useful: 'up', fuel: 'down', electricity: 'down' },
    );
    const efficiency = (settings: Settings) => measuresOf(settings).efficiency ?? Number.NaN;
    expectRising([4, 1.8, 1].map((loss) => efficiency({ 'cylinder.standingLoss': loss })));
    // a cooler return by less flow and by more coil
    const given = (flow: number) => ({ 'primary.flowFrom': 'given', 'primary.flow': flow });
    expectRising([20, 12, 8].map((flow) => efficiency(given(flow))));
    expectRising([6, 12, 20].map((length) => efficiency({ 'coil.length': length })));
    expectRising([10, 4, 0].map((length) => efficiency({ 'draw.pipeLength': length })));
  });

  claim('It loses day and night, and the more the longer it is kept hot.', () => {
    expectMoves(
      'lostInTime',
      { UA: [0.5, 5], difference: [1, 60], time: [3600, 1e5] },
      { UA: 'up', difference: 'up', time: 'up' },
    );
    const { trace } = dayWith();
    expect(Math.min(...trace.of.standingLoss.subarray(0, trace.samples))).toBeGreaterThan(20);
    // the same draws, with the boiler at hand for ever longer
    const lost = (minutes: number) =>
      measuresOf({
        'programme.hotWater': 'timed',
        'programme.hotWaterFor': minutes,
        'programme.hotWaterAgainFor': minutes,
      }).standingLoss;
    expectRising([60, 120, 240].map(lost));
  });
  claim('Insulation; hot water at set times only, where draws allow it; a smaller store.', () => {
    const lost = (settings: Settings) => measuresOf(settings).standingLoss;
    expectFalling([4, 1.8, 1].map((loss) => lost({ 'cylinder.standingLoss': loss })));
    expect(lost({ 'programme.hotWater': 'timed' })).toBeLessThan(lost({}));
    // what a label declares says nothing of the size; insulation of one thickness does, and so does one class
    for (const lossFrom of ['insulation', 'class']) {
      const perKelvin = [300, 210, 120].map((volume) =>
        lossPerKelvin(
          houseWith({ ...asked, 'cylinder.volume': volume, 'cylinder.lossFrom': lossFrom })
            .cylinder,
        ),
      );
      expectFalling(perKelvin);
    }
  });
  claim('Less loss, or other prices.', () => {
    expectMoves(
      'costOfLoss',
      { loss: [1e5, 1e7], cost: [0.1, 10], heat: [1e7, 1e8] },
      { loss: 'up', cost: 'up' },
    );
    const cost = (settings: Settings) => measuresOf(settings).standingLossCost ?? Number.NaN;
    expectFalling([4, 1.8, 1].map((loss) => cost({ 'cylinder.standingLoss': loss })));
  });
});

describe('how warm it was kept', () => {
  claim(['Never at 60 °C: ….', '… never reach 60 °C'], () => {
    for (const settings of unlike) {
      const day = dayWith(settings);
      const { layers, samples, layerTemperature } = day.trace;
      const hot = new Set<number>();
      for (let i = 0; i < layers * samples; i++) if (layerTemperature[i] >= 60) hot.add(i % layers);
      const never = (day.variant.cylinder.volume * (layers - hot.size)) / layers;
      expect(day.hygiene.neverHot).toBeCloseTo(never, 9);
      expect(never).toBeGreaterThan(0);
      expect(hygieneWorking('hygiene.neverHot', day).title).toContain(
        `${litres(day.hygiene.neverHot)} never reach 60`,
      );
    }
  });

  claim(
    [
      'Cooler than 50 °C a minute after opening: … of … draws.',
      '… of … draws have less than 50 °C after a minute',
    ],
    () => {
      const counts = unlike.map((settings) => {
        const day = dayWith(settings);
        const long = day.draws.filter(({ from, to }) => to - from >= 60);
        const cool = long.filter(({ from }) => {
          const { time, of } = day.trace;
          // at the sample next after the minute, at most a quarter of one later
          return of.arriving[time.findIndex((at) => at >= from + 60)] < 50;
        });
        expect([day.hygiene.cooler, day.hygiene.longDraws]).toEqual([cool.length, long.length]);
        expect(hygieneWorking('hygiene.afterMinute', day).title).toMatch(
          new RegExp(`^${cool.length} of ${long.length} draws have less than 50\\s°C after`),
        );
        return cool.length;
      });
      expect(counts[0]).toBe(0);
      expect(counts[2]).toBeGreaterThan(0);
    },
  );
});
