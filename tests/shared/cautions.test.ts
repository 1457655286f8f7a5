import { describe, expect, test } from 'vitest';
import { cautionsOf } from '../../shared/cautions.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { newDraw } from '../../shared/ownDraws.ts';
import type { Measures, Result } from '../../shared/result.ts';
import { type FieldPath, type Variant, withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';

const base = defaultVariant('Case');
const worked = simulateToEnd(base);
const variantWith = (path: FieldPath, value: number | string) => withSetting(base, path, value);
const ownDrawAt = (mixedTo: number): Variant => ({
  ...variantWith('day.pattern', 'own'),
  ownDraws: [{ ...newDraw, mixedTo }],
});
const resultWith = (measures: Partial<Measures>): Result => ({
  ...worked,
  measures: { ...worked.measures, ...measures },
});
const keysOf = (variant: Variant, result: Result | null = null) =>
  cautionsOf(variant, result).map(({ key }) => key);

describe('which cautions apply', () => {
  const cases: readonly (readonly [string, string, Variant, Result | null, boolean])[] = [
    ['a set-point of 59 °C', 'storedBelow60', variantWith('stat.setPoint', 59), null, true],
    ['a set-point of 60 °C', 'storedBelow60', base, null, false],
    ['20 °C at the bottom', 'warmBelowTheCoil', base, resultWith({ bottomAtSatisfied: 20 }), true],
    ['45 °C at the bottom', 'warmBelowTheCoil', base, resultWith({ bottomAtSatisfied: 45 }), true],
    ['19 °C at the bottom', 'warmBelowTheCoil', base, resultWith({ bottomAtSatisfied: 19 }), false],
    ['46 °C at the bottom', 'warmBelowTheCoil', base, resultWith({ bottomAtSatisfied: 46 }), false],
    ['no run yet', 'warmBelowTheCoil', base, null, false],
    ['a set-point of 50 °C', 'scald', variantWith('stat.setPoint', 50), null, true],
    ['a set-point of 49 °C', 'scald', variantWith('stat.setPoint', 49), null, false],
    [
      'a set-point of 49 °C, heated through to 65 °C',
      'scald',
      withSetting(variantWith('stat.setPoint', 49), 'day.pasteurise', 'once'),
      null,
      true,
    ],
    [
      'a set-point of 49 °C and water at 52 °C',
      'scald',
      variantWith('stat.setPoint', 49),
      resultWith({ hottest: 52 }),
      true,
    ],
    ['an own draw at 48 °C', 'hotAtTheTap', ownDrawAt(48), null, false],
    ['an own draw at 49 °C', 'hotAtTheTap', ownDrawAt(49), null, true],
    ['no own draw', 'hotAtTheTap', { ...ownDrawAt(49), ownDraws: [] }, null, false],
    [
      'an own draw at 49 °C on a household’s day',
      'hotAtTheTap',
      { ...ownDrawAt(49), day: base.day },
      null,
      false,
    ],
    ['water at 65.1 °C for 60 °C', 'topOverheats', base, resultWith({ hottest: 65.1 }), true],
    ['water at 65 °C for 60 °C', 'topOverheats', base, resultWith({ hottest: 65 }), false],
    [
      'water at 81 °C for 80 °C',
      'topOverheats',
      variantWith('stat.setPoint', 80),
      resultWith({ hottest: 81 }),
      true,
    ],
    [
      'a sensor at 0.06 m, the coil from 0.08 m',
      'topOverheats',
      variantWith('stat.sensorHeight', 0.06),
      null,
      true,
    ],
    [
      'a sensor at 0.08 m, the coil from 0.08 m',
      'topOverheats',
      variantWith('stat.sensorHeight', 0.08),
      null,
      false,
    ],
    [
      'hot water at set times',
      'programmeShort',
      variantWith('programme.hotWater', 'timed'),
      null,
      true,
    ],
    ['hot water always', 'programmeShort', base, null, false],
    [
      'a bare strapped-on sensor',
      'readsLow',
      variantWith('stat.mounting', 'strappedBare'),
      null,
      true,
    ],
    ['a greased pocket', 'readsLow', variantWith('stat.mounting', 'wetPocket'), null, false],
    [
      'a thermistor with a joint of 500 Ω',
      'readsLow',
      withSetting(variantWith('sensor.element', 'thermistor'), 'sensor.jointResistance', 500),
      null,
      true,
    ],
    [
      'a joint of 500 Ω on a sensor that reads true',
      'readsLow',
      variantWith('sensor.jointResistance', 500),
      null,
      false,
    ],
    [
      'a thermistor with a damp path of 10 kΩ',
      'readsHigh',
      withSetting(variantWith('sensor.element', 'thermistor'), 'sensor.dampResistance', 10_000),
      null,
      true,
    ],
    [
      'platinum with a damp path of 10 kΩ',
      'readsLow',
      withSetting(variantWith('sensor.element', 'platinum'), 'sensor.dampResistance', 10_000),
      null,
      true,
    ],
    [
      'platinum with a damp path of 10 kΩ',
      'readsHigh',
      withSetting(variantWith('sensor.element', 'platinum'), 'sensor.dampResistance', 10_000),
      null,
      false,
    ],
    [
      'platinum with a joint of 30 Ω',
      'readsHigh',
      withSetting(variantWith('sensor.element', 'platinum'), 'sensor.jointResistance', 30),
      null,
      true,
    ],
    [
      'platinum with a joint of 30 Ω',
      'readsLow',
      withSetting(variantWith('sensor.element', 'platinum'), 'sensor.jointResistance', 30),
      null,
      false,
    ],
    [
      'a thermistor taken for another',
      'readsHigh',
      withSetting(variantWith('sensor.element', 'thermistor'), 'sensor.expects', 'thermistor'),
      null,
      true,
    ],
    ['a dry joint', 'readsHigh', variantWith('sensor.element', 'thermistor'), null, false],
    [
      'a limiter that tripped',
      'limiterTripped',
      base,
      { ...worked, marks: [{ at: 60, kind: 'limiterTripped' }] },
      true,
    ],
    ['a healthy run', 'limiterTripped', base, worked, false],
    ['an immersion heater', 'immersion', variantWith('immersion.used', 'withBoiler'), null, true],
    ['no immersion heater', 'immersion', base, null, false],
    ['1.01 m/s', 'fastPrimary', base, resultWith({ primaryVelocity: 1.01 }), true],
    ['1 m/s', 'fastPrimary', base, resultWith({ primaryVelocity: 1 }), false],
    [
      'a heating target of 81 °C that serves both',
      'flowAbove80',
      withSetting(variantWith('boiler.heatingFlow', 81), 'boiler.targets', 'shared'),
      null,
      true,
    ],
    ['a flow limit of 81 °C', 'flowAbove80', variantWith('boiler.hotWaterFlow', 81), null, true],
    ['a flow limit of 80 °C', 'flowAbove80', base, null, false],
    ['an unvented cylinder', 'unvented', base, null, true],
    ['an unvented cylinder', 'vented', base, null, false],
    ['a vented cylinder', 'vented', variantWith('cylinder.supply', 'vented'), null, true],
    ['a vented cylinder', 'unvented', variantWith('cylinder.supply', 'vented'), null, false],
    ['any variant', 'gas', base, null, true],
    ['any variant', 'electricity', base, worked, true],
  ];
  test.each(cases)('%s: %s', (_name, key, variant, result, applies) => {
    expect(keysOf(variant, result).includes(key)).toBe(applies);
  });
});

test('the last caution of 3 variants defers to local codes, the maker and licensed practice', () => {
  const vented = variantWith('cylinder.supply', 'vented');
  for (const variant of [base, vented, variantWith('stat.setPoint', 45)]) {
    const last = cautionsOf(variant, null).at(-1);
    expect(last?.key).toBe('deferral');
    expect(last?.text).toMatch(/Local codes, the maker’s instructions and licensed practice/);
  }
});

test('every caution has its source beside it, and none tells anyone to defeat a device', () => {
  const wild = withSetting(variantWith('stat.setPoint', 45), 'boiler.hotWaterFlow', 90);
  const cautions = [
    ...cautionsOf(wild, resultWith({ hottest: 85, bottomAtSatisfied: 30 })),
    ...cautionsOf(variantWith('cylinder.supply', 'vented'), worked),
  ];
  expect(new Set(cautions.map(({ key }) => key)).size).toBe(10);
  for (const { source } of cautions) {
    expect(source).toMatch(/\b(19|20)\d\d\b|no source|common practice|from memory/i);
  }
  const sentences = cautions.flatMap(({ text }) => text.split(/(?<=[.;:]) /));
  const aboutDevices = sentences.filter((sentence) =>
    /\b(alter|block|blocked|defeat|bypass|raise|valved)\b/i.test(sentence),
  );
  expect(aboutDevices.length).toBe(3);
  for (const sentence of aboutDevices) expect(sentence).toMatch(/\bnever\b/i);
});

test('a sensor below the coil overheats the top: the run itself says so with its hottest water', () => {
  const low = variantWith('stat.sensorHeight', 0.02);
  const result = simulateToEnd(low);
  const caution = cautionsOf(low, result).find(({ key }) => key === 'topOverheats');
  expect(result.measures.hottest).toBeGreaterThan(65);
  expect(caution?.text).toContain(`${result.measures.hottest.toFixed(1)}\u00a0°C`);
});
