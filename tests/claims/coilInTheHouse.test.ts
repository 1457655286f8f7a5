import { describe, expect } from 'vitest';
import { type CoilParts, coilParts } from '../../src/explain/coilParts.ts';
import { readingAt } from '../../src/explain/reading.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import {
  houseWith,
  measuresWith,
  presetWith,
  recoveryWith,
  runOf,
  runWith,
  sampled,
  type Settings,
} from '../support/houseWith.ts';
import { resultOf } from '../support/recordOf.ts';

const alone: Settings = { 'heating.arrangement': 'hotWaterOnly' };
const small: Settings = { ...alone, 'coil.length': 6 };
const given = (flow: number): Settings => ({ 'primary.flowFrom': 'given', 'primary.flow': flow });

/** What the coil's conductance is made of at a few moments of a reheat. */
function partsOf(variant: ReturnType<typeof houseWith>): CoilParts[] {
  const result = runOf(variant);
  return [5, 10, 20, 30].map((minutes) => {
    const parts = coilParts(result, readingAt(result, minutes * 60));
    if (!parts) throw new Error(`the coil rests at ${minutes} min; expected it to run`);
    return parts;
  });
}

describe('which resistance decides', () => {
  claim(
    'In a clean coil the water outside it decides; scale is as much at two millimetres of dense or one of porous scale, and more beyond.',
    () => {
      for (const { ho, hi, ratio, Rw } of partsOf(houseWith(alone))) {
        expect(1 / ho).toBeGreaterThan(3 * (ratio / hi + Rw));
      }
      for (const [thickness, k] of [
        [2, 2.2],
        [1, 1.1],
      ]) {
        const scaled = (mm: number) =>
          houseWith({ ...alone, 'coil.scaleThickness': mm, 'coil.scaleConductivity': k });
        for (const { ho, Rs } of partsOf(scaled(thickness))) {
          expect(Math.abs(Rs * ho - 1)).toBeLessThan(0.15); // as much, as one says of a film that moves
        }
        for (const { ho, Rs } of partsOf(scaled(1.5 * thickness))) {
          expect(Rs).toBeGreaterThan(1.3 / ho);
        }
      }
    },
  );

  claim(
    'The scale lies between tube and water and resists more than everything else together.',
    () => {
      for (const { ho, hi, ratio, Rw, Rs } of partsOf(presetWith('scaled-coil'))) {
        expect(Rs).toBeGreaterThan(1 / ho + ratio / hi + Rw);
      }
    },
  );

  claim('The coil has too little surface to pass what the boiler could give.', () => {
    const { meanCoilHeat } = runOf(presetWith('undersized-coil')).measures;
    const { meanCoilHeat: healthy } = measuresWith();
    expect(meanCoilHeat).toBeLessThan(0.6 * 24e3);
    expect(meanCoilHeat).toBeLessThan(healthy ?? 0);
  });
});

describe('as the store warms', () => {
  claim('As the store warms the difference shrinks and the coil fades:', () => {
    const run = runWith(small); // at its flow target from 8 min on
    const moments = [10, 20, 30, 40].map((minutes) => minutes * 60);
    expectFalling(
      moments.map((at) => sampled(run, 'coilInlet', at) - sampled(run, 'coilWater', at)),
    );
    expectFalling(moments.map((at) => sampled(run, 'coilHeat', at)));
  });

  claim('As the store warms, return and flow climb together', () => {
    const run = runWith(alone); // at full output up to 19 min
    const moments = [6, 10, 14, 18].map((minutes) => minutes * 60);
    expectRising(moments.map((at) => sampled(run, 'returnTemperature', at)));
    expectRising(moments.map((at) => sampled(run, 'flow', at)));
  });

  claim(
    'As the store warms the return rises, and the flow rises with it; at the flow limit the boiler must give less.',
    () => {
      expectMoves(
        'flowNeeded',
        { back: [10, 70], power: [1e3, 4e4], mc: [200, 3000] },
        { back: 'up', power: 'up', mc: 'down' },
      );
      const run = runWith(alone);
      expectFalling([22, 26, 30, 34].map((minutes) => sampled(run, 'boilerHeat', minutes * 60)));
    },
  );

  claim('held at the flow limit: the heat falls instead', () => {
    const run = runWith(small);
    const moments = [15, 25, 35].map((minutes) => minutes * 60);
    for (const at of moments) expect(Math.abs(sampled(run, 'flow', at) - 80)).toBeLessThan(2);
    expectFalling(moments.map((at) => sampled(run, 'boilerHeat', at)));
  });

  claim(
    [
      'Above the flow limit, …, the boiler must give less, here for ….',
      'The flow limit is …: above it the boiler gives less than its full output.',
      'above its limit the boiler must give less, as it does for … of this reheat',
    ],
    () => {
      const run = runWith(small);
      for (const minutes of [15, 25, 35])
        expect(sampled(run, 'boilerHeat', minutes * 60)).toBeLessThan(23e3);
    },
  );

  claim('A higher limit or a better coil puts this off.', () => {
    const atFullOutput = (settings: Settings) =>
      measuresWith({ ...alone, ...settings }).outputLimitTime;
    expectRising([70, 75, 80, 85].map((limit) => atFullOutput({ 'boiler.hotWaterFlow': limit })));
    expectRising([6, 12, 20].map((length) => atFullOutput({ 'coil.length': length })));
  });

  claim(
    'There a larger boiler would change nothing: only a larger or cleaner coil, more flow or a higher limit speeds the reheat.',
    () => {
      // the coil of the cause is at its flow limit for nine tenths of the reheat
      const with_ = (settings: Settings) =>
        runOf(presetWith('undersized-coil', settings)).measures.recovery ?? Infinity;
      const as = with_({});
      expect(with_({ 'boiler.output': 36 }) / as).toBeGreaterThan(0.98);
      expect(with_({ 'coil.length': 6 })).toBeLessThan(0.9 * as);
      expect(with_({ 'coil.scaleThickness': 1 })).toBeGreaterThan(1.1 * as);
      expect(with_({ 'boiler.hotWaterFlow': 85 })).toBeLessThan(0.95 * as);
      expect(with_({ ...given(30) })).toBeLessThan(with_({ ...given(15) }));
    },
  );

  claim(
    'With the flow only a little above the set-point the coil passes less and less as the store warms.',
    () => {
      const run = runOf(presetWith('flow-too-cool'));
      const heat = [10, 20, 30, 40, 50].map((minutes) => sampled(run, 'coilHeat', minutes * 60));
      expectFalling(heat);
      expect(heat[4]).toBeLessThan(heat[0] / 3);
    },
  );

  claim(
    'extended; an indirect coil fades as the store warms, so its starting power gives too short a time',
    () => {
      const { peakCoilHeat, coilHeat, recovery } = measuresWith(small);
      expect(coilHeat / (peakCoilHeat ?? Number.NaN)).toBeLessThan(0.8 * (recovery ?? 0));
    },
  );

  claim('It falls as the store warms: a larger coil holds it up longer.', () => {
    const mean = (length: number) =>
      measuresWith({ ...alone, 'coil.length': length }).meanCoilHeat ?? 0;
    expectRising([6, 12, 20].map(mean));
  });
});

describe('the stream', () => {
  claim(
    'Heat in the flow, times the share it gives up, times how much hotter it is than the water.',
    () => {
      expectMoves(
        'coilPasses',
        { mc: [200, 3000], UA: [50, 2000], inlet: [60, 90], water: [5, 59] },
        { mc: 'up', UA: 'up', inlet: 'up', water: 'down' },
      );
    },
  );

  claim('A hotter flow, a larger or cleaner coil, cooler water around it.', () => {
    expectMoves(
      'coilPasses',
      { mc: [200, 3000], UA: [50, 2000], inlet: [60, 90], water: [5, 59] },
      { UA: 'up', inlet: 'up', water: 'down' },
    );
  });

  claim(
    'The coil passes … at this moment: what the flow carries, times the … it gives up, times how much hotter it is than the water around the coil, … against ….',
    () => {
      expect(resultOf('coilPasses', { water: 20 })).toBeCloseTo(
        2 * resultOf('coilPasses', { water: 50 }),
        6,
      );
    },
  );

  claim('The wider flow and return stand apart, the more heat the water carries.', () => {
    expectMoves('streamHeat', { flow: [50, 90], back: [10, 49] }, { flow: 'up', back: 'down' });
  });

  claim('At the same heat, more flow brings flow and return closer together.', () => {
    const apart = (flow: number) => {
      const run = runWith({ ...alone, ...given(flow), 'boiler.output': 12, 'coil.length': 20 });
      return sampled(run, 'flow', 900) - sampled(run, 'returnTemperature', 900); // at full output
    };
    expectFalling([10, 15, 25].map(apart));
  });

  claim('The more heat the coil takes out, the cooler the water comes back.', () => {
    expectMoves(
      'returnLeft',
      { flow: [50, 90], power: [1e3, 3e4], mc: [500, 3000] },
      { power: 'down' },
    );
  });

  claim('A larger coil, less flow or a cooler store lowers the return.', () => {
    const back = (settings: Settings) => measuresWith({ ...alone, ...settings }).meanReturn ?? 0;
    expectFalling([6, 12, 20].map((length) => back({ 'coil.length': length })));
    expectFalling([30, 15, 8].map((flow) => back(given(flow))));
    expectFalling([60, 55, 50].map((setPoint) => back({ 'stat.setPoint': setPoint })));
  });
});

describe('advice on the coil', () => {
  claim(
    'A target of its own, 10 K or more above the set-point, would let the coil pass heat to the end.',
    () => {
      const atTheEnd = (target: number) => {
        const run = runOf(
          presetWith('flow-too-cool', {
            'boiler.targets': 'separate',
            'boiler.hotWaterFlow': target,
          }),
        );
        return sampled(run, 'coilHeat', (run.measures.recovery ?? Number.NaN) - 120);
      };
      expectRising([65, 70, 75].map(atTheEnd));
      expect(atTheEnd(70)).toBeGreaterThan(24e3 / 5);
    },
  );

  claim('Height of the lowest turn; water below it is hardly heated.', () => {
    for (const bottom of [0.1, 0.2, 0.3]) {
      const { bottomAtSatisfied } = measuresWith({
        ...alone,
        'coil.bottom': bottom,
        'coil.top': bottom + 0.4,
        'stat.sensorHeight': bottom + 0.3,
      });
      expect(bottomAtSatisfied).toBeLessThan(10 + 0.05 * 50); // a twentieth of what the coil does
    }
    expect(recoveryWith(alone)).toBeLessThan(Infinity);
  });
});
