import type { DayRun } from './day.ts';
import { celsius, duration, shown } from './format.ts';
import { isHeatedThrough, SCALDS } from './sentences/hygiene.ts';
import type { SourceKey } from './sources.ts';
import type { Variant } from './variant.ts';

interface DayCautionRow {
  readonly key: string;
  readonly when: (day: DayRun) => boolean;
  readonly text: (day: DayRun) => string;
  readonly source: SourceKey;
}

/** Cautions that only a day of hot water in use can show. */
export const dayCautions: readonly DayCautionRow[] = [
  {
    key: 'notHeatedThrough',
    when: (day) => day.variant.day.pasteurise === 'once' && !isHeatedThrough(day),
    text: ({ hygiene: { coldestTenth } }) => {
      const got =
        coldestTenth.longestHot > 0
          ? `is at 60\u00a0°C for ${duration(coldestTenth.longestHot)} at a stretch, not for an hour`
          : `gets to ${celsius(coldestTenth.most)} and does not reach 60\u00a0°C`;
      return `In the day on the bench the store is not heated through: its coldest tenth ${got}. Do not count such a heating as protection against Legionella.`;
    },
    source: 'hsg274',
  },
  {
    key: 'overheatsInTheDay',
    when: ({ hygiene: { top }, variant }) => top.most > Math.min(80, aimedAt(variant) + 5),
    text: ({ hygiene: { top }, variant }) =>
      `In the day on the bench the top of the store gets to ${celsius(top.most)}, with the stat at ${shown(aimedAt(variant), 'celsius', 0)} at most. ` +
      'Water this far above the set-point scalds, and above 80 °C it may trip the high-limit cut-out; never raise or bypass the cut-out.',
    source: 'waterSafetyG',
  },
  {
    key: 'warmForHours',
    when: ({ hygiene: { coldestTenth } }) => coldestTenth.growthTime >= LONG,
    text: ({ hygiene: { coldestTenth } }) =>
      `In the day on the bench the coldest tenth of the store is between 20\u00a0°C and 45\u00a0°C for ${duration(coldestTenth.growthTime)}: Legionella multiplies there. ` +
      'A store that is 60\u00a0°C at its sensor may be warm, not hot, below.',
    source: 'legionellaRange',
  },
  {
    key: 'scaldsAtTheTap',
    when: ({ measures: { hottestAtTap } }) => (hottestAtTap ?? 0) > SCALDS,
    text: ({ measures: { hottestAtTap } }) =>
      `In the day on the bench water leaves the tap at up to ${celsius(hottestAtTap)}. Above ${shown(SCALDS, 'celsius', 0)} it burns skin in time, at 60\u00a0°C in seconds, a child’s sooner. ` +
      'Fit a thermostatic mixing valve at the outlet; do not store cooler for it.',
    source: 'scaldTimes',
  },
];

/** The highest set-point of the day. */
function aimedAt({ stat, day }: Variant): number {
  return day.pasteurise === 'once' ? Math.max(stat.setPoint, day.pasteuriseTo) : stat.setPoint;
}

const LONG = 2 * 3600; // s; engineering guess, no source: less is the passing of one draw and its reheat
