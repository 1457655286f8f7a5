import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cautionsOf } from '../../../shared/cautions.ts';
import type { Variant } from '../../../shared/variant.ts';
import { dayRun } from '../../../sim/run/day.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { anyVariant } from '../../make/anyVariant.ts';

/** A day with any settings, 8 to 15 layers, from a store that is partly hot. */
const anyDay = anyVariant.map<Variant>((variant) => ({
  ...variant,
  day: { ...variant.day, repeat: 'stated', days: 1 },
  start: { ...variant.start, hotShare: 0.5 },
  run: { ...variant.run, duration: 1800, layers: 8 + (variant.run.layers % 8) },
}));

test('300 days over all settings: energy closes to 1e-9, no draw gets more hot water than water, litres drawn are those asked, nothing is above 80 °C without a caution', () => {
  fc.assert(
    fc.property(anyDay, (variant) => {
      const day = toEnd(dayRun(variant));
      const { draws, balance, outcome, hygiene, measures } = day;
      expect(outcome.kind).toBe('finished');
      expect(Math.abs(balance.relative)).toBeLessThan(1e-9);
      for (const draw of draws) {
        const little = 1e-7 + 1e-5 * draw.volume; // m³, tolerance of the sum in the run
        expect(draw.fromStore).toBeGreaterThan(-little);
        expect(draw.fromStore).toBeLessThan(draw.volume + little);
        // water in a cold pipe may carry less than none; what counts as useful never does
        expect(draw.useful).toBeGreaterThan(-1);
        expect(draw.coldTime + (draw.waitTime ?? 0)).toBeLessThan(draw.to - draw.from + 1e-6);
        if (draw.usefulAsked === null && !draw.isCut && draw.from > 0) {
          expect(Math.abs(draw.volume / draw.asked - 1)).toBeLessThan(1e-6); // the clock: 86 400 s to rounding
        }
        if (draw.usefulAsked !== null) {
          expect(draw.useful).toBeLessThan(draw.usefulAsked * (1 + 1e-3) + 100); // J, an event is found to 0.1 ms
        }
      }
      const out = draws.reduce((sum, { heat }) => sum + heat, 0);
      const scale = Math.abs(measures.heatDrawn) + Math.abs(out) + 1;
      expect(Math.abs(measures.heatDrawn - out) / scale).toBeLessThan(1e-9); // rounding
      if (hygiene.top.most > 80) {
        const keys = cautionsOf(variant, null, day).map(({ key }) => key);
        expect(keys).toContain('overheatsInTheDay');
      }
    }),
    { numRuns: 300, endOnFailure: true },
  );
}, 600_000);
