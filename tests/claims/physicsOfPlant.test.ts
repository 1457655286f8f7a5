import { describe, expect } from 'vitest';
import { pipePressureDrop } from '../../sim/closures/pipeFriction.ts';
import { radiationCoefficient } from '../../sim/closures/radiation.ts';
import {
  pipeHeatLoss,
  pipeSurfaceCoefficient,
  usualPipe,
} from '../../sim/closures/pipeHeatLoss.ts';
import { burnerHeat, inputAtStart, inputRate, makeBurner } from '../../sim/plant/burner.ts';
import { efficiency } from '../../src/explain/physics/efficiency.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import { houseWith, runWith, sampled, type Settings } from '../support/houseWith.ts';
import { resultOf } from '../support/recordOf.ts';
import { toldOf } from '../support/toldOf.ts';

const alone: Settings = { 'heating.arrangement': 'hotWaterOnly', 'run.layers': 16 };
const run = (settings: Settings = {}) => runWith({ ...alone, ...settings });
const measures = (settings: Settings) => run(settings).measures;

describe('the burner', () => {
  claim(
    'This boiler is ideal: it gives whatever is taken, up to …, and holds its flow exactly.',
    () => {
      for (const output of [15, 24]) {
        const result = run({ 'boiler.model': 'ideal', 'boiler.output': output });
        const { of, samples, time } = result.trace;
        const { recovery } = result.measures;
        let [full, held] = [0, 0];
        for (let i = 0; i < samples && time[i] < (recovery ?? 0); i++) {
          if (!(of.boilerHeat[i] > 0)) continue;
          // a watt and a thousandth of a kelvin: the tolerance of a run is a ten-thousandth of one
          if (of.boilerHeat[i] > 1e3 * output - 1) full++;
          else if (Math.abs(of.flow[i] - of.flowTarget[i]) < 1e-3) held++;
          else throw new Error(`neither full output nor its flow at ${time[i]} s`);
          expect(of.boilerHeat[i]).toBeLessThan(1e3 * output + 1);
        }
        expect(full).toBeGreaterThan(4);
        expect(held).toBeGreaterThan(4);
      }
    },
  );
  claim('It burns no fuel that is counted and never cycles.', () => {
    for (const length of [6, 12]) {
      const ideal = run({ 'boiler.model': 'ideal', 'coil.length': length, 'boiler.output': 24 });
      expect([ideal.measures.fuel, ideal.measures.burnerStarts]).toEqual([null, null]);
      expect(ideal.marks.filter(({ kind }) => kind.startsWith('burner'))).toEqual([]);
    }
  });

  claim(
    'With water back at … a burner gives no more than … and, while it is lit, no less than …; the cooler the water back, the more, by up to a tenth or so.',
    () => {
      const burner = makeBurner(houseWith());
      for (const [input, rated] of [
        [burner.inputMost, 24e3],
        [burner.inputLeast, 5e3],
      ]) {
        expect(burnerHeat(burner, input, 60)).toBeCloseTo(rated, 0);
        const cooler = [60, 50, 40, 30].map((back) => burnerHeat(burner, input, back) / rated);
        expectRising(cooler);
        expect(cooler[3]).toBeLessThan(1.12);
        expect(burnerHeat(burner, input, 10) / rated).toBeCloseTo(cooler[3], 2); // held below 30 °C
      }
      const { trace } = run();
      const most = (from: number, to: number) => {
        const { boilerHeat, returnTemperature: back } = trace.of;
        return Math.max(...boilerHeat.filter((_, i) => back[i] >= from && back[i] < to));
      };
      expect(most(60, 100)).toBeLessThan(24e3);
      expect(most(20, 40)).toBeGreaterThan(1.05 * 24e3);
    },
  );
  claim('the further it is below its target, and the longer, the more is burnt', () => {
    for (const band of [10, 20, 40]) {
      const burner = makeBurner(houseWith({ 'boiler.proportionalBand': band }));
      const burnt = (below: number, seconds: number) =>
        inputAtStart(burner, below) + seconds * inputRate(burner, below, 0);
      expectRising([3, 4, 6, 8].map((below) => burnt(below, 5)));
      expectRising([0, 5, 20, 60].map((seconds) => burnt(4, seconds)));
    }
  });

  claim(
    'When its least is too much, boiler and pipes warm until the burner goes off and rests: here it is lit … times for … in all, and … of the reheat pass in rests or waiting for a valve.',
    () => {
      const cycling = (least: number) =>
        run({ 'boiler.output': 35, 'boiler.minimumOutput': least, 'coil.length': 6 });
      expectRising([14, 18, 22].map((least) => cycling(least).measures.restingTime));
      const result = cycling(18);
      const burner = result.marks.filter(
        ({ kind }) => kind === 'burnerLit' || kind === 'burnerOff',
      );
      const until = result.measures.recovery ?? 0;
      const offs = burner.filter(({ kind, at }) => kind === 'burnerOff' && at < until);
      expect(offs.length).toBeGreaterThan(3);
      for (const { at } of offs) {
        const lit = burner.filter((mark) => mark.kind === 'burnerLit' && mark.at < at).at(-1);
        if (lit === undefined) throw new Error('went off and was not lit');
        if (lit.at > 60) expect(sampled(result, 'flow', lit.at)).toBeLessThan(75); // 5 K below its target
        expect(sampled(result, 'flow', at)).toBeCloseTo(85, 3); // 5 K above it
      }
    },
  );
});

describe('the circulator', () => {
  claim('More flow keeps the far end of the coil hotter, with less and less to gain.', () => {
    const given = (flow: number): Settings => ({
      'primary.flowFrom': 'given',
      'primary.flow': flow,
    });
    for (const length of [6, 12]) {
      const runs = [5, 10, 20, 40].map((flow) => run({ ...given(flow), 'coil.length': length }));
      for (const minutes of [8, 14, 20]) {
        expectRising(runs.map((result) => sampled(result, 'coilOutlet', minutes * 60)));
      }
      const times = runs.map((result) => result.measures.recovery ?? Number.POSITIVE_INFINITY);
      expectFalling(times);
      expectFalling([0, 1, 2].map((i) => times[i] - times[i + 1]));
    }
  });
  claim(
    'Water runs as fast as the circulator’s pressure allows: the more it moves, the less pressure it has left, and the more the way round costs.',
    () => {
      expectMoves('circulator', { flow: [1e-4, 7.9e-4] }, { flow: 'down' });
      for (const bore of [0.0136, 0.0202, 0.0262]) {
        // 10 m at 60 °C
        const drop = (flow: number) => pipePressureDrop(10, bore, 1.5e-6, flow, 983, 4.66e-4);
        expectRising([1e-4, 2e-4, 3e-4, 5e-4].map(drop));
      }
    },
  );
});

describe('efficiency', () => {
  claim(
    'Water that comes back colder than its dew point, near …, lets the steam condense and takes its heat; at this moment it comes back at ….',
    () => {
      expectMoves(
        'condensingShare',
        { returnTemperature: [53, 55] },
        { returnTemperature: 'down' },
      );
      expect(resultOf('condensingShare', { returnTemperature: 50 })).toBe(1);
      expect(resultOf('condensingShare', { returnTemperature: 60 })).toBe(0);
      const takes = (back: number) => resultOf('boilerEfficiency', { returnTemperature: back });
      expect(takes(40) - takes(50)).toBeGreaterThan(2 * (takes(60) - takes(70)));
    },
  );
  claim('In this run the burner is never lit: it burns … of fuel.', () => {
    const still = run({ 'start.hotShare': 100, 'run.duration': 1 });
    expect([still.measures.burnerStarts, still.measures.fuel]).toEqual([0, 0]);
    expect(toldOf(efficiency, still, 1800)).toContain('the burner is never lit: it burns 0.00');
    expect(toldOf(efficiency, run(), 900)).not.toContain('never');
  });
  claim(
    'A coil that takes more out of the flow sends it back cooler, so it saves fuel as well as minutes.',
    () => {
      const longer = [5, 8, 12, 18].map((length) => measures({ 'coil.length': length }));
      const cleaner = [2, 1, 0.5, 0].map((scale) => measures({ 'coil.scaleThickness': scale }));
      for (const better of [longer, cleaner]) {
        expectFalling(better.map(({ meanReturn }) => meanReturn ?? Number.NaN));
        expectFalling(better.map(({ fuel }) => fuel ?? Number.NaN));
        expectFalling(better.map(({ recovery }) => recovery ?? Number.NaN));
      }
    },
  );
});

describe('pipes', () => {
  claim(
    'What is in them when the stat is satisfied, …, has been burnt for and is not in the store; lagging only makes it go more slowly.',
    () => {
      const lagged = [0, 9, 25].map((lagging) =>
        run({ 'primary.lagging': lagging, 'primary.length': 12 }),
      );
      const left = lagged.map((result) => result.measures.leftInPrimary ?? Number.NaN);
      for (const heat of left) expect(heat / left[0]).toBeCloseTo(1, 2); // a hundredth
      // the part of its rate of loss that is left after half an hour
      const still = lagged.map((result) => {
        const end = result.measures.recovery ?? Number.NaN;
        return sampled(result, 'pipeLoss', end + 2100) / sampled(result, 'pipeLoss', end + 300);
      });
      expectRising(still);
      expectFalling(
        lagged.map((result) => sampled(result, 'pipeLoss', (result.measures.recovery ?? 0) + 300)),
      );
    },
  );

  claim('Its surface is at …; the rest of what leaves it goes with the air that rises.', () => {
    for (const outside of [0.015, 0.022, 0.028]) {
      for (const lagging of [0, 0.009, 0.025]) {
        const pipe = usualPipe(outside, lagging);
        const around = 20;
        const lost = pipeHeatLoss(pipe, 60, around); // W/m
        const area = Math.PI * (outside + 2 * lagging); // m²/m
        const surface = around + lost / (area * pipeSurfaceCoefficient(pipe, 60, around));
        expect(surface).toBeGreaterThan(around);
        const radiated =
          area * radiationCoefficient(pipe.emissivity, surface, around) * (surface - around);
        expect(radiated).toBeLessThan(0.8 * lost);
        expect(radiated).toBeGreaterThan(0.2 * lost);
      }
    }
  });
});
