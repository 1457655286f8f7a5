import { duration, figure, litres, metres, minutes } from '../format.ts';
import { lowestCoil } from '../fittedCoils.ts';
import type { Result } from '../result.ts';
import type { Study, StudyPoint } from '../study.ts';
import { shownTime } from './phases.ts';
import { change, difference, ends, nearestTo } from './points.ts';
import { type FigureWords, type Sentence, say } from './sentence.ts';

/** What moving the sensor does. */
export function placementFinding(
  { points }: Extract<Study, { readonly kind: 'placement' }>,
  { variant }: Result,
): FigureWords {
  const within = duration(variant.run.duration);
  const reached = points.filter(({ recovery }) => recovery !== null);
  const quiet = points.filter((point) => point.recovery === null && !point.callsAtStart);
  const missed = points.filter((point) => point.recovery === null && point.callsAtStart);
  if (reached.length === 0) {
    return {
      heading: say`At none of ${figure(points.length, 0)} heights is the stat satisfied within ${within} of a call.`,
      summary: [],
    };
  }
  const lowest = lowestCoil(variant);
  const above = reached.filter(({ value }) => value >= lowest);
  const below = reached.filter(({ value }) => value < lowest);
  const [low, high] = ends(above.length > 0 ? above : reached);
  const now = nearestTo(points, variant.stat.sensorHeight);
  const summary = [quiet.includes(now) ? quietSentence(quiet) : pointSentence(now, within)];
  if (missed.length > 0 && !missed.includes(now)) summary.push(missedSentence(missed, within));
  else if (below.length > 0 && !below.includes(now)) {
    const [first] = ends(below);
    summary.push(
      say`Below the coil, at ${metres(first.value)}, the stat is satisfied only after ${minutes(first.recovery)}.`,
    );
  } else if (quiet.length > 0 && !quiet.includes(now)) summary.push(quietSentence(quiet));
  return { heading: heading(low, high), summary };
}

function heading(low: StudyPoint, high: StudyPoint): Sentence {
  if (low === high) {
    return say`Only at ${metres(low.value)} is the stat satisfied, after ${minutes(low.recovery)}.`;
  }
  const from = metres(low.value);
  const to = metres(high.value);
  const time = difference(low.recovery, high.recovery);
  const usable = difference(low.usableAtSatisfied, high.usableAtSatisfied);
  if (time !== null && Math.abs(time) < shownTime) {
    return low.usableAtCall === null || high.usableAtCall === null
      ? say`From ${from} up to ${to} the stat is satisfied after the same ${minutes(low.recovery)}.`
      : say`From ${from} up to ${to} the stat takes the same ${minutes(low.recovery)}, but calls with ${litres(high.usableAtCall)} left in place of ${litres(low.usableAtCall)}.`;
  }
  return say`Moving the sensor from ${from} up to ${to} ${change(time, minutes, 'saves', 'costs')} and ${change(usable, litres, 'gives up', 'gains')} of usable water.`;
}

function pointSentence(point: StudyPoint, within: string): Sentence {
  const where = `At ${metres(point.value)}`;
  if (point.recovery === null) return say`${where} the stat is not satisfied within ${within}.`;
  const left =
    point.usableAtCall === null
      ? ''
      : `; when it calls again ${litres(point.usableAtCall)} are left`;
  return say`${where} the stat is satisfied after ${minutes(point.recovery)} with ${litres(point.usableAtSatisfied)} usable at 40 °C${left}.`;
}

function missedSentence(missed: readonly StudyPoint[], within: string): Sentence {
  const [first, last] = ends(missed);
  return first === last
    ? say`At ${metres(first.value)} the stat is not satisfied within ${within}.`
    : say`At ${figure(missed.length, 0)} heights from ${metres(first.value)} to ${metres(last.value)} the stat is not satisfied within ${within}.`;
}

function quietSentence(quiet: readonly StudyPoint[]): Sentence {
  return say`From ${metres(ends(quiet)[0].value)} up the sensor sits in water that is still hot, and the stat does not call.`;
}
