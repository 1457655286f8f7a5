import { fieldAt } from './fields.ts';
import { type Asked, readQuantity } from './problems/readQuantity.ts';
import type { FieldPath } from './variant.ts';

/** What is asked of someone who has ohms and wants degrees, or the other way. */
export type OhmsKey = 'r25' | 'beta' | 'tolerance' | 'ohms' | 'degrees';

export const ohmsAsked: Readonly<Record<OhmsKey, Asked>> = {
  r25: settingAsked('sensor.r25'),
  beta: settingAsked('sensor.beta'),
  // common practice, no source: thermistors are sold to 1, 2, 3, 5 and 10 %
  tolerance: { label: 'Tolerance', unit: 'percent', least: 0, most: 20, default: 1 },
  ohms: { label: 'Resistance', unit: 'ohm', least: 1, most: 10_000_000, default: 2463 },
  degrees: { label: 'Temperature', unit: 'celsius', least: -20, most: 120, default: 60 },
};

/** SI values of what could be read, and a sentence for each that could not. */
export interface OhmsRead {
  readonly values: Partial<Record<OhmsKey, number>>;
  readonly problems: Partial<Record<OhmsKey, string>>;
}

/** Reads what was typed for each; an entry that is left out, or null, is not asked for. */
export function readOhms(typed: Partial<Record<OhmsKey, string | null>>): OhmsRead {
  const values: Partial<Record<OhmsKey, number>> = {};
  const problems: Partial<Record<OhmsKey, string>> = {};
  for (const key of Object.keys(ohmsAsked) as OhmsKey[]) {
    const text = typed[key];
    if (text === undefined || text === null) continue;
    const read = readQuantity(text, ohmsAsked[key]);
    if ('problem' in read) problems[key] = read.problem;
    else values[key] = read.value;
  }
  return { values, problems };
}

function settingAsked(path: FieldPath): Asked {
  const field = fieldAt(path);
  if (field.kind !== 'number') throw new Error(`${path} is a choice; expected a number`);
  return field;
}
