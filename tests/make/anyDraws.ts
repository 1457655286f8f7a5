import fc from 'fast-check';
import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Variant } from '../../shared/variant.ts';
import { anyVariant } from './anyVariant.ts';

/** A small installation with any settings, and the draws of a few hours. */
export interface DrawnRun {
  readonly variant: Variant;
  readonly draws: readonly PatternDraw[];
}

const LATEST = 3 * 3600; // s
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** As the store gives it, mixed, or by useful heat. */
const anyKind: fc.Arbitrary<Pick<PatternDraw, 'mixedTo' | 'useful'>> = fc.oneof(
  fc.constant({}),
  between(25, 60).map((mixedTo) => ({ mixedTo })),
  fc
    .record({
      energy: between(3e5, 8e6),
      leastTemperature: between(10, 50),
      peakTemperature: fc.option(between(50, 60)),
    })
    .map((useful) => ({ useful })),
);

const anyDraw: fc.Arbitrary<PatternDraw> = fc
  .record({
    kind: anyKind,
    at: fc.integer({ min: 0, max: LATEST }),
    litres: between(0.5, 200),
    litresPerMinute: between(1, 20),
  })
  .map(({ kind, at, litres, litresPerMinute }) => ({
    ...{ at, volume: litres / 1000, flow: litresPerMinute / 60_000, name: 'any' },
    ...kind,
  }));

/**
 * All settings anywhere within their limits, but 2 to 4 h, 8 to 20 layers and a store that is partly hot to begin with; half
 * of them with the tap at the store, and a quarter with an immersion heater that goes on to 90 °C.
 */
export const anyDraws: fc.Arbitrary<DrawnRun> = fc
  .record({
    variant: anyVariant,
    draws: fc.array(anyDraw, { minLength: 1, maxLength: 8 }),
    duration: between(7200, LATEST + 3600),
    layers: fc.integer({ min: 8, max: 20 }),
    hotShare: between(0.2, 1),
    isAtStore: fc.boolean(),
    isOverheated: fc.integer({ min: 0, max: 3 }).map((n) => n === 3),
  })
  .map(({ variant, draws, duration, layers, hotShare, isAtStore, isOverheated }) => ({
    variant: {
      ...variant,
      draw: { ...variant.draw, pipeLength: isAtStore ? 0 : variant.draw.pipeLength },
      immersion: isOverheated
        ? { ...variant.immersion, used: 'withBoiler', output: 12_000, setPoint: 90 }
        : variant.immersion,
      start: { ...variant.start, hotShare },
      run: { ...variant.run, duration, layers },
    },
    draws,
  }));
