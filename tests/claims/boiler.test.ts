import { describe, expect } from 'vitest';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import { measuresWith, runWith, type Settings } from '../support/houseWith.ts';
import { resultOf, termsOf } from '../support/recordOf.ts';

const winter: Settings = { 'house.outside': -3, 'run.duration': 4 };
const hotWaterAlone: Settings = { 'heating.arrangement': 'hotWaterOnly' };
const efficiencyWith = (settings: Settings) => measuresWith(settings).efficiency ?? Number.NaN;
const condensingWith = (settings: Settings) => measuresWith(settings).condensingShare ?? Number.NaN;
const returnWith = (settings: Settings) => measuresWith(settings).meanReturn ?? Number.NaN;

// A burner whose least is more than a small coil takes: it goes on and off
const cycling: Settings = {
  'boiler.output': 35,
  'boiler.minimumOutput': 18,
  'coil.length': 6,
};
const startsWith = (settings: Settings) =>
  measuresWith({ ...hotWaterAlone, ...cycling, ...settings }).burnerStarts ?? Number.NaN;

describe('fuel', () => {
  claim(
    'The colder the water that comes back, the more steam of the flue gas condenses and gives its heat.',
    () => {
      expectMoves(
        'boilerEfficiency',
        { returnTemperature: [30, 70], load: [0.3, 1] },
        { returnTemperature: 'down' },
      );
      expectMoves(
        'condensingShare',
        { returnTemperature: [53, 55] },
        { returnTemperature: 'down' },
      );
    },
  );

  claim('A lower flow temperature, larger radiators, a larger coil.', () => {
    const coolerHotWater = [85, 75, 65].map((target) =>
      efficiencyWith({ ...hotWaterAlone, 'boiler.hotWaterFlow': target, 'stat.setPoint': 55 }),
    );
    expectRising(coolerHotWater);
    const coolerHeating = [70, 60, 50].map((target) =>
      efficiencyWith({ ...winter, 'boiler.heatingFlow': target }),
    );
    expectRising(coolerHeating);
    const radiators = [8, 12, 18, 25].map((output) =>
      efficiencyWith({ ...winter, 'heating.radiatorOutput': output }),
    );
    expectRising(radiators);
    const coils = [6, 12, 20].map((length) => efficiencyWith({ 'coil.length': length }));
    expectRising(coils);
  });

  claim('A cooler return: a lower flow temperature, larger radiators, a larger coil.', () => {
    expectMoves(
      'meanEfficiency',
      { heat: [1e6, 1e8], fuel: [1e8, 1e9] },
      { heat: 'up', fuel: 'down' },
    );
    const coils = [6, 12, 20];
    expectFalling(coils.map((length) => returnWith({ 'coil.length': length })));
    expectRising(coils.map((length) => efficiencyWith({ 'coil.length': length })));
  });

  claim('Net figures leave the heat of the steam out of the fuel and so look 11 % better;', () => {
    for (const gross of [0.6, 0.8, 0.9]) {
      expect(resultOf('netFromGross', { gross }) / gross).toBeCloseTo(1.11, 2); // printed digits
    }
  });
  claim('Only the fuel.', () => expect(termsOf('netFromGross')).toEqual(['gross']));

  claim('A lower flow temperature or less flow brings the return below the dew point.', () => {
    const cooler = [85, 75, 65].map((target) =>
      condensingWith({ ...hotWaterAlone, 'boiler.hotWaterFlow': target, 'stat.setPoint': 55 }),
    );
    expectRising(cooler);
    const given = (flow: number): Settings => ({
      ...hotWaterAlone,
      'primary.flowFrom': 'given',
      'primary.flow': flow,
    });
    const slower = [30, 20, 10, 5];
    expectRising(slower.map((flow) => condensingWith(given(flow))));
    expectFalling(slower.map((flow) => returnWith(given(flow))));
  });

  claim('A cooler return raises it, above all below the dew point.', () => {
    const gained = (from: number) =>
      resultOf('boilerEfficiency', { returnTemperature: from - 10 }) -
      resultOf('boilerEfficiency', { returnTemperature: from });
    expect(gained(50)).toBeGreaterThan(2 * gained(70)); // below 54 °C, and well above
    expectMoves('burnerGives', { fuel: [1e3, 4e4], efficiency: [0.7, 1] }, { efficiency: 'up' });
  });

  claim('A cooler return needs less fuel for the same heat.', () => {
    expectMoves('fuelBurnt', { power: [1e3, 4e4], efficiency: [0.7, 1] }, { efficiency: 'down' });
  });

  claim('Less heat, or a cooler return.', () => {
    expectMoves(
      'fuelOfRun',
      { heat: [1e6, 1e8], efficiency: [0.7, 1] },
      { heat: 'up', efficiency: 'down' },
    );
  });

  claim('A cooler return condenses more; more heating takes more of the fuel.', () => {
    expectMoves('condensingShare', { returnTemperature: [53, 55] }, { returnTemperature: 'down' });
    const share = (outside: number) => {
      const { fuel, fuelForHeating } = measuresWith({ ...winter, 'house.outside': outside });
      return (fuelForHeating ?? Number.NaN) / (fuel ?? Number.NaN);
    };
    expectRising([10, 3, -3].map(share));
  });

  claim('Less fuel: a cooler return; or other prices and factors.', () => {
    for (const key of ['bill', 'carbonOfRun']) {
      expectMoves(
        key,
        { fuel: [1e6, 1e9], perFuel: [1e-8, 1e-7], perElectricity: [1e-8, 2e-7] },
        { fuel: 'up', perFuel: 'up', perElectricity: 'up' },
      );
    }
  });

  claim(
    'Percentage points better or worse than the usual condensing boiler, on gross calorific value.',
    () => {
      const shifts = [-20, -10, 0, 1];
      const found = shifts.map((shift) => efficiencyWith({ 'boiler.efficiencyShift': shift }));
      expectRising(found);
      expect(found[2] - found[0]).toBeCloseTo(0.2, 2); // a hundredth: the runs differ a little
    },
  );
});

describe('cycling', () => {
  claim(
    'Little water, a narrow differential or far more power than is taken makes the bursts short.',
    () => {
      expectMoves(
        'onTime',
        { capacity: [2e4, 2e6], cutIn: [40, 55], cutOut: [56, 70], power: [2e3, 4e4] },
        { capacity: 'up', cutIn: 'down', cutOut: 'up', power: 'down' },
      );
    },
  );

  claim('A wider differential, more water, a lower minimum output.', () => {
    expectMoves(
      'onTime',
      { capacity: [2e4, 2e6], cutOut: [56, 70], power: [2e3, 4e4] },
      { capacity: 'up', cutOut: 'up', power: 'down' },
    );
  });

  claim('Better insulation or a wider differential.', () => {
    expectMoves(
      'offTime',
      { conductance: [0.5, 20], cutIn: [40, 55], cutOut: [56, 70] },
      { conductance: 'down', cutIn: 'down', cutOut: 'up' },
    );
  });

  claim('Less power for the same heat raises it and spares starts.', () => {
    const share = (power: number) =>
      resultOf('duty', { on: resultOf('onTime', { power }), off: resultOf('offTime') });
    expectRising([30e3, 10e3, 3e3, 1e3].map(share));
    const cycle = (power: number) => resultOf('onTime', { power }) + resultOf('offTime');
    expectRising([30e3, 10e3, 3e3, 1e3].map(cycle));
    expect(startsWith({ 'boiler.minimumOutput': 10 })).toBeLessThan(startsWith({}));
  });

  claim('A boiler that turns down further, a larger or cleaner coil, more flow.', () => {
    expectMoves('surplus', { least: [2e3, 2e4], taken: [0, 2e4] }, { least: 'up', taken: 'down' });
    const resting = (settings: Settings) =>
      measuresWith({ ...hotWaterAlone, ...cycling, ...settings }).restingTime;
    const worst = resting({});
    const flow = { 'circulator.shutOffHead': 7, 'circulator.largestFlow': 70 };
    for (const better of [{ 'boiler.minimumOutput': 10 }, { 'coil.length': 10 }, flow]) {
      expect(resting(better)).toBeLessThan(worst);
    }
    expect(resting({ 'coil.scaleThickness': 1 })).toBeGreaterThan(worst);
  });

  claim('The same minutes in shorter bursts are more starts.', () => {
    expectMoves('burnerStarted', { lit: [600, 1e5], burst: [30, 3600] }, { burst: 'down' });
  });

  claim('A lower least output, more water, a wider margin about the target.', () => {
    const as = startsWith({});
    expect(startsWith({ 'boiler.minimumOutput': 10 })).toBeLessThan(as);
    expect(startsWith({ 'boiler.waterContent': 30 })).toBeLessThan(as);
    expect(startsWith({ 'boiler.offMargin': 10, 'boiler.restartBelow': 10 })).toBeLessThan(as);
  });

  claim(
    'While the burner is lit it gives at least this; a coil that takes less makes it cycle.',
    () => {
      expect(startsWith({})).toBeGreaterThan(5);
      expect(startsWith({ 'boiler.minimumOutput': 5 })).toBeLessThanOrEqual(2);
    },
  );

  claim(
    'The controller burns more the further the flow is below its target, and less as they meet.',
    () => {
      expectMoves(
        'belowTarget',
        { target: [40, 90], flow: [10, 90] },
        { target: 'up', flow: 'down' },
      );
    },
  );
  claim('Only the settings move the target; with compensation, the rooms or the weather.', () => {
    expect(termsOf('belowTarget')).toEqual(['target', 'flow']);
  });

  claim('below zero the coil takes more, and the burner turns up', () => {
    expect(resultOf('surplus', { least: 5e3, taken: 8e3 })).toBeLessThan(0);
    const { measures } = runWith({ ...hotWaterAlone, 'boiler.minimumOutput': 3 });
    expect(measures.meanCoilHeat).toBeGreaterThan(3e3);
    expect(measures.minimumTime).toBe(0);
  });

  claim('without end when the surroundings are no colder than the cut-in', () => {
    for (const around of [55, 58])
      expect(resultOf('offTime', { around, cutIn: 55 })).toBe(Infinity);
  });

  claim('1 when it never goes off, 0 when it never comes on', () => {
    expect(resultOf('duty', { on: Infinity, off: 600 })).toBe(1);
    expect(resultOf('duty', { on: 600, off: Infinity })).toBe(0);
  });
});
