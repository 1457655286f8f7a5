import { describe, expect, test } from 'vitest';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { measureRows, type Measures, quantities, type Quantity } from '../../../shared/result.ts';
import { valueAt } from '../../../shared/sampleAt.ts';
import { readingAt } from '../../../src/explain/reading.ts';
import { coilParts } from '../../../src/explain/coilParts.ts';
import { workingOf } from '../../../src/explain/workings.ts';
import { deliveryKeys, partKeys, type WorkingKey } from '../../../src/explain/working.ts';
import { lossPerKelvin } from '../../../sim/closures/storeLoss.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';

const result = simulateToEnd(presetVariant(presets[0]));
const half = (result.measures.recovery ?? Number.NaN) / 2;
const at = (quantity: Quantity) => valueAt(result.trace.time, result.trace.of[quantity], half);
const first = (key: WorkingKey, seconds = half) => workingOf(key, result, seconds).steps[0].values;

const keys: WorkingKey[] = [
  ...Object.keys(measureRows).map((key) => `measure.${key as keyof Measures}` as const),
  ...Object.keys(quantities).map((key) => `moment.${key as Quantity}` as const),
  ...partKeys,
  ...deliveryKeys,
];

test.each(keys)('%s opens 1 relation or more, with a title, whatever the moment', (key) => {
  for (const seconds of [0, half, result.outcome.at]) {
    const working = workingOf(key, result, seconds);
    expect(working.title).not.toMatch(/NaN|undefined/);
    expect(working.steps.length).toBeGreaterThanOrEqual(1);
    for (const step of working.steps) {
      for (const value of Object.values(step.values)) expect(value).not.toBeNaN();
    }
    for (const { key: next } of working.further) expect(keys).toContain(next);
  }
});

describe('halfway through the reheat of the first example', () => {
  test('the recovery worked from its parts is the one that was measured, to 1 part in 1e9', () => {
    const { recovery } = result.measures;
    expect((first('measure.recovery').result ?? 0) / (recovery ?? 1)).toBeCloseTo(1, 9); // rounding
  });

  test('the heat at the coil worked from flow, conductance and difference is the sampled heat', () => {
    expect((first('moment.coilHeat').result ?? 0) / at('coilHeat')).toBeCloseTo(1, 9); // rounding
  });

  test('the boiler’s heat worked from flow and return is the sampled heat', () => {
    expect((first('moment.boilerHeat').result ?? 0) / at('boilerHeat')).toBeCloseTo(1, 9); // rounding
  });

  test('usable litres worked from the hot part are those sampled, to 1 layer of 48', () => {
    const layer = (result.variant.cylinder.volume / 48) * (50 / 30);
    // at the end of the reheat, when 40 °C does not lie in the middle of a layer
    const end = result.measures.recovery ?? 0;
    const sampled = valueAt(result.trace.time, result.trace.of.usable, end);
    expect(Math.abs((first('moment.usable', end).result ?? 0) - sampled)).toBeLessThan(layer);
  });

  test('the standing loss worked from 1.8 kWh in 24 h is the sampled one, to 1 part in 1e3', () => {
    // between two samples the layers and the loss are each drawn straight
    expect((first('moment.standingLoss').result ?? 0) / at('standingLoss')).toBeCloseTo(1, 3);
  });

  test('the overall coefficient times 12 m of 22 mm tube is the conductance of the run within 5 %', () => {
    const reading = readingAt(result, half);
    const parts = coilParts(result, reading);
    const area = Math.PI * 0.022 * 12;
    // one mean temperature of the primary stands for all pieces of the coil
    expect(Math.abs(((parts?.U ?? 0) * area) / reading.conductance - 1)).toBeLessThan(0.05);
  });

  test('a known UA of 900 W/K comes back out of the run as 900 W/K within 1 %', () => {
    const known = presetVariant(presets[0]);
    const other = simulateToEnd({
      ...known,
      coil: { ...known.coil, given: 'conductance', conductance: 900 },
    });
    // the water around the coil is one mean temperature here, and several layers in the run
    const reading = readingAt(other, (other.measures.recovery ?? 0) / 2);
    expect(Math.abs(reading.conductance / 900 - 1)).toBeLessThan(0.01);
    expect(coilParts(other, reading)).toBeNull();
  });

  test('heat left in the primary counts the water of two coils, and leaves it open for a rated one', () => {
    const known = presetVariant(presets[0]);
    const { coil } = known;
    const content = (changed: Partial<typeof known>) => {
      const run = simulateToEnd({ ...known, ...changed });
      return workingOf('measure.leftInPrimary', run, half).steps[0].values.volume;
    };
    const one = content({}) ?? 0;
    const two = content({ secondCoil: { ...coil, fitted: 'inSeries', bottom: 0.6, top: 0.9 } });
    const bore = coil.tubeOutside - 2 * coil.tubeWall;
    expect((two ?? 0) - one).toBeCloseTo((Math.PI / 4) * bore * bore * coil.length, 9); // rounding, m³
    expect(content({ coil: { ...coil, given: 'rating' } })).toBeUndefined();
  });
});

describe('the loss of the store shows the relation it came by', () => {
  const withLoss = (change: Partial<typeof result.variant.cylinder>) => {
    const cylinder = { ...result.variant.cylinder, ...change };
    return { ...result, variant: { ...result.variant, cylinder } };
  };
  const keysOf = (key: WorkingKey, change: Partial<typeof result.variant.cylinder>) =>
    workingOf(key, withLoss(change), half).steps.map(({ record }) => record.key);

  test.each([
    [{}, ['standingLoss']],
    [{ declaredAt: '55' }, ['standingLossAt55']],
    [{ lossFrom: 'declaredPower' }, ['lossPower']],
    [{ lossFrom: 'declaredPower', declaredAt: '55' }, ['lossPowerAt55']],
    [{ lossFrom: 'insulation' }, ['tableLoss', 'factoryLoss']],
    [{ lossFrom: 'insulation', insulation: 'jacket' }, ['tableLoss', 'jacketLoss']],
    [{ lossFrom: 'class' }, ['lossPower', 'classBound']],
  ] as const)('%j: %j, in the loss per kelvin and in the loss of a moment', (change, records) => {
    expect(keysOf('store.lossPerKelvin', change)).toEqual(records);
    expect(keysOf('moment.standingLoss', change)).toEqual(['cylinderLoss', ...records]);
    const values = (key: WorkingKey) => workingOf(key, withLoss(change), half).steps;
    const perKelvin = values('store.lossPerKelvin')[0].values.result ?? Number.NaN;
    expect(perKelvin).toBeCloseTo(lossPerKelvin(withLoss(change).variant.cylinder), 12); // rounding
    expect(values('moment.standingLoss')[0].values.UA).toBeCloseTo(perKelvin, 12);
  });

  test('class G is told by the bound of F, 172.4 W at 210 l, and 600 l by the limit alone', () => {
    const large = { lossFrom: 'declaredPower', declaredPower: 300 } as const;
    const [step] = workingOf('store.energyClass', withLoss(large), half).steps;
    expect(step.values.result).toBeCloseTo(172.4, 1);
    expect(keysOf('store.energyClass', { volume: 0.6 })).toEqual(['classLimit']);
  });
});
