import { describe, expect } from 'vitest';
import { outsideAt } from '../../sim/plant/outside.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import { houseWith, measuresWith, runWith, type Settings, sampled } from '../support/houseWith.ts';
import { resultOf, termsOf } from '../support/recordOf.ts';

const winter: Settings = { 'house.outside': -3, 'run.duration': 4 };
const lowestRoom = (settings: Settings) => measuresWith({ ...winter, ...settings }).lowestRoom ?? 0;
const coldRoom = (settings: Settings) => measuresWith({ ...winter, ...settings }).coldRoomTime ?? 0;
const taking: Settings = { 'heating.priorityLimit': 15, 'heating.heatingTurn': 15 };

describe('radiators', () => {
  claim('A radiator half as far above the room gives well under half its rated heat.', () => {
    const share = resultOf('radiator', { excess: 25 }) / resultOf('radiator', { excess: 50 });
    expect(share).toBeLessThan(0.42);
  });
  claim('Larger radiators give the same heat from cooler water.', () => {
    expectMoves('radiator', { rated: [1e3, 3e4], excess: [5, 60] }, { rated: 'up', excess: 'up' });
    expectMoves('sufficientFlow', { need: [1e3, 2e4], rated: [5e3, 4e4] }, { rated: 'down' });
  });
  claim('no heat when the water is no warmer than the room', () => {
    for (const excess of [0, -20]) expect(resultOf('radiator', { excess })).toBe(0);
  });
  claim(
    'Radiators of twice the size give the same heat from cooler water: at 54 °C in place of 75 °C.',
    () => {
      const given = { need: 15e3, room: 20, spread: 10, exponent: 1.3 };
      expect(Math.round(resultOf('sufficientFlow', { ...given, rated: 15e3 }))).toBe(75);
      expect(Math.round(resultOf('sufficientFlow', { ...given, rated: 30e3 }))).toBe(54);
    },
  );
  claim('extended; with a wide spread the logarithmic mean asks for a somewhat hotter flow', () => {
    const [flow, back] = [60, 30].map((T) => T - 20);
    const logarithmic = (flow - back) / Math.log(flow / back);
    expect(logarithmic).toBeLessThan((flow + back) / 2); // so the same heat needs a hotter flow
  });
  claim('Larger radiators or less heat loss.', () => {
    expectMoves(
      'sufficientFlow',
      { need: [1e3, 2e4], rated: [5e3, 4e4] },
      { need: 'up', rated: 'down' },
    );
    const needed = (settings: Settings) =>
      measuresWith({ ...winter, ...settings }).sufficientFlow ?? 0;
    expectFalling([8, 12, 20].map((output) => needed({ 'heating.radiatorOutput': output })));
    expectRising([150, 250, 350].map((loss) => needed({ 'house.heatLoss': loss })));
  });
});

describe('compensation', () => {
  claim('In mild weather the house loses little, and cooler radiators give it just that.', () => {
    expectMoves('weatherFlow', { outside: [-5, 19] }, { outside: 'down' });
  });
  claim(
    'extended on days colder than the design day; the room temperature when it is warmer outside',
    () => {
      expect(resultOf('weatherFlow', { outside: -10 })).toBeGreaterThan(
        resultOf('weatherFlow', { outside: -5 }),
      );
      expect(resultOf('weatherFlow', { outside: 25, room: 20 })).toBe(20);
    },
  );
  claim('Larger radiators or less heat loss allow a lower curve.', () => {
    const designFlow = (rated: number, need: number) => resultOf('sufficientFlow', { rated, need });
    const on = (flow: number) => resultOf('weatherFlow', { designFlow: flow });
    expectFalling([10e3, 15e3, 25e3].map((rated) => on(designFlow(rated, 9e3))));
    expectFalling([12e3, 9e3, 6e3].map((need) => on(designFlow(15e3, need))));
  });
  claim('The warmer the room, the cooler the boiler runs.', () => {
    expectMoves('loadFlow', { air: [19.05, 20.95] }, { air: 'down' });
  });
  claim('A wider band is calmer and lets the room drift further.', () => {
    const swing = (band: number) =>
      resultOf('loadFlow', { band, air: 19.9 }) - resultOf('loadFlow', { band, air: 20.1 });
    expectFalling([1, 2, 4].map(swing));
    const asksForMost = (band: number) =>
      [19.5, 19, 18, 17].find((air) => resultOf('loadFlow', { band, air }) >= 60) ?? Number.NaN;
    expectFalling([1, 2, 4].map(asksForMost));
  });
  claim('A compensated flow does not fall below this.', () => {
    for (const control of ['loadCompensation', 'weatherCompensation']) {
      const { of, samples } = runWith({
        'heating.control': control,
        'heating.lowestFlow': 40,
        'house.outside': 15,
        'run.duration': 4,
      }).trace;
      const targets = [...of.flowTarget.subarray(0, samples)].filter((T) => Number.isFinite(T));
      expect(targets.length).toBeGreaterThan(10);
      expect(Math.min(...targets)).toBeGreaterThanOrEqual(40 - 1e-9);
    }
  });
});

describe('rooms that wait', () => {
  claim(
    'A heavy, well insulated house holds its heat for days, a light and leaky one for hours.',
    () => {
      expectMoves(
        'houseTimeConstant',
        { mass: [5e4, 5e5], loss: [1, 6] },
        { mass: 'up', loss: 'down' },
      );
    },
  );
  claim('Insulation and draught-proofing; mass that the air can reach.', () => {
    expectMoves(
      'houseTimeConstant',
      { mass: [5e4, 5e5], loss: [1, 6] },
      { mass: 'up', loss: 'down' },
    );
  });
  claim(
    'While the cylinder has the boiler the house cools a little, nearly in proportion to the pause.',
    () => {
      const fall = (pause: number) => resultOf('houseCooling', { pause });
      for (const pause of [300, 900, 1800]) {
        expect(fall(2 * pause) / fall(pause)).toBeGreaterThan(1.97);
        expect(fall(2 * pause) / fall(pause)).toBeLessThan(2);
      }
    },
  );
  claim('A shorter reheat, more insulation, a time limit on hot-water priority.', () => {
    expectMoves(
      'houseCooling',
      { pause: [60, 2e4], timeConstant: [1e4, 5e5] },
      { pause: 'up', timeConstant: 'down' },
    );
    expectRising([150, 250, 350].map((loss) => -lowestRoom({ 'house.heatLoss': loss })));
    const limited = lowestRoom({ 'heating.arrangement': 'priorityWithLimit', ...taking });
    expect(limited).toBeGreaterThan(lowestRoom({}) + 0.1);
  });
  claim(
    'Insulation lowers it; with heavier fabric or a shorter reheat the rooms feel it less.',
    () => {
      expectMoves(
        'houseLoses',
        { loss: [50, 500], air: [15, 22], outside: [-10, 10] },
        { loss: 'up', air: 'up', outside: 'down' },
      );
      expectRising(['light', 'medium', 'heavy'].map((mass) => lowestRoom({ 'house.mass': mass })));
      expectRising([4, 8, 12].map((length) => lowestRoom({ 'coil.length': length })));
    },
  );
  claim('air and fabric share it, the fabric slows the fall', () => {
    expectRising(['light', 'medium', 'heavy'].map((mass) => lowestRoom({ 'house.mass': mass })));
  });
  claim('The air falls until radiators and fabric make up for what the house loses.', () => {
    const run = runWith({ ...winter, 'coil.length': 6 }); // a long reheat
    const air = [15, 25, 35, 45].map((minutes) => sampled(run, 'air', minutes * 60));
    expectFalling(air);
    expectFalling([0, 1, 2].map((i) => air[i] - air[i + 1])); // ever more slowly
  });
  claim('A shorter reheat, a turn for the rooms, a heavier or better insulated house.', () => {
    expectFalling([6, 9, 12].map((length) => coldRoom({ 'coil.length': length })));
    expect(coldRoom({ 'heating.arrangement': 'priorityWithLimit', ...taking })).toBeLessThan(
      coldRoom({}),
    );
    expectFalling(['light', 'medium', 'heavy'].map((mass) => coldRoom({ 'house.mass': mass })));
    expectFalling([350, 250, 150].map((loss) => coldRoom({ 'house.heatLoss': loss })));
  });
  claim('A short reheat is hardly felt in a room; a long one is.', () => {
    const felt = (settings: Settings) => {
      const at = (more: Settings) => measuresWith({ 'run.duration': 3, ...more }).lowestRoom ?? 0;
      return at({ 'start.hotShare': 100 }) - at(settings); // beside a day without a reheat
    };
    expect(felt({ 'start.hotShare': 60 })).toBeLessThan(0.3); // a quarter of an hour
    expect(felt({ 'boiler.output': 10 })).toBeGreaterThan(1.5); // an hour and more
  });
  claim(
    'Warmer by this in mid-afternoon and colder by this before dawn; 0 for a constant day.',
    () => {
      const at = (hour: number, outsideSwing: number) =>
        outsideAt({ ...houseWith().house, outside: 5, outsideSwing }, hour * 3600);
      expect(at(15, 4)).toBeCloseTo(9, 6);
      expect(at(3, 4)).toBeCloseTo(1, 6);
      for (const hour of [0, 9, 15]) expect(at(hour, 0)).toBe(5);
    },
  );
  claim('Only the settings of the house.', () => {
    expect(termsOf('outsideWave')).toEqual(['mean', 'swing', 'hours']);
  });
});
