import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Variant } from '../../../shared/variant.ts';
import { inletReynolds } from '../../../sim/closures/inletMixing.ts';
import { tabulatedWater } from '../../../sim/closures/water.ts';
import { makeCylinder } from '../../../sim/plant/cylinder.ts';
import { drawOffRates, makeInlet } from '../../../sim/plant/drawOff.ts';
import { type InletJet, jetShares, makeInletJet } from '../../../sim/plant/inletJet.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { plainVariant } from '../../make/plainVariant.ts';

const LITRE_PER_MINUTE = 1 / 60_000;
const water = tabulatedWater();
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);

/** 210 l, 1.32 m high, an inlet of 20 mm at 50 mm; 48 layers unless the profile has others. */
function variantWith(draw: Partial<Variant['draw']> = {}): Variant {
  const base = plainVariant('jet');
  return { ...base, draw: { ...base.draw, inlet: 'plain', ...draw } };
}

function jetOf(draw: Partial<Variant['draw']> = {}): InletJet {
  const jet = makeInletJet(variantWith(draw), water);
  if (jet === null) throw new Error('the inlet is no jet');
  return jet;
}

function shares(
  jet: InletJet,
  litresPerMinute: number,
  T: readonly number[],
  cold = 10,
): Float64Array {
  const share = new Float64Array(T.length);
  jetShares(jet, litresPerMinute * LITRE_PER_MINUTE, cold, T, share);
  return share;
}

/** Mean height above the inlet at which the water ends up, m. */
function reach(jet: InletJet, share: ArrayLike<number>): number {
  const layerHeight = jet.storeHeight / share.length;
  const first = Array.from(share).findIndex((one) => one > 0);
  return sum(Array.from(share, (one, layer) => one * (layer - first) * layerHeight));
}

const even = (temperature: number, layers = 48) => new Array<number>(layers).fill(temperature);

describe('a jet into a store that is hot all over', () => {
  test('at 2 l/min and Re 1624 is laminar: all of it enters the second of 48 layers, at 50 mm', () => {
    // by hand: 999.7 × 0.1061 m/s × 0.02 / 1.306e-3
    expect(
      inletReynolds(water, 10, 0.02, (2 / 60_000 / Math.PI / 0.02 ** 2) * 4) / 1624,
    ).toBeCloseTo(1, 2);
    for (const inlet of ['plain', 'deflected'] as const) {
      const share = shares(jetOf({ inlet }), 2, even(60));
      expect(Array.from(share.slice(0, 3))).toEqual([0, 1, 0]);
      expect(sum(share)).toBe(1);
    }
  });

  test('at 10 l/min, plain, 10 into 60 °C, gives each layer the share worked by hand, to 0.5 %', () => {
    // by hand, with 999.70 and 983.20 kg/m³, 1.3059 mPa s, and 0.6229 W/(m K) / 4.1542 MJ/(m³ K) at 35 °C
    const u = 10 / 60_000 / (Math.PI * 0.01 ** 2);
    const Re = (999.7 * u * 0.02) / 1.3059e-3;
    const Ri = ((9.80665 * (999.7 - 983.2)) / 983.2) * (1.32 / u ** 2);
    const place = (Re - 2100) / 7900;
    const eddies = place * place * (3 - 2 * place) * (0.344 * (Re / Ri) ** 0.894 - 1);
    const by = (distance: number) => {
      const extra = (eddies / (1 - 0.02 / 1.32)) * (0.02 / Math.max(distance, 0.02) - 0.02 / 1.32);
      const stirring = (extra * 0.6229) / 4.1542e6 / (((10 / 60_000) * 1.32 * distance) / 0.21);
      return stirring ** 2 / (1 + stirring ** 2);
    };
    const share = shares(jetOf(), 10, even(60));
    for (const layer of [2, 3, 4, 5, 6, 8]) {
      const distance = (layer + 0.5) * 0.0275 - 0.05;
      expect(share[layer] / share[1] / by(distance)).toBeCloseTo(1, 2);
    }
  });

  test('at 10 l/min into 60 °C a plain inlet reaches farther than a deflected one, as a mean 35 and 22 mm', () => {
    const plain = reach(jetOf(), shares(jetOf(), 10, even(60)));
    const deflected = reach(jetOf(), shares(jetOf({ inlet: 'deflected' }), 10, even(60)));
    expect(Math.round(1000 * plain)).toBe(35);
    expect(Math.round(1000 * deflected)).toBe(22);
  });

  test('below 4.8 l/min, where Re/Ri is 1161, the two fits cross and the plate is no better', () => {
    // by hand: 4.75 / 0.344 to the power 1 / 0.372 is 1161; Re 812 and Ri 77.2 / l² for each l/min
    const gap = (flow: number) => {
      const [plain, deflected] = (['plain', 'deflected'] as const).map((inlet) =>
        reach(jetOf({ inlet }), shares(jetOf({ inlet }), flow, even(60))),
      );
      return plain / deflected;
    };
    expect(gap(4.7)).toBeLessThan(1);
    expect(gap(4.9)).toBeGreaterThan(1);
  });

  test('at 10 l/min reaches as far in 48, 96 and 192 layers, to half of the thickest', () => {
    const [coarse, fine, finest] = [48, 96, 192].map((layers) => {
      const share = shares(jetOf(), 10, even(60, layers));
      const layerHeight = 1.32 / layers;
      return sum(Array.from(share, (one, layer) => one * (layer + 0.5) * layerHeight));
    });
    expect(Math.abs(coarse - finest)).toBeLessThan(0.0275 / 2);
    expect(Math.abs(fine - finest)).toBeLessThan(Math.abs(coarse - finest));
  });

  test('in 300 cases it reaches the farther the faster the draw, the cooler the store, the narrower the inlet', () => {
    const flow = fc.double({ min: 0.5, max: 30, noNaN: true });
    const hot = fc.double({ min: 15, max: 85, noNaN: true });
    const bore = fc.double({ min: 0.01, max: 0.04, noNaN: true });
    const inlet = fc.constantFrom('plain' as const, 'deflected' as const);
    fc.assert(
      fc.property(flow, hot, bore, inlet, (q, T, d, fitting) => {
        const jet = jetOf({ inlet: fitting, inletBore: d });
        const narrow = jetOf({ inlet: fitting, inletBore: 0.9 * d });
        const here = reach(jet, shares(jet, q, even(T))) - 1e-12; // rounding
        expect(reach(jet, shares(jet, 1.1 * q, even(T)))).toBeGreaterThanOrEqual(here);
        expect(reach(jet, shares(jet, q, even(T - 3)))).toBeGreaterThanOrEqual(here);
        expect(reach(narrow, shares(narrow, q, even(T)))).toBeGreaterThanOrEqual(here);
      }),
      { numRuns: 300 },
    );
  }, 30_000);
});

describe('a jet below a boundary at 0.44 m, above which it is 60 °C', () => {
  const layered = (below: number) => Array.from({ length: 48 }, (_, i) => (i < 16 ? below : 60));

  test.each([10, 6])(
    'cold into cold at %i l/min is spread evenly over the 15 cold layers from the inlet up',
    (flow) => {
      const share = shares(jetOf(), flow, layered(10));
      expect(share[0]).toBe(0);
      for (let i = 1; i < 16; i++) expect(share[i]).toBeCloseTo(1 / 15, 4);
      // 1e-3: all that the hot layers get; at 0.4 m the eddies are spent
      expect(sum(share.slice(16))).toBeLessThan(1e-3);
    },
  );

  test('water at 30 °C into 20 °C is lighter and rises through the cool part, as far as the boundary', () => {
    const share = shares(jetOf(), 10, layered(20), 30);
    for (let i = 1; i < 16; i++) expect(share[i]).toBeCloseTo(1 / 15, 3);
    expect(sum(share.slice(16))).toBeLessThan(0.005);
  });

  test('water at 70 °C into 20 and 60 °C passes the boundary: all 47 layers get 1/47', () => {
    const share = shares(jetOf(), 10, layered(20), 70);
    for (let i = 1; i < 48; i++) expect(share[i]).toBeCloseTo(1 / 47, 12); // rounding
  });
});

test('in 500 jets anywhere the shares add up to 1 and none is negative or below the inlet', () => {
  const any = fc.record({
    flow: fc.double({ min: 1e-6, max: 60, noNaN: true }),
    cold: fc.double({ min: 1, max: 35, noNaN: true }),
    T: fc.array(fc.double({ min: 0, max: 95, noNaN: true }), { minLength: 1, maxLength: 60 }),
    bore: fc.double({ min: 0.008, max: 0.08, noNaN: true }),
    height: fc.double({ min: 0, max: 2, noNaN: true }),
    inlet: fc.constantFrom('plain' as const, 'deflected' as const),
  });
  fc.assert(
    fc.property(any, ({ flow, cold, T, bore, height, inlet }) => {
      const jet = jetOf({ inlet, inletBore: bore, inletHeight: height });
      const rising = [...T].sort((a, b) => a - b);
      const share = shares(jet, flow, rising, cold);
      expect(sum(share)).toBeCloseTo(1, 12); // rounding of 60
      const entry = Math.min(T.length - 1, Math.floor(height / (1.32 / T.length)));
      share.forEach((one, layer) => {
        expect(one).toBeGreaterThanOrEqual(0);
        if (layer < entry) expect(one).toBe(0);
      });
    }),
    { numRuns: 500 },
  );
}, 30_000);

test('a jet at 15 l/min carries out of the store what the store loses, above the incoming 10 °C', () => {
  const variant = variantWith({ inlet: 'deflected' });
  const cylinder = makeCylinder(variant, water);
  const inlet = makeInlet(variant, cylinder, water);
  const T = Array.from({ length: 48 }, (_, i) => 10 + 50 / (1 + Math.exp((14 - i) / 3)));
  const net = new Float64Array(48);
  const flow = 15 * LITRE_PER_MINUTE;
  drawOffRates(cylinder, inlet, flow, T, net);
  expect(sum(net) + flow * cylinder.waterHeat * (T[47] - 10)).toBeCloseTo(0, 8); // rounding of 52 kW
  expect(net[0]).toBe(0); // below the inlet nothing moves
});

test('water of 1000 kg/m³ throughout, for teaching, is layered as measured water is', () => {
  const measured = makePlant(variantWith());
  const constant = makePlant({
    ...variantWith(),
    run: { ...variantWith().run, water: 'constant' },
  });
  for (const { inlet } of [measured, constant]) {
    if (inlet.jet !== null) jetShares(inlet.jet, 10 * LITRE_PER_MINUTE, 10, even(60), inlet.share);
  }
  expect(constant.inlet.share).toEqual(measured.inlet.share);
  expect(constant.inlet.share[12]).toBeLessThan(1e-3);
});
