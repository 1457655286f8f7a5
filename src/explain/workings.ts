import type { DayMeasures, DayRun } from '../../shared/day.ts';
import type { Delivered } from '../../shared/delivery.ts';
import { clock, duration, shown } from '../../shared/format.ts';
import type { Measures, Quantity, Result } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import { boilerWorking } from './boilerWorkings.ts';
import { type CoilKey, coilWorking } from './coilWorkings.ts';
import { dayWorking } from './dayWorkings.ts';
import { deliveryWorking } from './deliveryWorkings.ts';
import { hygieneWorking } from './hygieneWorkings.ts';
import { measureWorking } from './measureWorkings.ts';
import { momentWorking } from './momentWorkings.ts';
import { coilFrictionWorking, pipeFrictionWorking, pipeLossWorking } from './pipeWorkings.ts';
import { type Reading, readingAt, type Sampled } from './reading.ts';
import { callsAt } from './relations/control.ts';
import { beadSteps, sensorNote } from './sensorSteps.ts';
import { restsWorking } from './storeWorkings.ts';
import { type StoreKey, storeWorking } from './storeKeys.ts';
import { useWorking } from './useWorkings.ts';
import {
  type DayKey,
  type PartKey,
  partKeys,
  type Working,
  type WorkingKey,
  worked,
} from './working.ts';

/** What was found besides the reheat, as far as it has been. */
export interface Beside {
  readonly day?: DayRun | null;
  readonly delivered?: Delivered | null;
  /** The run that the moment belongs to; the reheat where it is left out. */
  readonly sampled?: Sampled;
}

/** How a number of a result came about, at the moment in hand. */
export function workingOf(
  key: WorkingKey,
  result: Result,
  at: Seconds,
  { day = null, delivered = null, sampled = result }: Beside = {},
): Working {
  const name = key.slice(key.indexOf('.') + 1);
  if (key.startsWith('measure.')) return measureWorking(name as keyof Measures, result);
  if (isOfDay(key)) return day === null ? noDay : ofDay(key, day);
  if (key === 'delivery.drawn' || key === 'delivery.firstHour') {
    return deliveryWorking(key, result, delivered);
  }
  const reading = readingAt(sampled, at);
  const when = sampled === result ? `at ${minutesInto(at)}` : `at ${clock(at, day?.shownDays)}`;
  if (isPart(key)) return partWorking(key, result, sampled, reading, when);
  return momentWorking(name as Quantity, sampled, reading, when);
}

function ofDay(key: DayKey, day: DayRun): Working {
  if (key.startsWith('day.')) return dayWorking(key.slice(4) as keyof DayMeasures, day);
  return hygieneWorking(key as Extract<DayKey, `hygiene.${string}`>, day);
}

function partWorking(
  key: PartKey,
  result: Result,
  run: Sampled,
  reading: Reading,
  when: string,
): Working {
  const { stat } = run.variant;
  switch (key) {
    case 'stat.callsAt':
      return {
        title: `the stat calls again at ${shown(stat.setPoint - stat.differential, 'celsius', 1)}`,
        steps: [worked(callsAt, { setPoint: stat.setPoint, differential: stat.differential })],
        note: '',
        further: [
          { label: 'usable at the next call', key: 'measure.usableAtCall' },
          { label: 'how long the stat rests', key: 'stat.rests' },
        ],
      };
    case 'stat.follows':
      return {
        title: `${when} the sensor runs behind the water`,
        steps: beadSteps(run, reading),
        note: sensorNote(run, reading),
        further: [{ label: 'where the stat calls again', key: 'stat.callsAt' }],
      };
    case 'stat.rests':
      return restsWorking(run, result.measures.meanCoilHeat ?? Number.NaN);
    case 'coil.friction':
      return coilFrictionWorking(run, result.measures.coilFlow);
    case 'pipe.friction':
      return pipeFrictionWorking(run, result.measures.coilFlow);
    case 'pipe.loss':
      return pipeLossWorking(run);
    case 'boiler.flowNeeded':
    case 'boiler.condensing':
    case 'boiler.bursts':
      return boilerWorking(key, run, reading, when);
    case 'use.people':
    case 'use.baths':
    case 'use.showers':
    case 'use.others':
      return useWorking(key, run.variant);
    default:
      return key.startsWith('store.')
        ? storeWorking(key as StoreKey, result, run, reading, when)
        : coilWorking(key as CoilKey, run, reading, when);
  }
}

/** Where a day has not been computed yet, or nothing of it is known. */
const noDay: Working = {
  title: 'no day in use has been computed yet',
  steps: [],
  note: 'It comes with the studies beside the bench.',
  further: [],
};

const isPart = (key: WorkingKey): key is PartKey => (partKeys as readonly string[]).includes(key);

const isOfDay = (key: WorkingKey): key is DayKey =>
  key.startsWith('day.') || key.startsWith('hygiene.');

const minutesInto = (at: Seconds): string => duration(at, at % 60 < 0.5 || at % 60 > 59.5 ? 0 : 1);
