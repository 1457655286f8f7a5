import { describe, expect, test } from 'vitest';
import type { Variant } from '../../../shared/variant.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { idealVariant } from '../../make/idealVariant.ts';
import { marchToEnd } from '../../make/marchToEnd.ts';

// source: measuredDraw, a store 0.70 m high and 0.24 m wide, 45 °C inside and 26 °C coming in: no harm up to 11 cm/min of
// rise, which is 5 l/min; mixing at 15.2 cm/min, 6.9 l/min, unless a baffle is fitted. Only the abstract was seen: the bore
// of the inlet, its height and the wall are not known. Here: 18 mm unless stated, at the base, no wall and no loss.
const HOT = 45; // °C
const COLD = 26; // °C
const VOLUME = (Math.PI / 4) * 0.24 ** 2 * 0.7; // m³
const flows = [2, 3, 5, 7] as const; // l/min

interface Wish {
  readonly flow: number;
  readonly inlet?: Variant['draw']['inlet'];
  /** mm */
  readonly bore?: number;
  readonly layers?: number;
}

/** Water delivered before the outlet has fallen by a tenth of the difference, as a share of the store. */
function delivered({ flow, inlet = 'plain', bore = 18, layers = 60 }: Wish): number {
  const perSecond = flow / 60_000;
  const duration = (1.1 * VOLUME) / perSecond;
  const C = VOLUME * 4.18e6;
  const ideal = idealVariant({ C, height: 0.7, cold: COLD, setPoint: 0, layers, duration });
  const variant: Variant = {
    ...ideal,
    draw: { ...ideal.draw, inlet, inletHeight: 0, inletBore: bore / 1000 },
    start: { hotShare: 1, hotTemperature: HOT, boundary: 0 },
    run: { ...ideal.run, water: 'measured' },
  };
  // the tap runs cold at what the heat of a draw has to be above to count
  const useful = {
    energy: Number.POSITIVE_INFINITY,
    leastTemperature: HOT - (HOT - COLD) / 10,
    peakTemperature: null,
  };
  const draws = [{ at: 0, volume: 2 * VOLUME, flow: perSecond, name: 'all', useful }];
  const { marks } = marchToEnd(makePlant(variant), {
    draws,
    until: ({ kind }) => kind === 'tapCold',
  });
  const cold = marks.find(({ mark }) => mark.kind === 'tapCold')?.mark.at ?? Number.NaN;
  return (cold * perSecond) / VOLUME;
}

const at = (wish: Omit<Wish, 'flow'>) => flows.map((flow) => delivered({ flow, ...wish }));

describe('a store of 31.7 l at 45 °C, cold coming in at 26 °C through a plain inlet of 18 mm', () => {
  const coarse = at({});
  const fine = at({ layers: 120 });
  console.log(`delivered at 2, 3, 5, 7 l/min: ${coarse.map((x) => x.toFixed(3)).join(', ')}`);

  test.each([2, 3, 5] as const)('at %i l/min it delivers at least 90 % before it cools', (flow) => {
    expect(coarse[flows.indexOf(flow)]).toBeGreaterThan(0.9);
    expect(fine[flows.indexOf(flow)]).toBeGreaterThan(0.9);
  });

  test('at 7 l/min it delivers less than 90 %, and at least 0.03 less than at 5 l/min', () => {
    for (const [, , five, seven] of [coarse, fine]) {
      expect(seven).toBeLessThan(0.9);
      expect(five - seven).toBeGreaterThan(0.03);
    }
  });

  test('60 and 120 layers agree within 0.01 at every flow', () => {
    flows.forEach((_, i) => {
      expect(Math.abs(coarse[i] - fine[i])).toBeLessThan(0.01);
    });
  });

  test('against a plate 7 l/min delivers more than 90 %, as a baffle made it do', () => {
    const baffled = delivered({ flow: 7, inlet: 'deflected' });
    console.log(`against a plate at 7 l/min: ${baffled.toFixed(3)}`);
    expect(baffled).toBeGreaterThan(0.9);
    expect(baffled).toBeGreaterThan(coarse[3]);
  });
});

describe('the bore that is not known', () => {
  const still = at({ inlet: 'asTyped' });

  test.each([15, 18, 20])(
    'at %i mm 3 l/min delivers more than 5, 5 more than 7, and the jet takes the more the faster it is',
    (bore) => {
      const jet = at({ bore });
      expect(jet[1]).toBeGreaterThan(jet[2]);
      expect(jet[2]).toBeGreaterThan(jet[3]);
      // at 2 l/min the boundary has longer to conduct, so what the jet takes is told by a draw without one
      const taken = jet.map((share, i) => still[i] - share);
      for (let i = 1; i < 4; i++) expect(taken[i]).toBeGreaterThan(taken[i - 1]);
      expect(taken[0]).toBeLessThan(0.001);
    },
  );

  test('at 12 mm 5 l/min delivers less than 90 %, at 25 mm 7 l/min more: the model agrees for 17 to 20 mm only', () => {
    expect(delivered({ flow: 5, bore: 12 })).toBeLessThan(0.9);
    expect(delivered({ flow: 5, bore: 15 })).toBeLessThan(0.9);
    for (const bore of [17, 20]) {
      expect(delivered({ flow: 5, bore })).toBeGreaterThan(0.9);
      expect(delivered({ flow: 7, bore })).toBeLessThan(0.9);
    }
    expect(delivered({ flow: 7, bore: 25 })).toBeGreaterThan(0.9);
  });
});
