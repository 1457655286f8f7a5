import { type Reading, fromFile } from './codec/fromFile.ts';
import { fileFormat, fileVersion } from './codec/heading.ts';
import { readJson } from './codec/json.ts';
import { drawsInFile } from './codec/ownDraws.ts';
import { fieldsOf } from './fields.ts';
import { fileKeyOf } from './fileKeys.ts';
import type { Field } from './fields/row.ts';
import { fromSI } from './units.ts';
import { groups, settingOf, type Variant } from './variant.ts';

export type { Reading } from './codec/fromFile.ts';

/** A variant in its file form: settings only, the unit in every key. */
export function toFile(variant: Variant): Record<string, unknown> {
  const parts = groups.flatMap((group) => {
    const settings = fieldsOf(group).map((field) => [fileKeyOf(field), fileValue(variant, field)]);
    const part = [group, Object.fromEntries(settings)];
    return group === 'day' ? [part, ['ownDraws', drawsInFile(variant.ownDraws)]] : [part];
  });
  return {
    format: fileFormat,
    version: fileVersion,
    name: variant.name,
    ...Object.fromEntries(parts),
  };
}

/** A variant as the text of its file: the same variant gives the same bytes. */
export function toText(variant: Variant): string {
  return `${JSON.stringify(toFile(variant), null, 2)}\n`;
}

/** Reads the text of a file. Settings that are missing stand at their default; nothing else is guessed. */
export function fromText(text: string): Reading {
  const read = readJson(text, 'one variant');
  return 'problem' in read ? { problems: [read.problem] } : fromFile(read.value);
}

function fileValue(variant: Variant, field: Field): number | string {
  const value = settingOf(variant, field.path);
  return field.kind === 'number' ? fromSI(value as number, field.unit) : value;
}
