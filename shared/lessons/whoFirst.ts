import { duration, quantityText, settingText } from '../format.ts';
import type { Quantity, Result } from '../result.ts';
import { adjustable, type Answer, type Lesson, live, type Passage, tell } from './lesson.ts';
import { readAt, soonerOrLater } from './readings.ts';

export const whoFirst: Lesson = {
  key: 'who-goes-first',
  title: 'Who goes first',
  aim: 'One boiler serves cylinder and rooms: what one gets the other does not, and a quick coil makes the wait short.',
  description:
    'Invented: a cold day, −3\u00a0°C, a house that loses 350\u00a0W/K with radiators of 18\u00a0kW; store cold, 24\u00a0kW, hot water first.',
  setUp: [
    ['heating.radiatorOutput', 18],
    ['house.heatLoss', 350],
    ['house.outside', -3],
    ['run.duration', 4],
  ],
  text,
  moves: [
    {
      key: 'both-at-once',
      question:
        'Two zone valves let both run at once in place of hot water first. What becomes of the store and of the rooms?',
      options: [
        { key: 'laterWarmer', text: 'The store is hot later, and the rooms stay warmer' },
        { key: 'sameWarmer', text: 'The store is hot as soon, and the rooms stay warmer' },
        { key: 'laterSame', text: 'The store is hot later, and the rooms are no warmer for it' },
        { key: 'neither', text: 'Neither changes: it is the same boiler' },
      ],
      sets: [['heating.arrangement', 'simultaneous']],
      answer: bothAtOnce,
    },
    {
      key: 'slow-coil',
      question:
        'Hot water first again, with a coil of 5\u00a0m in place of 12\u00a0m. What do the people in the rooms notice?',
      options: [
        { key: 'cooler', text: 'The rooms get cooler than with the larger coil' },
        { key: 'same', text: 'Nothing: the coil is no concern of the rooms' },
        { key: 'warmer', text: 'The rooms stay warmer, for the coil takes less heat' },
      ],
      sets: [
        ['coil.length', 5],
        ['coil.top', 0.3],
      ],
      answer: slowCoil,
    },
    {
      key: 'rooms-first',
      question: 'The rooms go first on such a day. When is the store hot?',
      options: [
        { key: 'same', text: 'About as soon: a warm house needs little' },
        { key: 'later', text: 'Later, but in less than twice the time' },
        { key: 'twice', text: 'After twice the time or more' },
      ],
      sets: [['heating.arrangement', 'heatingFirst']],
      answer: roomsFirst,
    },
  ],
  closing:
    'Hot water first is comfortable where the reheat is short, for a house lives on the warmth of its fabric for that long. Where it is long, mend the coil, the flow or the scale before changing who goes first.',
  isPlayed: true,
};

function text(result: Result): readonly Passage[] {
  const { measures, outcome, variant } = result;
  const who = settingText('heating.arrangement', variant.heating.arrangement);
  const setPoint = settingText('stat.setPoint', variant.stat.setPoint);
  const wanted = wantsHeat(result)
    ? 'cylinder and rooms both want the boiler'
    : 'the rooms do not call';
  const store =
    measures.recovery === null
      ? tell`The store is not at ${setPoint} within ${duration(outcome.at)}.`
      : tell`The store is at ${setPoint} after ${live(result, 'recovery')}.`;
  const start = quantityText('air', readAt(result, 'air', 0));
  const rooms =
    (measures.lowestRoomAt ?? 0) < A_MINUTE
      ? tell`The rooms start at ${start} and do not get colder.`
      : tell`The rooms start at ${start} and are at ${live(result, 'lowestRoom')} at their coldest, after ${live(result, 'lowestRoomAt')}. The air cools first; walls and floors follow slowly, and warm it.`;
  return [
    tell`With ${adjustable('house.outside')} outside and a cold store ${wanted}. When both call: ${who}. The scale on the coil is ${adjustable('coil.scaleThickness')} thick.`,
    store,
    rooms,
  ];
}

/** Whether the rooms have the boiler at some time, or are cold without it. */
function wantsHeat({ phases, measures }: Result): boolean {
  return (measures.coldRoomTime ?? 0) > 0 || phases.some(({ radiatorsRun }) => radiatorsRun);
}

function bothAtOnce(before: Result, after: Result): Answer {
  const isLater = laterBy(before, after) > ABOUT;
  const isWarmer = warmerBy(before, after) > FELT;
  return {
    option: isLater
      ? isWarmer
        ? 'laterWarmer'
        : 'laterSame'
      : isWarmer
        ? 'sameWarmer'
        : 'neither',
    passages: [
      tell`The store is hot after ${live(after, 'recovery', 'after')} where it took ${live(before, 'recovery', 'before')}: ${soonerOrLater(before.measures.recovery, after.measures.recovery)}. The rooms fall to ${live(after, 'lowestRoom', 'after')} in place of ${live(before, 'lowestRoom', 'before')}.`,
      tell`The boiler has no more to give for being asked twice. The flow divides between coil and radiators, and what the radiators take the coil does not get: it passes ${live(after, 'meanCoilHeat', 'after')} on average in place of ${live(before, 'meanCoilHeat', 'before')}.`,
    ],
    look: {
      at: (after.measures.recovery ?? after.outcome.at) / 2,
      passage: tell`Look at the power under the curve half-way: the boiler gives ${quantityText('boilerHeat', halfWay(after, 'boilerHeat'))} and the coil passes ${quantityText('coilHeat', halfWay(after, 'coilHeat'))}; most of what lies between goes to the radiators.`,
    },
  };
}

function slowCoil(before: Result, after: Result): Answer {
  const warmer = warmerBy(before, after);
  return {
    option: Math.abs(warmer) < FELT ? 'same' : warmer < 0 ? 'cooler' : 'warmer',
    passages: [
      tell`The rooms fall to ${live(after, 'lowestRoom', 'after')} in place of ${live(before, 'lowestRoom', 'before')}, for they wait ${live(after, 'recovery', 'after')} in place of ${live(before, 'recovery', 'before')} until the store is hot.`,
      tell`Hot water first gives the coil the whole boiler, whether it can use it or not. The small coil passes ${live(after, 'meanCoilHeat', 'after')} on average, with ${settingText('boiler.output', after.variant.boiler.output)} standing by; the radiators get nothing of the rest.`,
    ],
    look: {
      at: after.measures.recovery ?? after.outcome.at,
      passage: tell`Look at the strip under the curve: the boiler is at its flow limit for ${live(after, 'flowLimitTime', 'after')}, giving less than it could while the rooms cool.`,
    },
  };
}

function roomsFirst(before: Result, after: Result): Answer {
  const [was, now] = [before.measures.recovery, after.measures.recovery];
  const share = (now ?? Number.POSITIVE_INFINITY) / (was ?? Number.POSITIVE_INFINITY);
  const isTwice = share >= 2;
  return {
    option: isTwice ? 'twice' : laterBy(before, after) > ABOUT ? 'later' : 'same',
    passages: [
      tell`The store is hot after ${live(after, 'recovery', 'after')} where it took ${live(before, 'recovery', 'before')}: ${soonerOrLater(was, now)}. The rooms fall to ${live(after, 'lowestRoom', 'after')} in place of ${live(before, 'lowestRoom', 'before')}.`,
      tell`The cylinder gets the boiler only while the room stat is satisfied: for ${duration(served(after))} of that time, in pieces between the calls of the rooms.`,
    ],
    look: {
      at: (now ?? after.outcome.at) / 2,
      passage: tell`Look at the sensor in the curve: it climbs in steps, and rests while the rooms have the boiler.`,
    },
  };
}

/** A quantity half-way through the reheat. */
function halfWay(result: Result, quantity: Quantity): number {
  return readAt(result, quantity, (result.measures.recovery ?? result.outcome.at) / 2);
}

/** Time for which the coil had the boiler until the store was hot, or until the end. */
function served({ phases, measures, outcome }: Result): number {
  const end = measures.recovery ?? outcome.at;
  return phases
    .filter(({ coilRuns, from }) => coilRuns && from < end)
    .reduce((sum, { from, to }) => sum + Math.min(to, end) - from, 0);
}

/** How much later the store is hot, s; infinite where it no longer is. */
function laterBy(before: Result, after: Result): number {
  const [was, now] = [before.measures.recovery, after.measures.recovery];
  if (now === null) return was === null ? 0 : Number.POSITIVE_INFINITY;
  return was === null ? Number.NEGATIVE_INFINITY : now - was;
}

/** How much less far the rooms fall, K. */
function warmerBy(before: Result, after: Result): number {
  return (after.measures.lowestRoom ?? Number.NaN) - (before.measures.lowestRoom ?? Number.NaN);
}

const A_MINUTE = 60; // s
const ABOUT = A_MINUTE; // what is called as soon
const FELT = 0.3; // K of room air: engineering guess, no source
