import fc from 'fast-check';
import { incomingCold } from '../../shared/coldWater.ts';
import { defaultVariant, fields } from '../../shared/fields.ts';
import { fromSI, toSI, type UnitName } from '../../shared/units.ts';
import {
  type FieldPath,
  type OwnDraw,
  settingOf,
  type Variant,
  withSetting,
} from '../../shared/variant.ts';

/** A row of the own draws within its limits: a time of whole minutes or of milliseconds, the rest in tenths. */
export const anyDraw: fc.Arbitrary<OwnDraw> = fc.record({
  name: fc.string({ maxLength: 40, unit: 'grapheme-ascii' }),
  at: fc.oneof(
    fc.integer({ min: 0, max: 24 * 60 - 1 }).map((minutes) => 60 * minutes),
    fc.integer({ min: 0, max: (24 * 60 - 1) * 60_000 }).map((milliseconds) => milliseconds / 1000),
  ),
  volume: tenths(0.1, 1000, 'litre'),
  flow: tenths(0.5, 60, 'litrePerMinute'),
  mixedTo: tenths(20, 60, 'celsius'),
});

function tenths(least: number, most: number, unit: UnitName): fc.Arbitrary<number> {
  const shown = fc.integer({ min: 10 * least, max: 10 * most }).map((count) => count / 10);
  return shown.map((value) => toSI(value, unit));
}

/**
 * Variants that have no problems: every setting anywhere within its limits, the coils sized to the
 * cylinder they stand in, an own table of 0 to 6 draws.
 */
export const anyVariant: fc.Arbitrary<Variant> = fc
  .record({
    name: fc.string({ maxLength: 40, unit: 'grapheme' }),
    settings: fc.tuple(...fields.map(anySetting)),
    shares: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 8, maxLength: 8 }),
    ownDraws: fc.array(anyDraw, { maxLength: 6 }),
  })
  .map(({ name, settings, shares, ownDraws }) => {
    const loose = fields.reduce<Variant>(
      (variant, { path }, index) => withSetting(variant, path, settings[index]),
      { ...defaultVariant('any'), name },
    );
    const cold = incomingCold(loose.draw);
    const warmer = ownDraws.map((own) => ({ ...own, mixedTo: Math.max(own.mixedTo, cold) }));
    return fitted({ ...loose, ownDraws: warmer }, shares);
  });

function anySetting(field: (typeof fields)[number]): fc.Arbitrary<number | string> {
  if (field.kind === 'choice') return fc.constantFrom(...field.choices.map(({ value }) => value));
  const steps = Math.floor((field.most - field.least) / field.step + 1e-9);
  const shown = (step: number) => Number((field.least + step * field.step).toPrecision(12));
  return fc.integer({ min: 0, max: steps }).map((step) => toSI(shown(step), field.unit));
}

/** Puts right what depends on other settings. `shares`: where between the limits, 0 to 1. */
function fitted(loose: Variant, shares: readonly number[]): Variant {
  // tall enough and slim enough that two coils can stand in it
  const height = 1 + shares[0];
  const volume = 0.15 + 0.3 * shares[1];
  let variant = set(set(loose, 'cylinder.height', height), 'cylinder.volume', volume);
  const width = Math.sqrt((4 * variant.cylinder.volume) / (Math.PI * variant.cylinder.height));
  variant = set(variant, 'stat.sensorHeight', 0.02 + 0.9 * shares[2]);
  variant = set(variant, 'draw.inletMixing', 0.5 * shares[3]);
  variant = set(variant, 'draw.mixedTo', 36 + 20 * shares[6]);
  variant = set(variant, 'start.boundary', 0.5 * shares[4]);
  variant = set(variant, 'start.hotTemperature', 40 + 40 * shares[5]);
  variant = set(variant, 'immersion.height', 0.02 + 0.9 * shares[1]);
  // outputs and temperatures of the boiler in order, and a flow that some network can have
  const { output, hotWaterFlow, heatingFlow } = variant.boiler;
  const hottest = Math.max(hotWaterFlow, heatingFlow);
  const offMargin = Math.min(variant.boiler.offMargin, 109 - hottest); // the limiter is at 110 °C at most
  variant = set(variant, 'boiler.offMargin', offMargin);
  variant = set(variant, 'boiler.minimumOutput', Math.max(500, output * shares[2]));
  variant = set(variant, 'boiler.highLimit', Math.max(60, Math.ceil(hottest + offMargin + 1)));
  variant = set(variant, 'primary.valveDrop', 1000 + 20_000 * shares[3]);
  variant = set(variant, 'programme.hotWaterFor', 300 + 20_000 * shares[4]);
  variant = set(variant, 'heating.lowestFlow', 20 + (Math.min(heatingFlow, 60) - 20) * shares[5]);
  variant = set(
    variant,
    'heating.designOutside',
    Math.min(variant.heating.designOutside, variant.heating.roomSetPoint - 5),
  );
  variant = set(variant, 'sensor.steinhartA', 0.0011 + 0.0001 * shares[6]);
  variant = set(variant, 'sensor.steinhartB', 0.00022 + 0.00002 * shares[7]);
  variant = set(variant, 'sensor.steinhartC', 0.8e-7 + 0.2e-7 * shares[0]);
  for (const group of ['coil', 'secondCoil'] as const) {
    const bottom = group === 'coil' ? 0.1 * shares[6] : 0.5 + 0.1 * shares[6];
    variant = set(variant, `${group}.bottom`, bottom);
    variant = set(variant, `${group}.top`, variant[group].bottom + 0.1 + 0.25 * shares[7]);
    variant = set(variant, `${group}.tubeOutside`, 0.012 + 0.016 * shares[5]);
    variant = set(variant, `${group}.tubeWall`, 0.0005 + 0.003 * shares[4]);
    const { tubeOutside, top, bottom: lowest } = variant[group];
    variant = set(
      variant,
      `${group}.coilDiameter`,
      (0.4 + 0.4 * shares[3]) * (width - tubeOutside),
    );
    const mostTurns = 1 + (top - lowest) / tubeOutside;
    const turns = 1.5 + shares[2] * (mostTurns - 1.6);
    variant = set(variant, `${group}.length`, turns * Math.PI * variant[group].coilDiameter);
    variant = set(variant, `${group}.ratedFrom`, 1 + 20 * shares[1]);
    variant = set(variant, `${group}.ratedTo`, variant[group].ratedFrom + 40 * shares[0]);
    variant = set(variant, `${group}.ratedInlet`, 70 + 25 * shares[7]);
    variant = set(variant, `${group}.ratedFlow`, toSI(10 + 20 * shares[6], 'litrePerMinute'));
    variant = set(variant, `${group}.ratedOutput`, 500 + 5000 * shares[5]);
  }
  return variant;
}

/** One setting, at a value that can be typed: twelve figures of the shown unit. */
function set(variant: Variant, path: FieldPath, value: number): Variant {
  const field = fields.find((row) => row.path === path);
  if (field?.kind !== 'number') throw new Error(`${path} is no number`);
  const typed = Number(fromSI(value, field.unit).toPrecision(6));
  return withSetting(variant, path, toSI(typed, field.unit));
}

/** The settings of a variant as plain data, for comparison. */
export function settingsOf(variant: Variant): Record<string, number | string> {
  return Object.fromEntries(fields.map(({ path }) => [path, settingOf(variant, path)]));
}
