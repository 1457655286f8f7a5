import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { plainVariant } from '../../make/plainVariant.ts';
import type { Coil, Variant } from '../../../shared/variant.ts';
import { constantWater, tabulatedWater } from '../../../sim/closures/water.ts';
import { makeCoilRun, passCoil } from '../../../sim/plant/coil.ts';
import { coilArea } from '../../../sim/plant/coilTube.ts';
import { makeCylinder } from '../../../sim/plant/cylinder.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { streamThroughLayers } from '../../reference/exact.ts';

const water = constantWater();
const measured = tabulatedWater();
const MC = 0.25 * 4180; // W/K

/** The coil of a variant in its cylinder at 0.25 kg/s. */
function fitted(variant: Variant, massFlow = 0.25) {
  return makeCoilRun(variant, makeCylinder(variant, water), water, massFlow);
}

function known(changes: Partial<Coil>, layers = 5): Variant {
  const base = idealVariant({ layers });
  return { ...base, coil: { ...base.coil, ...changes } };
}

describe('primary water through layers one after the other', () => {
  const layers = [15, 20, 30, 45, 60];

  test.each([
    ['bottom', layers, 57.28897, 23_733.03],
    ['top', [...layers].reverse(), 53.55998, 27_629.82],
  ] as const)(
    'entering at the %s it leaves as the product of exponentials says',
    (flowEnters, order, outlet, heat) => {
      const net = new Float64Array(5);
      const found = passCoil(fitted(known({ flowEnters })), 80, layers, net);
      expect(found).toBeCloseTo(streamThroughLayers(order, 80, 800, MC).outlet, 11); // rounding
      expect(found).toBeCloseTo(outlet, 6); // printed to 1e-6 °C
      expect(net.reduce((sum, x) => sum + x, 0)).toBeCloseTo(heat, 2); // printed to 0.01 W
    },
  );

  test('two coils in series of 300 and 500 W/K, flow at the top, meet the upper one first', () => {
    const base = known({ conductance: 300, bottom: 0, top: 0.24, flowEnters: 'top' });
    const variant: Variant = {
      ...base,
      secondCoil: { ...base.coil, fitted: 'inSeries', conductance: 500, bottom: 0.96, top: 1.2 },
    };
    const net = new Float64Array(5);
    const found = passCoil(fitted(variant), 80, layers, net);
    const upper = 60 + 20 * Math.exp(-500 / MC);
    expect(found).toBeCloseTo(15 + (upper - 15) * Math.exp(-300 / MC), 11); // rounding
    expect(Array.from(net).map((x) => x > 0)).toEqual([true, false, false, false, true]);
  });
});

describe('heat through a coil', () => {
  const anyStore = fc.array(fc.double({ min: 5, max: 75, noNaN: true }), {
    minLength: 12,
    maxLength: 12,
  });

  test('in 200 stores what 80 °C primary loses is what the layers gain, to rounding', () => {
    const coils = ['geometry', 'area', 'conductance'].map((given) =>
      fitted({
        ...plainVariant('any'),
        run: { duration: 1, layers: 12, water: 'measured' },
        coil: { ...plainVariant('any').coil, given: given as Coil['given'] },
      }),
    );
    fc.assert(
      fc.property(anyStore, fc.constantFrom(...coils), (T, coil) => {
        const net = new Float64Array(12);
        const outlet = passCoil(coil, 80, T, net);
        const gained = net.reduce((sum, x) => sum + x, 0);
        expect(Math.abs(gained - coil.heatRate * (80 - outlet))).toBeLessThan(1e-8); // W of some 30 kW
      }),
      { numRuns: 200 },
    );
  });

  test.each(['geometry', 'area', 'rating', 'conductance'] as const)(
    'given by %s it is 0 W when primary and store are at 40 °C',
    (given) => {
      const base = plainVariant('even');
      const variant = { ...base, coil: { ...base.coil, given } };
      const net = new Float64Array(variant.run.layers);
      const outlet = passCoil(fitted(variant), 40, new Array(variant.run.layers).fill(40), net);
      expect(outlet).toBe(40);
      expect(net.every((x) => x === 0)).toBe(true);
    },
  );

  test('lies only in the layers from 0.08 m to 0.48 m', () => {
    const base = plainVariant('default');
    const net = new Float64Array(48);
    passCoil(fitted(base), 80, new Array(48).fill(10), net);
    const warmed = Array.from(net.keys()).filter((i) => net[i] !== 0);
    // layers of 27.5 mm: 0.08 m is in the third, 0.48 m in the eighteenth
    expect([warmed[0], warmed.at(-1), warmed.length]).toEqual([2, 17, 16]);
  });
});

describe('a coil by its rating', () => {
  test.each([12, 20, 28])(
    'of %i kW gives that on average from 15 to 60 °C at 80 °C and 15 l/min',
    (kilowatts) => {
      const base = plainVariant('rated');
      const rated = { ...base.coil, given: 'rating' as const, ratedOutput: kilowatts * 1000 };
      // the same coil over a whole mixed store, fed at 80 °C, heated in 450 steps of 0.1 K
      const variant: Variant = {
        ...base,
        coil: { ...rated, given: 'area', area: coilArea(rated, measured), bottom: 0, top: 1.32 },
        run: { ...base.run, layers: 24 },
      };
      const coil = makeCoilRun(
        variant,
        makeCylinder(variant, measured),
        measured,
        (15 / 60_000) * measured.density(80),
      );
      let time = 0;
      for (let k = 0; k < 450; k++) {
        const T = new Array(24).fill(15.05 + 0.1 * k);
        time += 0.1 / (coil.heatRate * (80 - passCoil(coil, 80, T, null)));
      }
      // five stretches of tube here, twenty-four pieces there: less than half a per cent
      expect(Math.abs(45 / time / (kilowatts * 1000) - 1)).toBeLessThan(0.005);
    },
  );

  test('loses output when scale grows: 20 kW clean is 14 to 19 kW under 1 mm', () => {
    const base = plainVariant('rated');
    const rated = { ...base.coil, given: 'rating' as const, ratedOutput: 20_000 };
    const heat = (scaleThickness: number) => {
      const coil = fitted({ ...base, coil: { ...rated, scaleThickness } });
      return coil.heatRate * (80 - passCoil(coil, 80, new Array(48).fill(35), null));
    };
    const share = heat(1e-3) / heat(0);
    expect(share).toBeGreaterThan(0.7);
    expect(share).toBeLessThan(0.95);
  });
});
