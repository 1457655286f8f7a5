import { describe, expect, test } from 'vitest';
import { fromText, toFile } from '../../../shared/codec.ts';
import { defaultVariant, fieldsOf } from '../../../shared/fields.ts';
import type { Variant } from '../../../shared/variant.ts';
import { lossAtTest, lossPerKelvin, lossStanding } from '../../../sim/closures/storeLoss.ts';

const KWH = 3.6e6; // J
const DAY = 86_400; // s

/** A store of 210 l, 1.8 kWh in 24 h at 45 K, with some of it changed. */
const store = (change: Partial<Variant['cylinder']>): Variant['cylinder'] => ({
  ...defaultVariant('store').cylinder,
  ...change,
});

describe('the loss per kelvin, worked by hand', () => {
  test('1.8 kWh in 24 h at 45 K is 75 W / 45 K = 1.6667 W/K', () => {
    expect(lossPerKelvin(store({}))).toBeCloseTo(75 / 45, 12); // rounding, as all here
  });

  test('2.4 kWh in 24 h is 100 W: 2.2222 W/K declared at 45 K and 1.8182 W/K at 55 K, which is 81.8 W at 45 K', () => {
    const standingLoss = (2.4 * KWH) / DAY;
    expect(lossPerKelvin(store({ standingLoss }))).toBeCloseTo(100 / 45, 12);
    const at55 = store({ standingLoss, declaredAt: '55' });
    expect(lossPerKelvin(at55)).toBeCloseTo(100 / 55, 12);
    expect(lossAtTest(at55)).toBeCloseTo((100 / 55) * 45, 12);
  });

  test('93 W are 2.0667 W/K declared at 45 K and 1.6909 W/K at 55 K, whatever stands for kWh', () => {
    const power = { lossFrom: 'declaredPower', declaredPower: 93, standingLoss: 1e3 } as const;
    expect(lossPerKelvin(store(power))).toBeCloseTo(93 / 45, 12);
    expect(lossPerKelvin(store({ ...power, declaredAt: '55' }))).toBeCloseTo(93 / 55, 12);
  });

  test.each([
    // litres, mm, kWh in 24 h. source: sap, Tables 2 and 2a
    ['factory', 120, 25, 2.88],
    ['factory', 120, 50, 1.82],
    ['factory', 120, 80, 1.39],
    ['factory', 210, 25, 4.18],
    ['factory', 210, 50, 2.65],
    ['factory', 210, 80, 2.01],
    ['jacket', 120, 80, 2.88],
  ] as const)('%s of %i l with %i mm: %f kWh in 24 h over 45 K, whatever is declared', (...row) => {
    const [insulation, litres, mm, loss] = row;
    const found = lossPerKelvin(
      store({
        lossFrom: 'insulation',
        declaredAt: '55',
        insulation,
        insulationThickness: mm / 1000,
        volume: litres / 1000,
      }),
    );
    // half the last printed digit of the loss
    expect(Math.abs((found * 45 * DAY) / KWH - loss)).toBeLessThanOrEqual(0.005);
  });

  test.each([
    // W at 210 l. source: labelTanks
    ['A+', 32.3],
    ['A', 44.6],
    ['B', 62.3],
    ['C', 87.4],
    ['D', 108.7],
    ['E', 142.0],
    ['F', 172.4],
  ] as const)('class %s at 210 l loses the most it allows, %f W at 45 K', (lossClass, watts) => {
    const cylinder = store({ lossFrom: 'class', lossClass, declaredAt: '55' });
    expect(Math.abs(lossAtTest(cylinder) - watts)).toBeLessThanOrEqual(0.05); // half the last digit
    expect(lossPerKelvin(cylinder) * 45).toBeCloseTo(lossAtTest(cylinder), 12);
    expect(lossStanding(cylinder).energyClass).toBe(lossClass);
  });
});

describe('beside the bounds', () => {
  test('75 W at 210 l are class C, B below 62.3 W; the limit is 87.4 W and the guide 2.302 kWh', () => {
    const standing = lossStanding(store({}));
    expect(standing.energyClass).toBe('C');
    expect(standing.better?.energyClass).toBe('B');
    expect(standing.better?.bound).toBeCloseTo(62.3, 1);
    expect(standing.limit).toBeCloseTo(87.4, 1);
    expect(standing.isAboveLimit).toBe(false);
    expect(Math.abs((standing.guide ?? 0) / 3600 - 2302)).toBeLessThanOrEqual(0.5); // Wh. source: ukServicesGuide
  });

  test('a store on the limit of class C keeps it, and 0.1 W more is class D and above it', () => {
    const onLimit = store({ lossFrom: 'class', lossClass: 'C' });
    expect(lossStanding(onLimit).isAboveLimit).toBe(false);
    const above = lossStanding(
      store({ lossFrom: 'declaredPower', declaredPower: lossAtTest(onLimit) + 0.1 }),
    );
    expect(above.energyClass).toBe('D');
    expect(above.isAboveLimit).toBe(true);
  });

  test('30 W at 210 l are class A+ with none better; 300 W are class G, F below 172.4 W', () => {
    const of = (declaredPower: number) =>
      lossStanding(store({ lossFrom: 'declaredPower', declaredPower }));
    expect(of(30)).toMatchObject({ energyClass: 'A+', better: null });
    expect(of(300)).toMatchObject({ energyClass: 'G', better: { energyClass: 'F' } });
  });

  test('500 l have a class; 501 l have none and no guide, but a limit of 116.8 W', () => {
    expect(lossStanding(store({ volume: 0.5 })).energyClass).not.toBeNull();
    const large = lossStanding(store({ volume: 0.501 }));
    expect(large).toMatchObject({ energyClass: null, better: null, guide: null });
    expect(large.limit).toBeCloseTo(16.66 + 8.33 * 501 ** 0.4, 9); // rounding
  });
});

describe('the settings', () => {
  const shownFor = (lossFrom: Variant['cylinder']['lossFrom']) => {
    const base = defaultVariant('store');
    const variant = { ...base, cylinder: { ...base.cylinder, lossFrom } };
    const loss = /standingLoss|declared|insulation|lossClass/;
    return fieldsOf('cylinder')
      .filter(({ path, matters }) => loss.test(path) && (matters?.(variant) ?? true))
      .map(({ path }) => path.replace('cylinder.', ''));
  };

  test.each([
    ['declared', ['standingLoss', 'declaredAt']],
    ['declaredPower', ['declaredPower', 'declaredAt']],
    ['insulation', ['insulation', 'insulationThickness']],
    ['class', ['lossClass']],
  ] as const)('with the loss from %s only %j have a say', (lossFrom, paths) => {
    expect(shownFor(lossFrom)).toEqual(paths);
  });

  test('a file saved without the 6 new keys means a loss declared in kWh at 45 K', () => {
    const file = structuredClone(toFile(defaultVariant('before'))) as Record<
      string,
      Record<string, unknown>
    >;
    const added =
      /^(lossFrom|declaredPowerWatts|declaredAt|insulation|insulationThicknessMillimetres|lossClass)$/;
    const { cylinder } = file;
    const gone = Object.keys(cylinder).filter((key) => added.test(key));
    expect(gone).toHaveLength(6);
    for (const key of gone) delete cylinder[key];
    cylinder.standingLossKilowattHoursPerDay = 2.4;
    const reading = fromText(JSON.stringify(file));
    expect('variant' in reading && lossPerKelvin(reading.variant.cylinder)).toBeCloseTo(
      100 / 45,
      12,
    );
  });
});
