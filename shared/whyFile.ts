import { cautionsOf } from './cautions.ts';
import type { Change } from './changes.ts';
import type { MinutesByCause } from './minutes.ts';
import type { Result } from './result.ts';
import { fromSI } from './units.ts';

/** What says why a reheat takes so long. */
export interface Why {
  readonly minutes: MinutesByCause;
  readonly changes: readonly Change[];
}

/** Why, as JSON with units in the keys. */
export function whyFile(result: Result, { minutes, changes }: Why): Record<string, unknown> {
  const { whole, ideal, shares, absent, scaleWithCoil, wouldHelp, horizon, counted, runs } =
    minutes;
  return {
    format: 'reheat-bench why',
    version: 1,
    name: result.variant.name,
    wholeMinutes: inMinutes(whole),
    atFullOutputMinutes: inMinutes(ideal),
    causes: shares.map(({ key, time }) => ({ cause: key, costsMinutes: inMinutes(time) })),
    absent,
    scaleCountsWithCoil: scaleWithCoil,
    wouldHelp,
    waitedForMinutes: inMinutes(horizon),
    longestCountedMinutes: inMinutes(counted),
    runs,
    changes: changes.map(({ key, cause, text, recovery, saves, cautions }) => ({
      change: key,
      cause,
      text,
      recoveryMinutes: inMinutes(recovery),
      savesMinutes: inMinutes(saves),
      cautions: cautions.map((caution) => caution.text),
    })),
    cautions: cautionsOf(result.variant, result),
  };
}

function inMinutes(seconds: number | null): number | null {
  return seconds === null ? null : fromSI(seconds, 'minute');
}
