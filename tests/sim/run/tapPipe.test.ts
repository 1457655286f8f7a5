import { describe, expect, test } from 'vitest';
import type { PatternDraw } from '../../../shared/drawPattern.ts';
import type { Variant } from '../../../shared/variant.ts';
import { type PipeCells, pipeCellRates } from '../../../sim/plant/pipeCells.ts';
import { makePlant, type Plant } from '../../../sim/plant/plant.ts';
import { slotsOf } from '../../../sim/solve/slots.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';

const FLOW = 10 / 60_000; // m³/s
const STREAM = FLOW * 4.18e6; // W/K
const AROUND = 20; // °C

/** 10 m of bare 15 mm tube from a store so large, 10 000 m³, that it stays at 60 °C; nothing else loses heat. */
function tapAway(changes: Partial<Variant['draw']> = {}, duration = 600): Variant {
  const ideal = idealVariant({ C: 4.18e10, duration, setPoint: 0, surroundings: AROUND });
  return {
    ...ideal,
    draw: { ...ideal.draw, pipeLength: 10, ...changes },
    start: { hotShare: 1, hotTemperature: 60, boundary: 0 },
  };
}

function pipeOf({ tapPipe }: Plant): PipeCells {
  if (tapPipe === null) throw new Error('there is no pipe to the tap');
  return tapPipe;
}

const long: PatternDraw = { at: 0, volume: 1, flow: FLOW, name: 'draw' };

/** Six cells in a row after a step: what has arrived, °C. source: levenspiel, tanks in series; with a loss from each */
function arrived(time: number, { capacity, lossConductance }: PipeCells): number {
  const rate = ((STREAM + lossConductance / 6) * time) / (capacity / 6);
  let term = Math.exp(-rate);
  let late = 0;
  for (let k = 0; k < 6; k++) {
    late += term;
    term *= rate / (k + 1);
  }
  const kept = (STREAM / (STREAM + lossConductance / 6)) ** 6;
  return AROUND + 40 * kept * (1 - late);
}

describe('10 m of 15 mm tube to the tap at 10 l/min', () => {
  const variant = tapAway();
  const pipe = pipeOf(makePlant(variant));
  // by hand: bore 13.6 mm, 0.14527 l/m; copper 31.45 mm² at 3.45 MJ/(m³ K)
  const water = 10 * 0.145267e-3 * 4.18e6;
  const metal = 10 * 31.447e-6 * 3.45e6;

  test('holds 6.07 kJ/K as water and 1.08 kJ/K as copper', () => {
    expect(Math.round(water)).toBe(6072);
    expect(Math.round(metal)).toBe(1085);
    expect(pipe.capacity / (water + metal)).toBeCloseTo(1, 4);
  });

  test.each([2, 5, 10, 15, 20, 30, 60])(
    'gives after %i s what six cells in a row give, within 2 mK',
    (duration) => {
      const plant = makePlant(variant);
      const { tapPipe } = slotsOf(plant);
      const { state } = marchToEnd(plant, { draws: [long], duration }).end;
      // 1e-4 K at each of a few steps
      expect(Math.abs(state[tapPipe + 5] - arrived(duration, pipe))).toBeLessThan(2e-3);
    },
  );

  test('is shown at 20 °C first, and at every second for a minute within 0.03 K of six cells in a row', () => {
    const { trace } = simulateToEnd(tapAway({}, 60), { draws: [long], sampleEvery: 1 });
    const { outlet } = trace.of;
    const first = trace.time.findIndex((_, i) => !Number.isNaN(outlet[i]));
    expect(trace.time[first]).toBe(0);
    expect(outlet[first]).toBe(AROUND);
    for (let i = first; i < trace.samples; i++) {
      // samples lie inside steps of four times what a cell takes to fill; the worst is 0.015 K
      expect(Math.abs(outlet[i] - arrived(trace.time[i], pipe))).toBeLessThan(0.03);
    }
  });

  test('is at half the step after 0.945 and at 90 % after 1.55 times the 10.27 s its heat takes to pass', () => {
    // from tables of the gamma distribution of 6: a half lies below 5.67 and nine tenths below 9.275, of a mean of 6
    const passes = (water + metal) / STREAM;
    expect(passes).toBeCloseTo(10.27, 2);
    // lagged by half a metre it loses next to nothing
    const lagged = tapAway({ pipeLagging: 0.5 });
    for (const [share, times] of [
      [0.5, 0.945],
      [0.9, 1.546],
    ]) {
      const useful = {
        energy: 1e12,
        leastTemperature: AROUND + 40 * share,
        peakTemperature: null,
      };
      const { marks } = marchToEnd(makePlant(lagged), { draws: [{ ...long, useful }] });
      const warm = marks.find(({ mark }) => mark.kind === 'tapWarm')?.mark.at ?? Number.NaN;
      // the lagging still loses 0.3 % of what passes, which brings the last tenth 1 % later
      expect(Math.abs(warm / passes / times - 1)).toBeLessThan(0.015);
    }
  });

  test('a tap wanted at 40 °C turns warm within 0.1 s of the closed form, and mixes from then on', () => {
    const plant = makePlant(variant);
    const { marks, end } = marchToEnd(plant, { draws: [{ ...long, mixedTo: 40 }], duration: 60 });
    const warm = marks.find(({ mark }) => mark.kind === 'tapWarm')?.mark.at ?? Number.NaN;
    expect(arrived(warm - 0.1, pipe)).toBeLessThan(40);
    expect(arrived(warm + 0.1, pipe)).toBeGreaterThan(40);
    // 10 l in a minute: hot alone until then, and from then on less than all of it, no less than 30 of 50 K
    const litres = end.state[slotsOf(plant).fromStore] * 1000;
    expect(litres).toBeGreaterThan(warm / 6 + (0.6 * (60 - warm)) / 6);
    expect(litres).toBeLessThan(warm / 6 + (0.75 * (60 - warm)) / 6);
  });
});

describe('the pipe while it stands', () => {
  test('each cell cools to 20 °C as exp(−t / τ), τ its heat over its loss, to 1e-4 after 5 and 30 min', () => {
    const plant = makePlant(tapAway({}, 3600));
    const pipe = pipeOf(plant);
    const { tapPipe } = slotsOf(plant);
    const tau = pipe.capacity / pipe.lossConductance;
    const cells = (duration: number) =>
      marchToEnd(plant, { draws: [{ ...long, volume: 0.0025 }], duration }).end.state.slice(
        tapPipe,
        tapPipe + 6,
      );
    const shut = cells(15 + 1e-3); // 2.5 l at 10 l/min, and a moment
    for (const standing of [300, 1800]) {
      cells(15 + standing).forEach((T, i) => {
        const left = (T - AROUND) / (shut[i] - AROUND);
        expect(left / Math.exp(-(standing - 1e-3) / tau)).toBeCloseTo(1, 4);
      });
    }
    expect(shut[0] - AROUND).toBeGreaterThan(38); // hot to begin with
  });

  test('lagged with 20 mm it keeps its heat longer than bare, and the next draw is warm the sooner', () => {
    const waits = [0, 0.02].map((pipeLagging) => {
      const { marks } = marchToEnd(makePlant(tapAway({ pipeLagging }, 3600)), {
        draws: [
          { ...long, volume: 0.01, mixedTo: 40 },
          { ...long, at: 1200, volume: 0.01, mixedTo: 40 },
        ],
      });
      const last = (kind: string) =>
        marks.filter(({ mark }) => mark.kind === kind).at(-1)?.mark.at ?? Number.NaN;
      return last('tapWarm') - last('drawStarted');
    });
    const [bare, lagged] = waits;
    expect(bare).toBeGreaterThan(0);
    expect(lagged).toBeLessThan(bare);
  });

  test('through cells at 20 °C in surroundings of 20 °C nothing is lost and nothing moves', () => {
    const pipe = { cells: 3, capacity: 3000, lossConductance: 6, surroundings: AROUND };
    const rates = [Number.NaN, Number.NaN, Number.NaN];
    expect(pipeCellRates(pipe, 0, 99, 0, [20, 20, 20], rates)).toBe(0);
    expect(rates).toEqual([0, 0, 0]);
  });

  test('what goes in, 100 W/K × 60 K, comes out, is kept or lost: 3 cells at 50, 40 and 30 °C', () => {
    const pipe = { cells: 3, capacity: 3000, lossConductance: 6, surroundings: AROUND };
    const rates = [0, 0, 0];
    const lost = pipeCellRates(pipe, 0, 60, 100, [50, 40, 30], rates);
    expect(lost).toBe(2 * (30 + 20 + 10)); // by hand, 2 W/K each
    const kept = 1000 * rates.reduce((a, b) => a + b, 0);
    expect(kept + lost).toBeCloseTo(100 * (60 - 30), 9); // rounding
  });
});

test('a draw of 600 s through the pipe delivers what left the store less what the pipe keeps and loses, to 1e-9', () => {
  const { balance } = simulateToEnd(tapAway(), { draws: [long] });
  const fromStore = STREAM * 600 * 50; // 60 °C over 10 °C; the store falls by 0.5 mK
  const kept = balance.gainedByTapPipe + balance.lostByTapPipe;
  expect((balance.drawn + kept) / fromStore).toBeCloseTo(1, 4);
  // by hand: water that stood at 20 °C is as good as 10 K over the cold, the rest of 50 K is missing
  expect(balance.gainedByTapPipe / (7157 * 40)).toBeGreaterThan(0.97);
  expect(balance.gainedByTapPipe / (7157 * 40)).toBeLessThan(1);
  expect(Math.abs(balance.relative)).toBeLessThan(1e-9);
});
