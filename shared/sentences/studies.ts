import { dayPattern } from '../drawPattern.ts';
import { celsius, dash, duration, figure, litres, minutes, settingText } from '../format.ts';
import type { Result } from '../result.ts';
import type { Study, StudyPoint } from '../study.ts';
import { change, difference, ends, nearestTo } from './points.ts';
import { type FigureWords, type Sentence, say } from './sentence.ts';

type StudyOf<K extends Study['kind']> = Extract<Study, { readonly kind: K }>;

/** What widening the differential does. */
export function differentialFinding(study: StudyOf<'differential'>, result: Result): FigureWords {
  const present = result.variant.stat.differential;
  const reached = study.points.filter(({ usableAtCall }) => usableAtCall !== null);
  if (reached.length === 0) {
    return {
      heading: say`At none of ${figure(study.points.length, 0)} differentials does the stat call again within the study.`,
      summary: [],
    };
  }
  const [narrow, wide] = ends(reached);
  const now = nearestTo(study.points, present);
  const day = litres(dayPattern.reduce((sum, { volume }) => sum + volume, 0));
  const summary = [
    say`At ${kelvins(now.value)} the stat calls at ${celsius(result.variant.stat.setPoint - now.value)} with ${litres(now.usableAtCall)} usable left, and reheats in ${minutes(now.reheatAfterCall)}.`,
    say`Calls are counted on the second of two invented days of ${day} each; that water is drawn from the store.`,
  ];
  const calls = (point: StudyPoint) => figure(point.callsPerDay, 0);
  const left = difference(narrow.usableAtCall, wide.usableAtCall);
  if (narrow === wide) {
    return {
      heading: say`Only at ${kelvins(narrow.value)} does the stat call again, with ${litres(narrow.usableAtCall)} usable left.`,
      summary,
    };
  }
  const counted = narrow.callsPerDay !== null && wide.callsPerDay !== null;
  const counts = counted ? `goes from ${calls(narrow)} to ${calls(wide)} calls a day and ` : '';
  return {
    heading: say`From ${kelvins(narrow.value)} to ${kelvins(wide.value)} the stat ${counts}calls with ${change(left, litres, '', '')} ${(left ?? 0) >= 0 ? 'less' : 'more'} usable water left.`,
    summary,
  };
}

/** Hot water first against both at once. */
export function arrangementFinding(study: StudyOf<'arrangement'>): FigureWords {
  const { priority, simultaneous } = study;
  const heading = say`Hot water first takes ${time(priority)} and the rooms fall to ${room(priority)}; both at once takes ${time(simultaneous)} and ${room(simultaneous)}.`;
  const slower = difference(simultaneous.measures.recovery, priority.measures.recovery);
  const warmer = difference(simultaneous.measures.lowestRoom, priority.measures.lowestRoom);
  const summary: Sentence[] = [];
  if (slower !== null && warmer !== null) {
    const words = slower >= 0 ? `costs ${minutes(slower)}` : `saves ${minutes(-slower)}`;
    const rooms = warmer >= 0 ? `${figure(warmer, 2)} K warmer` : `${figure(-warmer, 2)} K cooler`;
    summary.push(
      say`Sharing the boiler ${words} of hot water recovery and keeps the rooms ${rooms} at their lowest.`,
    );
  } else if (priority.measures.recovery !== null) {
    const end = duration(simultaneous.outcome.at);
    summary.push(say`Sharing the boiler, the stat is not satisfied within ${end}.`);
  }
  return { heading, summary };
}

function time({ measures, outcome }: Result): string {
  return measures.recovery === null
    ? `more than ${duration(outcome.at)}`
    : minutes(measures.recovery);
}

function room({ measures }: Result): string {
  return measures.lowestRoom === null ? dash : celsius(measures.lowestRoom);
}

function kelvins(value: number): string {
  return settingText('stat.differential', value);
}
