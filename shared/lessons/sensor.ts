import { cutIn } from '../sentences/bench.ts';
import { celsius, duration, litres, metres, settingText } from '../format.ts';
import { lowestCoil } from '../fittedCoils.ts';
import type { Result } from '../result.ts';
import { adjustable, type Answer, type Lesson, live, type Passage, tell } from './lesson.ts';
import { firstAt, readAt, soonerOrLater, TOLD } from './readings.ts';

export const sensor: Lesson = {
  key: 'sensor',
  title: 'Where the sensor sits',
  aim: 'Above the coil the height of the sensor hardly changes the reheat from cold; it decides when the stat calls, and how much is left by then.',
  description:
    'Invented: 210\u00a0l from cold, 24\u00a0kW, a clean coil between 0.08\u00a0m and 0.48\u00a0m, no heating.',
  setUp: [['heating.arrangement', 'hotWaterOnly']],
  text,
  moves: [
    {
      key: 'higher-from-cold',
      question:
        'From cold, the sensor is moved from 0.44\u00a0m up to 0.90\u00a0m. When is the stat satisfied?',
      options: [
        { key: 'sooner', text: 'Sooner: hot water rises, and it is met first up there' },
        { key: 'same', text: 'At about the same time' },
        { key: 'later', text: 'Later: the heat has farther to go' },
      ],
      sets: [['stat.sensorHeight', 0.9]],
      answer: higherFromCold,
    },
    {
      key: 'higher-in-a-draw',
      question:
        'All of the store is hot, and after five minutes 150\u00a0l are drawn. Again the sensor is moved from 0.44\u00a0m to 0.90\u00a0m. When does the stat call, and what is left by then?',
      options: [
        { key: 'soonerMore', text: 'Sooner, with more hot water left' },
        { key: 'same', text: 'At about the same time' },
        { key: 'laterLess', text: 'Later, with less hot water left' },
      ],
      from: [
        ['start.hotShare', 100],
        ['draw.volume', 150],
        ['draw.startsAt', 5],
      ],
      sets: [['stat.sensorHeight', 0.9]],
      answer: higherInADraw,
    },
    {
      key: 'below-the-coil',
      question:
        'From cold, the sensor is moved down to 0.06\u00a0m, below the coil. What happens to the water above?',
      options: [
        { key: 'asSet', text: 'It stops at the set-point, as before' },
        { key: 'hotter', text: 'It gets much hotter than the set-point' },
        { key: 'cooler', text: 'It stays cooler: the stat is satisfied early' },
      ],
      sets: [['stat.sensorHeight', 0.06]],
      answer: belowTheCoil,
    },
  ],
  closing:
    'Low, but above the coil’s lowest turn: such a sensor calls after a few litres and is satisfied only when the store is hot. Much higher it calls late; below the coil it is satisfied late or never, and the top overheats.',
};

function text(result: Result): readonly Passage[] {
  const { measures, outcome, variant } = result;
  const setPoint = settingText('stat.setPoint', variant.stat.setPoint);
  const isBelow = variant.stat.sensorHeight < lowestCoil(variant);
  const reheat =
    measures.recovery === null
      ? tell`Within ${duration(outcome.at)} it does not read ${setPoint}; the hottest water is at ${live(result, 'hottest')} by then.`
      : measures.hotWaterCalls === 0
        ? tell`It does not call: the water there is above ${celsius(cutIn(variant))}.`
        : tell`The stat is satisfied after ${live(result, 'recovery')}. Then the top is at ${live(result, 'topAtSatisfied')} and the bottom at ${live(result, 'bottomAtSatisfied')}, and the store gives ${live(result, 'usableAtSatisfied')} at 40\u00a0°C.`;
  return [
    tell`The stat knows one height only. Its sensor at ${adjustable('stat.sensorHeight')} is ${isBelow ? 'below the coil, where only conduction warms the water' : 'level with the coil or above it, in the water that the coil stirs'}.`,
    reheat,
  ];
}

function higherFromCold(before: Result, after: Result): Answer {
  const [was, now] = [before.measures.recovery, after.measures.recovery];
  const later = (now ?? Number.POSITIVE_INFINITY) - (was ?? Number.POSITIVE_INFINITY);
  const option = later > ABOUT ? 'later' : later < -ABOUT ? 'sooner' : 'same';
  return {
    option,
    passages: [
      tell`It is satisfied after ${live(after, 'recovery', 'after')}; lower down it was ${live(before, 'recovery', 'before')}. That is ${soonerOrLater(was, now)}, with ${live(after, 'usableAtSatisfied', 'after')} usable against ${live(before, 'usableAtSatisfied', 'before')}.`,
      tell`From cold, what the coil warms stirs everything above its lowest turn to one temperature. In that water every height reads the same, so the sensor may sit anywhere in it.`,
    ],
    look: {
      at: (now ?? after.outcome.at) / 2,
      passage: tell`Look at the drawing half-way: one colour from the coil to the top, wherever the green handle stands.`,
    },
  };
}

function higherInADraw(before: Result, after: Result): Answer {
  const [was, now] = [called(before), called(after)];
  const later = (now ?? Number.POSITIVE_INFINITY) - (was ?? Number.POSITIVE_INFINITY);
  const isAlike = (was === null && now === null) || Math.abs(later) < TOLD;
  const option = isAlike ? 'same' : later > 0 ? 'laterLess' : 'soonerMore';
  const left = (run: Result, at: number | null) =>
    at === null ? 'nothing is called for' : `${litres(readAt(run, 'usable', at))} are usable`;
  const drawn = (run: Result, at: number | null) =>
    at === null
      ? 'not within the run'
      : `${duration(Math.max(0, at - run.variant.draw.startsAt))} after the tap was opened`;
  return {
    option,
    passages: [
      tell`At ${height(after)} the stat calls ${drawn(after, now)}, and ${left(after, now)} then; at ${height(before)} it calls ${drawn(before, was)}, and ${left(before, was)}. The whole store gave ${live(before, 'usableAtStart', 'before')}.`,
      tell`Cold water comes in at the base and lifts the boundary. A low sensor meets it early; a high one sits in hot water until the boundary gets there. So the boiler starts late, and the store is back at its set-point after ${live(after, 'recovery', 'after')} in place of ${live(before, 'recovery', 'before')}.`,
    ],
    look: {
      at: now ?? after.outcome.at,
      passage: tell`Look at the drawing at the call: the cold has risen to the sensor, and all that is hot lies above it.`,
    },
  };
}

function belowTheCoil(before: Result, after: Result): Answer {
  const set = after.variant.stat.setPoint;
  const above = after.measures.hottest - set;
  const option = above > MUCH ? 'hotter' : above < -MUCH ? 'cooler' : 'asSet';
  const ends =
    after.measures.recovery === null
      ? `within ${duration(after.outcome.at)} the stat is not satisfied`
      : `the stat is satisfied after ${duration(after.measures.recovery)}`;
  return {
    option,
    passages: [
      tell`The hottest water gets to ${live(after, 'hottest', 'after')} with the stat at ${settingText('stat.setPoint', set)}; with the sensor at the coil it was ${live(before, 'hottest', 'before')}. And ${ends}.`,
      tell`Below the coil nothing stirs, and only conduction warms the water there: at the end the sensor reads ${celsius(readAt(after, 'sensor', after.outcome.at))}, while the water above nears the temperature of the flow. Water so hot scalds.`,
    ],
    look: {
      at: after.outcome.at,
      passage: tell`Look at the sensor in the drawing: it sits in the cooler water under the coil, with the hottest right above it.`,
    },
  };
}

const height = ({ variant }: Result): string => metres(variant.stat.sensorHeight);

/** When the stat first calls, or null. */
const called = (result: Result) => firstAt(result, 'hotWaterCalled');

const ABOUT = 60; // s: what is called about the same time
const MUCH = 5; // K above or below the set-point: overshoot is less
