import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Study } from '../../../shared/study.ts';
import { valueAt } from '../../../shared/sampleAt.ts';
import { type Variant, withSetting } from '../../../shared/variant.ts';
import { lossPerKelvin } from '../../../sim/closures/storeLoss.ts';
import { coolDownStudy } from '../../../sim/run/coolDown.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { idealVariant } from '../../make/idealVariant.ts';

type CoolDown = Extract<Study, { kind: 'coolDown' }>;

/** Runs the study to its end; its progress must rise. */
function leftAlone(variant: Variant): CoolDown {
  const study = coolDownStudy(variant);
  let done = 0;
  for (;;) {
    const step = study.next();
    if (step.done) {
      expect(done).toBeGreaterThan(0.5);
      return step.value as CoolDown;
    }
    expect(step.value).toBeGreaterThanOrEqual(done);
    done = step.value;
  }
}
const last = (line: Float64Array) => line[line.length - 1];
const base = defaultVariant('store');
const withStore = (change: Partial<Variant['cylinder']>): Variant => ({
  ...base,
  cylinder: { ...base.cylinder, ...change },
});

describe('case S1: 93 W at a mean difference of 34 K over 2.6 m². source: coolDownTest', () => {
  // 292.2 l and 1.23 m are ours: what was read gives the surface alone
  const variant = withStore({
    lossFrom: 'declaredPower',
    declaredPower: (93 / 34) * 45,
    volume: 0.2922,
    height: 1.23,
  });
  const floor = 0.2922 / 1.23;
  const surface = 2 * floor + 1.23 * 2 * Math.sqrt(Math.PI * floor);
  const study = leftAlone(variant);

  test('the store has 2.60 m²', () => {
    expect(surface).toBeCloseTo(2.6, 2);
  });

  test('on its way down it loses 93 W ± 2 % when its mean is 54 °C in a room at 20 °C', () => {
    const at = study.mean.findIndex((mean) => mean <= 54);
    expect(at).toBeGreaterThan(10); // it has cooled for hours, and its bottom is colder
    const share = (study.mean[at - 1] - 54) / (study.mean[at - 1] - study.mean[at]);
    const loss = study.loss[at - 1] + share * (study.loss[at] - study.loss[at - 1]);
    expect(Math.abs(loss / 93 - 1)).toBeLessThan(0.02);
  });

  test('the log ratio of its mean over 48 h gives back UA ± 2 %: 1.04 of the 1.05 W/(m² K) put in', () => {
    const put = lossPerKelvin(variant.cylinder);
    expect((put / surface).toFixed(2)).toBe('1.05'); // as printed
    expect(study.readAt).toBe(172_800);
    expect(Math.abs((study.conductance ?? 0) / put - 1)).toBeLessThan(0.02);
    expect(((study.conductance ?? 0) / surface).toFixed(2)).toBe('1.04'); // as printed
  });
});

describe('a mixed store of 836 kJ/K that loses 2 W/K in air at 20 °C', () => {
  const study = leftAlone(idealVariant({ loss: 2 }));

  test('is at 52.530590 °C after 24 h and at 46.455983 °C after 48 h', () => {
    // 40 K · e^(−2 · 86 400 / 836 000), and its square; twice the tolerance of the run
    expect(Math.abs(valueAt(study.time, study.mean, 86_400) - 52.53059)).toBeLessThan(2e-4);
    expect(Math.abs(last(study.mean) - 46.455983)).toBeLessThan(2e-4);
    expect(last(study.top)).toBe(last(study.bottom));
  });

  test('loses 80 W at first, 1.7346 kWh in 24 h, and gives back 2.0000 W/K', () => {
    expect(study.loss[0]).toBeCloseTo(80, 9); // rounding
    // 836 kJ/K × 7.46941 K; 2e-4 K are 167 J
    expect(Math.abs(study.lostInDay - 836_000 * 7.46941)).toBeLessThan(170);
    expect(study.conductance).toBeCloseTo(2, 4); // 2e-4 K of 13.5 K
  });

  test('at 50 °C its top is below 40 °C after 47.08 h', () => {
    const cooler = leftAlone(idealVariant({ loss: 2, setPoint: 50 }));
    const exact = (836_000 / 2) * Math.log(30 / 20);
    // between samples 15 min apart the curve bends by 1e-4 of the 900 s
    expect(Math.abs((cooler.coolAfter ?? 0) - exact)).toBeLessThan(5);
    expect(study.coolAfter).toBeNull();
  });
});

describe('the family cylinder: 1.8 kWh in 24 h at 45 K, from 60 °C', () => {
  const study = leftAlone(base);

  test('loses in 24 h what a run of the same store books as lost, to 180 J of 5.3 MJ', () => {
    const run = simulateToEnd({
      ...base,
      boiler: { ...base.boiler, model: 'ideal' },
      heating: { ...base.heating, arrangement: 'hotWaterOnly' },
      // its stat sits so low that it never calls
      stat: { ...base.stat, setPoint: 30 },
      start: { hotShare: 1, hotTemperature: 60, boundary: 0 },
      run: { ...base.run, duration: 86_400 },
    });
    expect(run.balance.fromBoiler).toBe(0);
    // both are within 1e-4 K of 879 kJ/K at each end
    expect(Math.abs(run.balance.lostByCylinder - study.lostInDay)).toBeLessThan(180);
  });

  test('the top stays hottest and the bottom gets coldest at each of the samples', () => {
    study.mean.forEach((mean, sample) => {
      expect(study.top[sample]).toBeGreaterThanOrEqual(mean - 1e-9); // rounding of the mean
      expect(study.bottom[sample]).toBeLessThanOrEqual(mean + 1e-9);
    });
    expect(last(study.bottom)).toBeLessThan(last(study.top) - 1);
  });

  test('120 mm more insulation always loses less: 10 to 130 mm by 40', () => {
    const lost = [0.01, 0.05, 0.09, 0.13].map(
      (insulationThickness) =>
        leftAlone(withStore({ lossFrom: 'insulation', insulationThickness })).lostInDay,
    );
    for (let i = 1; i < lost.length; i++) expect(lost[i]).toBeLessThan(lost[i - 1]);
  });

  test.each([
    ['a boiler as built', { boiler: { ...base.boiler, model: 'asBuilt' } }],
    ['an immersion heater', { immersion: { ...base.immersion, used: 'insteadOfBoiler' } }],
    ['a draw of 100 l', { draw: { ...base.draw, volume: 0.1, startsAt: 60 } }],
    [
      'a sensor cut off after 1 h',
      { sensor: { ...base.sensor, element: 'thermistor', fault: 'open', faultAt: 3600 } },
    ],
    ['radiators at the same time', { heating: { ...base.heating, arrangement: 'simultaneous' } }],
  ] as [string, Partial<Variant>][])('%s changes nothing, to the last bit', (_what, change) => {
    expect(last(leftAlone({ ...base, ...change }).mean)).toBe(last(study.mean));
  });
});

describe('at the edges', () => {
  test('a store that loses nothing is at 60 °C after 48 h and gives back 0 W/K', () => {
    const study = leftAlone(withStore({ standingLoss: 0 }));
    expect(last(study.mean)).toBe(60);
    expect(study.lostInDay).toBe(0);
    expect(study.conductance).toBe(0);
  });

  test('a store as warm as the air at 45 °C gives back nothing', () => {
    const warm = withSetting(withStore({ surroundings: 45 }), 'stat.setPoint', 45);
    expect(leftAlone(warm).conductance).toBeNull();
  });

  test('a store at 40 °C in air at 45 °C gains heat, and gives back its UA within 2 %', () => {
    const study = leftAlone(withSetting(withStore({ surroundings: 45 }), 'stat.setPoint', 40));
    expect(study.lostInDay).toBeLessThan(0);
    expect(last(study.mean)).toBeGreaterThan(41);
    expect(Math.abs((study.conductance ?? 0) / (75 / 45) - 1)).toBeLessThan(0.02);
  });

  test('30 l that lose 625 W are read while a tenth of the difference is left, not at 48 h', () => {
    const study = leftAlone(withStore({ volume: 0.03, height: 0.4, standingLoss: 625 }));
    expect(study.readAt).toBeLessThan(172_800);
    expect(study.conductance).toBeGreaterThan(10);
  });

  test('below 40 °C from the start the top is cool after 0 s', () => {
    expect(leftAlone(withSetting(base, 'stat.setPoint', 39)).coolAfter).toBe(0);
  });
});
