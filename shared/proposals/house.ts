import { arrangementOf } from '../arrangements.ts';
import { shown, timeOfDay } from '../format.ts';
import { isAllowed } from '../programme.ts';
import { fieldAt } from '../fields.ts';
import { toSI } from '../units.ts';
import { type FieldPath, type Variant, withSetting } from '../variant.ts';
import type { Proposal, Propose } from './proposal.ts';

/** Who goes first, and when hot water is allowed. */
export const houseProposals: Propose = (variant) => [
  hotWaterFirst(variant),
  ...(variant.programme.hotWater === 'timed'
    ? [longerTimes(variant), earlierTimes(variant), always(variant)]
    : []),
];

function hotWaterFirst(variant: Variant): Proposal | null {
  const { arrangement } = variant.heating;
  if (!arrangementOf(arrangement).heated || arrangement === 'priority') return null;
  return {
    key: 'hotWaterFirst',
    cause: 'heating',
    text: 'Let hot water go first; the rooms wait meanwhile',
    variant: withSetting(variant, 'heating.arrangement', 'priority'),
  };
}

function longerTimes(variant: Variant): Proposal | null {
  const { hotWaterFor, hotWaterAgainFor } = variant.programme;
  const paths: FieldPath[] = ['programme.hotWaterFor'];
  if (hotWaterAgainFor > 0) paths.push('programme.hotWaterAgainFor');
  const lasts = Math.min(hotWaterFor + LONGER, longestOf('programme.hotWaterFor'));
  if (lasts <= hotWaterFor) return null;
  return {
    key: 'longerTimes',
    cause: 'times',
    text: `Allow hot water for ${shown(lasts, 'minute', 0)} at a time`,
    variant: paths.reduce((longer, path) => withSetting(longer, path, lasts), variant),
  };
}

/** Only where hot water has to wait for its time as the run starts. */
function earlierTimes(variant: Variant): Proposal | null {
  const { programme } = variant;
  const { startsAt, hotWaterFrom } = programme;
  if (isAllowed(programme, 'hotWater', startsAt) || hotWaterFrom <= startsAt) return null;
  const from = Math.max(startsAt, hotWaterFrom - LONGER);
  return {
    key: 'earlierTimes',
    cause: 'times',
    text: `Let hot water begin at ${timeOfDay(from)}`,
    variant: withSetting(variant, 'programme.hotWaterFrom', from),
  };
}

function always(variant: Variant): Proposal {
  return {
    key: 'alwaysHotWater',
    cause: 'times',
    text: 'Allow hot water at all times',
    variant: withSetting(variant, 'programme.hotWater', 'always'),
  };
}

function longestOf(path: FieldPath): number {
  const field = fieldAt(path);
  return field.kind === 'number' ? toSI(field.most, field.unit) : Number.POSITIVE_INFINITY;
}

const LONGER = 1800; // s
