import { boilerFields } from './fields/boiler.ts';
import { coilFields, secondCoilFields } from './fields/coil.ts';
import { cylinderFields } from './fields/cylinder.ts';
import { dayFields } from './fields/day.ts';
import { drawFields } from './fields/draw.ts';
import { immersionFields } from './fields/immersion.ts';
import { priceFields } from './fields/prices.ts';
import { primaryFields } from './fields/primary.ts';
import { programmeFields } from './fields/programme.ts';
import { roomFields } from './fields/rooms.ts';
import type { Field } from './fields/row.ts';
import { sensorFields } from './fields/sensor.ts';
import { startFields } from './fields/start.ts';
import { statFields } from './fields/stat.ts';
import { unknownFields } from './fields/unknowns.ts';
import { exampleDraws } from './ownDraws.ts';
import { toSI } from './units.ts';
import { type FieldPath, type Group, groups, type Variant } from './variant.ts';

export type { ChoiceField, Field, NumberField } from './fields/row.ts';

/** Every setting, one row each, in the order the heat travels. The project's dictionary. */
export const fields: readonly Field[] = [
  ...boilerFields,
  ...primaryFields,
  ...coilFields,
  ...secondCoilFields,
  ...cylinderFields,
  ...statFields,
  ...drawFields,
  ...dayFields,
  ...startFields,
  ...sensorFields,
  ...immersionFields,
  ...roomFields,
  ...programmeFields,
  ...priceFields,
  ...unknownFields,
];

/** Headings of the groups of settings. */
export const groupLabels: Readonly<Record<Group, string>> = {
  boiler: 'Boiler',
  primary: 'Primary pipes and valves',
  circulator: 'Circulator',
  coil: 'Coil',
  secondCoil: 'Second coil',
  cylinder: 'Cylinder',
  stat: 'Sensor and stat',
  sensor: 'Sensor wiring',
  immersion: 'Immersion heater',
  draw: 'Draw-off',
  day: 'The day',
  start: 'At the start',
  heating: 'Heating',
  house: 'House',
  programme: 'Programme',
  prices: 'Prices and carbon',
  unknowns: 'Not known for certain',
  run: 'The run',
};

const byPath = new Map<string, Field>(fields.map((field) => [field.path, field]));

/** The row of one setting. */
export function fieldAt(path: FieldPath): Field {
  const field = byPath.get(path);
  if (!field) throw new Error(`no field at ${path}; expected one of ${[...byPath.keys()]}`);
  return field;
}

/** The rows of one group, in order. */
export function fieldsOf(group: Group): readonly Field[] {
  return fields.filter((field) => groupOf(field) === group);
}

/** The group a row belongs to. */
export function groupOf(field: Field): Group {
  return field.path.slice(0, field.path.indexOf('.')) as Group;
}

/** The key of a row inside its group, e.g. `output` of `boiler.output`. */
export function keyOf(field: Field): string {
  return field.path.slice(field.path.indexOf('.') + 1);
}

/** The default of a row in SI. */
export function defaultOf(field: Field): number | string {
  return field.kind === 'number' ? toSI(field.default, field.unit) : field.default;
}

/** A variant with every setting at its default. */
export function defaultVariant(name: string): Variant {
  const parts = groups.map((group) => [
    group,
    Object.fromEntries(fieldsOf(group).map((field) => [keyOf(field), defaultOf(field)])),
  ]);
  return { name, ownDraws: exampleDraws, ...Object.fromEntries(parts) } as unknown as Variant;
}
