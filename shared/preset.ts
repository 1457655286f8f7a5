import { fieldAt, defaultVariant } from './fields.ts';
import { toSI } from './units.ts';
import { type FieldPath, type Variant, withSetting } from './variant.ts';

/** One setting and its value, in its shown unit or a choice. */
export type Setting = readonly [FieldPath, number | string];

/** A set of settings over the defaults that makes a recognisable installation. All are invented. */
export interface Preset {
  /** Its name on the command line. */
  readonly key: string;
  readonly title: string;
  readonly description: string;
  /** `cause`: the healthy house with one thing wrong. */
  readonly group: 'house' | 'cause';
  /** Why it is slow, one sentence; of a cause. */
  readonly reason?: string;
  /** Each setting in its shown unit. */
  readonly sets: readonly Setting[];
}

/** The worked example of a first visit. The others stand in `presets.ts`, which the first load can do without. */
export const workedExample: Preset = {
  key: 'family-as-found',
  title: 'Family cylinder, as found',
  description: 'Invented: 210 l unvented, 24 kW, 1 mm of scale on an ordinary coil.',
  group: 'house',
  sets: [['coil.scaleThickness', 1]],
};

/** The variant a preset makes: its settings over the defaults. */
export function presetVariant(preset: Preset): Variant {
  return withSettings(defaultVariant(preset.title), preset.sets);
}

/** A variant with some settings, in their shown units, put to other values. */
export function withSettings(variant: Variant, settings: readonly Setting[]): Variant {
  return settings.reduce(
    (changed, setting) => withSetting(changed, setting[0], settingInside(setting)),
    variant,
  );
}

/** The value of a setting, SI or a choice. */
export function settingInside([path, value]: Setting): number | string {
  const field = fieldAt(path);
  return field.kind === 'number' ? toSI(Number(value), field.unit) : value;
}
