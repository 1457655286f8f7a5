import { describe, expect } from 'vitest';
import type { DayRun } from '../../shared/day.ts';
import { dayRun } from '../../sim/run/day.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { showersPerDay } from '../../sim/closures/householdUse.ts';
import { tapPipeContent } from '../../sim/plant/tapPipe.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import { houseWith, runWith, type Settings } from '../support/houseWith.ts';
import { recordOf, resultOf, termsOf } from '../support/recordOf.ts';

const oneDay: Settings = {
  'heating.arrangement': 'hotWaterOnly',
  'day.repeat': 'stated',
  'day.days': 1,
  'run.layers': 16,
};
const days = new Map<string, DayRun>();
function dayWith(settings: Settings): DayRun {
  const house = houseWith({ ...oneDay, ...settings });
  const key = JSON.stringify(house);
  const day = days.get(key) ?? toEnd(dayRun(house));
  days.set(key, day);
  return day;
}

const jets = ['sideInletEddies', 'perforatedInletEddies', 'impingementInletEddies'];

describe('the cold water that enters', () => {
  claim(
    'Cold water is heavier and stays below unless the jet is fast: a high number keeps the layers, a low one stirs them.',
    () => {
      expectMoves(
        'inletRichardson',
        { entering: [999, 1000], store: [980, 998], velocity: [0.05, 2] },
        { entering: 'up', store: 'down', velocity: 'down' },
      );
      for (const key of jets)
        expectMoves(key, { reynolds: [2e4, 5e4], richardson: [10, 80] }, { richardson: 'down' });
    },
  );
  claim('A wider or deflected inlet and a slower draw; the velocity counts squared.', () => {
    expectMoves('inletRichardson', { velocity: [0.05, 2] }, { velocity: 'down' });
    const [slow, fast] = [0.2, 0.4].map((velocity) => resultOf('inletRichardson', { velocity }));
    expect(slow / fast).toBeCloseTo(4, 9);
  });
  claim('below 0 the entering water is lighter and rises; infinite without flow', () => {
    expect(resultOf('inletRichardson', { entering: 980, store: 990 })).toBeLessThan(0);
    expect(resultOf('inletRichardson', { velocity: 0 })).toBe(Infinity);
  });
  claim(
    'The faster the draw and the smaller the difference in temperature, the deeper the cold jet stirs.',
    () => {
      for (const key of jets) {
        expectMoves(
          key,
          { reynolds: [2e4, 5e4], richardson: [10, 80] },
          { reynolds: 'up', richardson: 'down' },
        );
      }
    },
  );
  claim('A slower draw, a wider inlet, a plate that turns the jet.', () => {
    for (const key of jets)
      expectMoves(key, { reynolds: [2e4, 5e4], richardson: [10, 80] }, { reynolds: 'up' });
    // in a fast jet; in a slow one the three fits stand the other way round, as is said outside the range
    const at = (key: string) => resultOf(key, { reynolds: 4e5, richardson: 100 });
    expectFalling(['sideInletEddies', 'impingementInletEddies'].map(at));
  });
  claim(
    'an estimate within several times: at Re/Ri 100 the plain inlet comes out gentler than the other two and above 2000 rougher, another work has 5 throughout, and another lets the factor grow only between Re 2100 and 10 000',
    () => {
      const at = (ratio: number) =>
        jets.map((key) => resultOf(key, { reynolds: 100 * ratio, richardson: 100 }));
      const [plain, ...others] = at(100);
      for (const other of others) expect(plain).toBeLessThan(other);
      for (const ratio of [2100, 5000]) {
        const [rough, ...gentle] = at(ratio);
        for (const other of gentle) expect(rough).toBeGreaterThan(other);
      }
    },
  );
  claim('never below 1; infinite when the entering water is not the heavier', () => {
    for (const key of jets) {
      expect(resultOf(key, { reynolds: 2100, richardson: 1e9 })).toBe(1);
      expect(resultOf(key, { richardson: 0 })).toBe(Infinity);
    }
  });
  claim(
    'How the cold water enters: spread over a height that you type, or as a jet that stirs the deeper the faster it is and the less it differs from the store.',
    () => {
      // a store all hot, 60 l drawn: what is above 40 °C afterwards
      const left = (flow: number, hot: number) => {
        const run = runWith({
          'heating.arrangement': 'hotWaterOnly',
          'draw.inlet': 'plain',
          'draw.flow': flow,
          'draw.volume': 60,
          'start.hotShare': 100,
          'start.hotTemperature': hot,
          'stat.setPoint': 45,
          'boiler.output': 1,
          'boiler.minimumOutput': 1,
          'run.duration': 1,
        });
        const { trace } = run;
        const last = trace.layerTemperature.subarray((trace.samples - 1) * trace.layers);
        return (last[0] - 10) / (hot - 10); // what is mixed into the coldest layer, as a part of the difference
      };
      expectRising([8, 15, 25].map((flow) => left(flow, 60)));
      expectRising([75, 60, 50].map((hot) => left(15, hot)));
    },
  );
});

describe('mixing at the tap', () => {
  claim(
    'The cooler the store, the more of it every shower takes, until hot alone is not warm enough and the draw runs cold.',
    () => {
      expectMoves(
        'hotShare',
        { wanted: [36, 42], cold: [2, 25], hot: [43, 80] },
        { hot: 'down', wanted: 'up', cold: 'down' },
      );
      expect(resultOf('hotShare', { wanted: 40, hot: 39 })).toBe(1);
    },
  );
  claim('A hotter store, warmer incoming water or a cooler shower.', () => {
    expectMoves(
      'outletBlend',
      { amount: [10, 200], wanted: [36, 42], cold: [2, 25], hot: [43, 80] },
      { hot: 'down', cold: 'down', wanted: 'up' },
    );
  });
  claim(
    'hot below the wanted temperature comes out alone and cooler; cold above it comes out alone',
    () => {
      expect(resultOf('hotShare', { wanted: 40, cold: 10, hot: 35 })).toBe(1);
      expect(resultOf('hotShare', { wanted: 20, cold: 22, hot: 60 })).toBe(0);
    },
  );
  claim(
    [
      'As the store gives it, or mixed with cold at the tap; the cooler the store, the more of it a mixed draw takes.',
      'the hotter it is, the less of it each draw takes',
      'A cooler store takes less cold beside it, and so gives more of the same litres.',
    ],
    () => {
      const day = (setPoint: number) => dayWith({ 'stat.setPoint': setPoint }).measures;
      const days = [50, 60, 70].map(day);
      expectFalling(days.map(({ fromStore }) => fromStore));
      expectRising(days.map(({ drawn, fromStore }) => drawn - fromStore)); // the cold beside it
      for (const { drawn } of days) expect(drawn / days[0].drawn).toBeCloseTo(1, 6); // the same litres
      expectMoves('atTheTaps', { hot: [0, 0.3], cold: [0, 0.3] }, { hot: 'up', cold: 'up' });
    },
  );
  claim(
    [
      'Wanted at the tap; when the store falls below it the draw runs cold.',
      'Mixed to this; when the store falls below it the draw runs cold.',
    ],
    () => {
      const small: Settings = {
        'cylinder.volume': 90,
        'cylinder.height': 0.8,
        'boiler.output': 2,
        'boiler.minimumOutput': 1,
        'day.baths': 3,
        'day.showers': 6,
      };
      const cold = dayWith(small).draws.filter((draw) => draw.coldTime > 0);
      expect(cold.length).toBeGreaterThan(0);
      for (const draw of cold) expect(draw.mean).toBeLessThan(draw.wanted ?? 0);
    },
  );
  claim('From the store; the water in it cools between draws and runs off first.', () => {
    const waited = (length: number) => dayWith({ 'draw.pipeLength': length }).measures.waitVolume;
    expect(waited(0)).toBe(0);
    expectRising([0, 4, 12].map(waited));
  });

  claim('0 for a tap at the store; a pipe of less than 0.1 l is left out.', () => {
    const { draw } = houseWith();
    expect(tapPipeContent({ ...draw, pipeLength: 1, pipeSize: '12' })).toBeLessThan(0.1e-3);
    expect(dayWith({ 'draw.pipeLength': 1, 'draw.pipeSize': '12' }).measures.waitVolume).toBe(0);
  });
});

describe('what a household takes', () => {
  claim(
    'A larger home holds more people, up to about three: a mean over many homes, never a count in one.',
    () => {
      expectMoves('occupancy', { floorArea: [14, 250] }, { floorArea: 'up' });
      expect(resultOf('occupancy', { floorArea: 400 })).toBeLessThan(3.3);
    },
  );
  claim('In winter the cold is colder, so each bath takes more hot water.', () => {
    expectMoves('bathUse', { cold: [4, 25] }, { cold: 'down' });
  });
  claim('Fewer or shallower baths; a hotter store, which needs a guard against scalding.', () => {
    expectMoves('bathUse', { baths: [0.1, 3] }, { baths: 'up' });
    expectFalling(
      [50, 60, 70].map((setPoint) => dayWith({ 'stat.setPoint': setPoint }).measures.fromStore),
    );
  });
  claim('A shower of less flow, or a shorter one.', () => {
    // each is counted as 6 min, so a shorter one is as fewer
    expectMoves(
      'showerUse',
      { flow: [5e-5, 3e-4], showers: [0.2, 4] },
      { flow: 'up', showers: 'up' },
    );
    expect(showersPerDay(2, { bath: true, shower: true })).toBeCloseTo(1.55, 9);
  });
  claim('Habits, and what the dishwasher and the washing machine heat for themselves.', () => {
    expect(termsOf('otherUse')).toEqual(['people', 'factor']);
    expect(recordOf('otherUse').compute({ people: 2, factor: 1 })).toBeCloseTo(0.0336, 9); // 9.8 N + 14 l
  });
});
