import type { Seconds, Share } from './units.ts';
import type { Stat } from './variant.ts';

/** How a fixing delays a sensor and how far it draws it towards the air. */
export interface Mounting {
  readonly lag: Seconds;
  /** Part of the way from the water to the air around at which it settles. */
  readonly airShare: Share;
}

/** The mounting of a stat: as typed, or the usual one of its fixing. */
export function mountingOf({ mounting, lag, airShare }: Stat): Mounting {
  return mounting === 'asTyped' ? { lag, airShare } : mountings[mounting];
}

// engineering guesses, no source: no published value for domestic cylinders was found
export const mountings: Readonly<Record<Exclude<Stat['mounting'], 'asTyped'>, Mounting>> = {
  wetPocket: { lag: 30, airShare: 0 }, // 20 to 40 s
  dryPocket: { lag: 120, airShare: 0 }, // 60 to 180 s
  strappedLagged: { lag: 120, airShare: 0.035 }, // 60 to 180 s, 0.02 to 0.05
  strappedBare: { lag: 120, airShare: 0.125 }, // 0.1 to 0.15
};
