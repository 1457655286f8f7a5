import type { Day, OwnDraw } from './variant/day.ts';
import type { Boiler, Circulator, Primary } from './variant/heatSource.ts';
import type { Heating, House, Prices, Programme, RunSettings } from './variant/rooms.ts';
import type { Unknowns } from './variant/unknowns.ts';
import type {
  Coil,
  Cylinder,
  Draw,
  Immersion,
  SecondCoil,
  Sensor,
  Start,
  Stat,
} from './variant/store.ts';

export type { Arrangement } from './arrangements.ts';
export type { Day, OwnDraw } from './variant/day.ts';
export type { Boiler, Circulator, Primary } from './variant/heatSource.ts';
export type { Heating, House, Prices, Programme, RunSettings } from './variant/rooms.ts';
export type { Unknowns } from './variant/unknowns.ts';
export type {
  Coil,
  Cylinder,
  Draw,
  Immersion,
  Metal,
  SecondCoil,
  Sensor,
  Start,
  Stat,
} from './variant/store.ts';

/**
 * One installation and its settings, in SI units. Layers of water are numbered from the bottom, 0
 * upwards; heights are metres above the inside base of the cylinder; heat into water is positive.
 * Labels, limits, defaults and their sources are in `fields.ts`; the file form is in `codec.ts`.
 */
export interface Variant {
  readonly name: string;
  readonly boiler: Boiler;
  readonly primary: Primary;
  readonly circulator: Circulator;
  readonly coil: Coil;
  readonly secondCoil: SecondCoil;
  readonly cylinder: Cylinder;
  readonly stat: Stat;
  readonly sensor: Sensor;
  readonly immersion: Immersion;
  readonly draw: Draw;
  readonly day: Day;
  /** Of the day, where its pattern is `own`. */
  readonly ownDraws: readonly OwnDraw[];
  readonly heating: Heating;
  readonly house: House;
  readonly programme: Programme;
  readonly prices: Prices;
  readonly start: Start;
  readonly unknowns: Unknowns;
  readonly run: RunSettings;
}

/** The parts of a variant that hold settings, in the order the heat travels. */
export const groups = [
  'boiler',
  'primary',
  'circulator',
  'coil',
  'secondCoil',
  'cylinder',
  'stat',
  'sensor',
  'immersion',
  'draw',
  'day',
  'heating',
  'house',
  'programme',
  'prices',
  'start',
  'unknowns',
  'run',
] as const satisfies readonly Exclude<keyof Variant, 'name' | 'ownDraws'>[];

export type Group = (typeof groups)[number];

/** Where a setting stands in a variant, e.g. `boiler.output`. */
export type FieldPath = { [G in Group]: `${G}.${keyof Variant[G] & string}` }[Group];

/** The value of one setting, in SI. */
export function settingOf(variant: Variant, path: FieldPath): number | string {
  const [group, key] = partsOf(path);
  return (variant[group] as unknown as Record<string, number | string>)[key];
}

/** The same variant with one setting, in SI, put to another value. */
export function withSetting(variant: Variant, path: FieldPath, value: number | string): Variant {
  const [group, key] = partsOf(path);
  return { ...variant, [group]: { ...variant[group], [key]: value } };
}

/** The group of a setting and its key; split once, as every point of a map reads every setting. */
function partsOf(path: FieldPath): readonly [Group, string] {
  const before = known.get(path);
  if (before !== undefined) return before;
  const parts = path.split('.') as [Group, string];
  known.set(path, parts);
  return parts;
}

const known = new Map<FieldPath, readonly [Group, string]>();
