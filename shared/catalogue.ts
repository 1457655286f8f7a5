import { fieldAt, fieldsOf } from './fields.ts';
import type { Field } from './fields/row.ts';
import { settingText } from './format.ts';
import { type Override, withOverrides } from './grid.ts';
import { fromSI } from './units.ts';
import { type FieldPath, settingOf, type Variant } from './variant.ts';

/** Something that is bought or found: a boiler, a coil, a cylinder, or one with another in it. */
export interface CatalogueEntry {
  readonly name: string;
  /** Where its figures come from, in the words of whoever wrote it: `invented`, `rating plate`; empty when not said. */
  readonly source: string;
  /** At least one, of `cataloguedFields`, in their order. */
  readonly settings: readonly Override[];
}

/** What an entry can be, at least. */
export const catalogueKinds = ['boiler', 'coil', 'cylinder'] as const;
export type CatalogueKind = (typeof catalogueKinds)[number];

/** Groups of settings that an entry can be put into. */
export type CatalogueTarget = CatalogueKind | 'secondCoil';

/** What can be kept of an installation as one entry. */
export type KeptAs = CatalogueKind | 'cylinderWithCoil';

export const kindLabels: Readonly<Record<CatalogueKind, string>> = {
  boiler: 'Boilers',
  coil: 'Coils',
  cylinder: 'Cylinders',
};

/** Settings of the three groups that belong to where a thing is fitted and how it is run, not to the thing. */
const ofTheHouse: ReadonlySet<FieldPath> = new Set<FieldPath>([
  'boiler.model',
  'boiler.hotWaterFlow',
  'boiler.heatingFlow',
  'boiler.targets',
  'coil.flowEnters',
  'coil.scaleThickness',
  'coil.scaleConductivity',
  'cylinder.surroundings',
  'cylinder.stirring',
]);

/** Heights of a coil in its cylinder, which say nothing about where a second one goes. */
const placeOfCoil: ReadonlySet<FieldPath> = new Set<FieldPath>(['coil.bottom', 'coil.top']);

/** Every setting an entry may hold, in the order of the settings. */
export const cataloguedFields: readonly Field[] = catalogueKinds
  .flatMap((kind) => fieldsOf(kind))
  .filter(({ path }) => !ofTheHouse.has(path));

/** What an entry would set in one group. A cylinder that holds a coil brings it with it. */
export function settingsFor(
  { settings }: CatalogueEntry,
  target: CatalogueTarget,
): readonly Override[] {
  if (target === 'secondCoil') return asSecondCoil(settings);
  const own = settings.filter(([path]) => groupIs(target, path));
  if (target !== 'cylinder' || own.length === 0) return own;
  return settings.filter(([path]) => groupIs('cylinder', path) || groupIs('coil', path));
}

/** The entries that have something to set in a group. */
export function entriesFor(
  entries: readonly CatalogueEntry[],
  target: CatalogueTarget,
): readonly CatalogueEntry[] {
  return entries.filter((entry) => settingsFor(entry, target).length > 0);
}

/** A variant with an entry fitted in one group; everything else stays. */
export function withFitted(
  variant: Variant,
  entry: CatalogueEntry,
  target: CatalogueTarget,
): Variant {
  return withOverrides(variant, settingsFor(entry, target));
}

/** Whether a variant has every setting of an entry in one group. */
export function isFitted(
  variant: Variant,
  entry: CatalogueEntry,
  target: CatalogueTarget,
): boolean {
  const settings = settingsFor(entry, target);
  return (
    settings.length > 0 &&
    settings.every(([path, value]) => isAsInFile(path, settingOf(variant, path), value))
  );
}

/** What is on the bench as an entry: the settings that have a say in it. */
export function entryFrom(
  variant: Variant,
  as: KeptAs,
  name: string,
  source: string,
): CatalogueEntry {
  const kinds: readonly CatalogueKind[] = as === 'cylinderWithCoil' ? ['coil', 'cylinder'] : [as];
  const settings = cataloguedFields
    .filter(({ path }) => kinds.some((kind) => groupIs(kind, path)))
    .filter(({ matters }) => matters?.(variant) ?? true)
    .map(({ path }): Override => [path, settingOf(variant, path)]);
  return { name, source, settings };
}

/** The settings of an entry that say most, in one line: `24 kW, at least 5 kW`. */
export function entryDigest({ settings }: CatalogueEntry, kind: CatalogueKind): string {
  const has = new Map(settings);
  const said = sayMost[kind].flatMap(([path, words]) => {
    const value = has.get(path);
    return value === undefined ? [] : [words.replace('#', settingText(path, value))];
  });
  const isInCylinder = kind === 'coil' && settings.some(([path]) => groupIs('cylinder', path));
  return isInCylinder ? `its coil: ${said.join(', ')}` : said.join(', ');
}

/** One setting of an entry in words: `Tube length 12 m`. */
export function settingInWords([path, value]: Override): string {
  return `${fieldAt(path).label}: ${settingText(path, value)}`;
}

const sayMost: Readonly<Record<CatalogueKind, readonly (readonly [FieldPath, string])[]>> = {
  boiler: [
    ['boiler.output', '#'],
    ['boiler.minimumOutput', 'at least #'],
  ],
  coil: [
    ['coil.length', '# of tube'],
    ['coil.area', '#'],
    ['coil.ratedOutput', 'rated #'],
    ['coil.conductance', '#'],
    ['coil.tubeOutside', '#'],
    ['coil.tubeMaterial', '#'],
  ],
  cylinder: [
    ['cylinder.volume', '#'],
    ['cylinder.height', '# high'],
    ['cylinder.supply', '#'],
    ['coil.length', 'with # of coil'],
    ['coil.area', 'with a coil of #'],
    ['coil.ratedOutput', 'with a coil rated #'],
    ['coil.conductance', 'with a coil of #'],
  ],
};

/** Whether two values of a setting are the same once they are written down. */
function isAsInFile(path: FieldPath, one: number | string, other: number | string): boolean {
  const field = fieldAt(path);
  if (field.kind === 'choice') return one === other;
  return fromSI(Number(one), field.unit) === fromSI(Number(other), field.unit);
}

function groupIs(group: CatalogueTarget, path: FieldPath): boolean {
  return path.startsWith(`${group}.`);
}

function asSecondCoil(settings: readonly Override[]): readonly Override[] {
  const coil = settings.filter(([path]) => groupIs('coil', path) && !placeOfCoil.has(path));
  if (coil.length === 0) return [];
  return [
    ['secondCoil.fitted', 'inSeries'],
    ...coil.map(([path, value]): Override => [
      path.replace(/^coil/, 'secondCoil') as FieldPath,
      value,
    ]),
  ];
}
