import { describe, expect, test } from 'vitest';
import { DELIVERY_FLOW, FIRST_HOUR } from '../../../shared/delivery.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import { fromSI } from '../../../shared/units.ts';
import type { Variant } from '../../../shared/variant.ts';
import { withSetting } from '../../../shared/variant.ts';
import { delivered, usableByDraw } from '../../../sim/run/delivery.ts';
import { firstHour } from '../../../sim/run/firstHour.ts';
import { storeAlone } from '../../../sim/run/storeAlone.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';

/** Usable litres of 150 l at one temperature, incoming 10 °C, no loss and no wall. */
function usableLitres(T: number, layers: number, inlet: Variant['draw']['inlet'] = 'asTyped') {
  const ideal = idealVariant({ C: 0.15 * 4.18e6, layers, cold: 10 });
  const plant = storeAlone(withSetting(ideal, 'draw.inlet', inlet));
  return 1000 * toEnd(usableByDraw(plant, new Array<number>(layers).fill(T)));
}

describe('150 l at one temperature, drawn at 10 l/min until the outlet falls to 40 °C', () => {
  // perfect plug: (T − 10) / 30 × 150; fully mixed: the store gives its heat above 40 °C
  const plug = (T: number) => ((T - 10) / 30) * 150;
  const mixed = (T: number) => ((T - 40) / 30) * 150;

  test('a perfect plug of 60 °C would make 250 l; the simulated draw makes 236 to 250 l', () => {
    expect(plug(60)).toBe(250);
    for (const inlet of ['asTyped', 'deflected', 'plain'] as const) {
      const litres = usableLitres(60, 48, inlet);
      console.log(`150 l at 60 °C, inlet ${inlet}: ${litres.toFixed(1)} l at 40 °C`);
      expect(litres).toBeLessThan(250);
      expect(litres).toBeGreaterThan(mixed(60));
    }
    expect(usableLitres(60, 48)).toBeGreaterThan(236);
  });

  test.each([45, 50, 55, 65, 70, 80])('at %i °C it lies between mixed and plug', (T) => {
    const litres = usableLitres(T, 48, 'deflected');
    expect(litres).toBeLessThan(plug(T));
    expect(litres).toBeGreaterThan(mixed(T));
  });

  test('in 1 layer it is the closed form of the mixed store, 100 l at 60 °C, to 0.01 l', () => {
    // it runs until 40 °C: heat above 40 °C of 150 l is 150 × 20, and that over 30 K is 100 l
    expect(usableLitres(60, 1)).toBeCloseTo(100, 2);
    expect(usableLitres(50, 1)).toBeCloseTo(50, 2);
  });

  test('a plain inlet costs more litres than a deflected one', () => {
    expect(usableLitres(60, 48, 'plain')).toBeLessThan(usableLitres(60, 48, 'deflected'));
  });

  test('below 40 °C nothing is usable', () => {
    expect(usableLitres(39.9, 48)).toBe(0);
  });
});

describe('the default house', () => {
  const found = toEnd(delivered(defaultVariant('default')));

  test('delivers 0 l cold, and when satisfied a little less than the estimate from the layers', () => {
    const [start, satisfied] = found.moments;
    expect(start.drawn).toBe(0);
    expect(satisfied.when).toBe('satisfied');
    expect(satisfied.drawn).toBeLessThan(satisfied.estimate);
    // what is stirred and conducted on the way up is a few litres of some 330
    expect(satisfied.drawn).toBeGreaterThan(0.95 * satisfied.estimate);
  });

  test('in the first hour it gives more than the store holds, in at least 2 draws', () => {
    const { firstHour: first } = found;
    expect(first).not.toBeNull();
    expect(first?.volume).toBeGreaterThan(0.21);
    expect(first?.draws).toBeGreaterThanOrEqual(2);
    // from 60 °C down by 8.3 K at most
    expect(first?.mean).toBeGreaterThan(50);
    expect(first?.mean).toBeLessThan(62);
  });
});

describe('the first hour', () => {
  test('uses 3 US gallons a minute, 14.4 °C and 8.3 K', () => {
    expect(fromSI(FIRST_HOUR.flow, 'litrePerMinute')).toBeCloseTo(11.356, 3);
    expect(FIRST_HOUR.cold).toBeCloseTo(14.44, 2);
    expect(FIRST_HOUR.fall).toBeCloseTo(8.33, 2);
    expect(fromSI(DELIVERY_FLOW, 'litrePerMinute')).toBe(10);
  });

  test('of a store that cannot be reheated in the hour ends with its first draw and what 3 kW add', () => {
    const base = withSetting(defaultVariant('weak'), 'heating.arrangement', 'hotWaterOnly');
    const weak: Variant = {
      ...base,
      boiler: { ...base.boiler, model: 'ideal', output: 3000 },
      run: { ...base.run, duration: 6 * 3600 },
    };
    const first = toEnd(firstHour(weak));
    // 210 l and, at most, what 3 kW heat from 14.4 to 60 °C in an hour: 3600 × 3 / (4.16 × 45.6) = 57 l
    expect((first?.volume ?? 0) * 1000).toBeLessThan(210 + 57);
    expect((first?.volume ?? 0) * 1000).toBeGreaterThan(0.8 * 210);
    expect(first?.isSustained).toBe(false);
  });

  test('of a store that its boiler keeps up with says so', () => {
    const base = withSetting(defaultVariant('strong'), 'heating.arrangement', 'hotWaterOnly');
    const strong: Variant = {
      ...base,
      boiler: { ...base.boiler, model: 'ideal', output: 100_000, hotWaterFlow: 90 },
      primary: { ...base.primary, flowFrom: 'given', flow: 1e-3 },
      coil: { ...base.coil, given: 'conductance', conductance: 6000, bottom: 0, top: 1.2 },
    };
    const first = toEnd(firstHour(strong));
    expect(first?.isSustained).toBe(true);
    // 3 US gallons a minute for an hour: 681.4 l
    expect((first?.volume ?? 0) * 1000).toBeCloseTo(681.4, 1);
  });

  test('is null where the stat is never satisfied', () => {
    const base = withSetting(defaultVariant('never'), 'heating.arrangement', 'hotWaterOnly');
    expect(toEnd(firstHour(withSetting(base, 'boiler.hotWaterFlow', 50)))).toBeNull();
  });
});
