import { celsius, duration, litres, metres, settingText } from '../format.ts';
import type { Result } from '../result.ts';
import { adjustable, type Answer, type Lesson, live, type Passage, tell } from './lesson.ts';
import { boundaryAt, heightAt, meanAt, readAt, readLast, soonerOrLater, TOLD } from './readings.ts';

export const layers: Lesson = {
  key: 'layers',
  title: 'Layers, and why they stay',
  aim: 'Hot water lies on cold and stays there: what is heated or drawn moves it, time hardly does.',
  description:
    'Invented: 210\u00a0l, the upper half at 60\u00a0°C and the lower at 10\u00a0°C, no heating.',
  setUp: [
    ['heating.arrangement', 'hotWaterOnly'],
    ['start.hotShare', 50],
    ['stat.sensorHeight', 1.1],
  ],
  text,
  moves: [
    {
      key: 'left-alone',
      question:
        'Nothing is heated and nothing drawn. What does the store look like after 12 hours?',
      options: [
        { key: 'mixed', text: 'Hot and cold have mixed: it is lukewarm all through' },
        { key: 'layers', text: 'The top is still hot and the bottom still cold' },
        { key: 'lost', text: 'The heat has gone: it is near the temperature of the air' },
      ],
      sets: [['run.duration', 12]],
      answer: leftAlone,
    },
    {
      key: 'heated-below',
      question:
        'The sensor is moved down into the cold half, so the stat calls and the coil at the base heats. What does the top do in the first ten minutes?',
      options: [
        { key: 'hotter', text: 'It gets hotter at once, for heat rises to it' },
        { key: 'stays', text: 'It stays as it is' },
        { key: 'cooler', text: 'It gets cooler, for the rising water stirs cold into it' },
      ],
      sets: [['stat.sensorHeight', 0.44]],
      answer: heatedBelow,
    },
    {
      key: 'coil-higher',
      question:
        'From cold, the same coil is mounted 0.32\u00a0m higher. How does the reheat go, and what is in the store when the stat is satisfied?',
      options: [
        { key: 'soonerLess', text: 'Sooner, with less hot water' },
        { key: 'soonerSame', text: 'Sooner, with as much hot water' },
        { key: 'later', text: 'Not sooner: the heat has to reach the bottom from higher up' },
      ],
      from: [
        ['start.hotShare', 0],
        ['stat.sensorHeight', 0.76],
      ],
      sets: [
        ['coil.bottom', 0.4],
        ['coil.top', 0.8],
      ],
      answer: coilHigher,
    },
  ],
  closing:
    'A coil heats what lies above its lowest turn, as one body; what lies below stays cold. That is why a low coil serves more of the store, and why the bottom is the place to watch for Legionella.',
};

function text(result: Result): readonly Passage[] {
  const { measures, outcome, variant } = result;
  const hot = settingText('start.hotTemperature', variant.start.hotTemperature);
  const cold = settingText('draw.incomingCold', variant.draw.incomingCold);
  const { hotShare } = variant.start;
  const lie =
    hotShare === 0
      ? `: all of it is at ${cold}`
      : hotShare === 1
        ? `: all of it is at ${hot}`
        : `, at ${hot}, and lies on the rest, at ${cold}`;
  const end = duration(outcome.at);
  const ends = `After ${end} the top is at ${celsius(readLast(result, 'top'))} and the bottom at ${celsius(readLast(result, 'bottom'))}.`;
  const what =
    measures.hotWaterCalls === 0
      ? tell`The sensor at ${adjustable('stat.sensorHeight')} does not call, so nothing is heated. ${ends}`
      : measures.recovery === null
        ? tell`The sensor at ${adjustable('stat.sensorHeight')} calls, and is not satisfied within ${end}. ${ends}`
        : tell`The sensor at ${adjustable('stat.sensorHeight')} calls and is satisfied after ${live(result, 'recovery')}. Then ${live(result, 'coldAtSatisfied')} are still below 40\u00a0°C, and the bottom is at ${live(result, 'bottomAtSatisfied')}.`;
  return [
    tell`At the start ${adjustable('start.hotShare')} of the store is hot${lie}. Hot water is lighter than cold, so it stays on top: nothing stirs the two but what is heated or drawn.`,
    what,
    tell`Drawn and mixed to 40\u00a0°C such a store gives ${live(result, 'usableAtStart')} at the start and ${litres(readLast(result, 'usable'))} at the end.`,
  ];
}

function leftAlone(before: Result, after: Result): Answer {
  const end = after.outcome.at;
  const [top, bottom] = [readLast(after, 'top'), readLast(after, 'bottom')];
  const { surroundings } = after.variant.cylinder;
  const mean = meanAt(after, 0);
  const isLost = top - surroundings < (readAt(after, 'top', 0) - surroundings) / 2;
  const option = isLost ? 'lost' : top - bottom < ALIKE ? 'mixed' : 'layers';
  return {
    option,
    passages: [
      tell`After ${duration(end)} the top is at ${celsius(top)} and the bottom at ${celsius(bottom)}; stirred together at the start all of it would have been at ${celsius(mean)}.`,
      tell`Only conduction crosses the boundary, through water and wall. What lies between 20\u00a0°C and 50\u00a0°C has grown from ${metres(boundaryAt(after, 0))} to ${metres(boundaryAt(after, end))}, and the usable litres have gone from ${live(before, 'usableAtStart', 'before')} to ${litres(readLast(after, 'usable'))}.`,
    ],
    look: {
      at: end,
      passage: tell`Look at the drawing at the end: the colours still lie in the same order, only the boundary is wider.`,
    },
  };
}

function heatedBelow(_before: Result, after: Result): Answer {
  const at = TEN_MINUTES;
  const [from, to] = [readAt(after, 'top', 0), readAt(after, 'top', at)];
  const change = to - from;
  const option = Math.abs(change) < TOP_STAYS ? 'stays' : change > 0 ? 'hotter' : 'cooler';
  const met = metAt(after);
  const then =
    met === null
      ? 'Within this run it does not come up to the top.'
      : `After ${duration(met)} it has caught up with the top, and from then on the store warms as one.`;
  return {
    option,
    passages: [
      tell`In ${duration(at, 0)} the top ${fromTo(from, to)}, while the water around the coil ${fromTo(heightAt(after, after.variant.coil.bottom, 0), readAt(after, 'coilWater', at))}.`,
      tell`What the coil warms rises only until it meets water as warm as itself, and stirs everything on its way. So the cold half warms as one body under the hot half. ${then} The stat is satisfied after ${live(after, 'recovery', 'after')}.`,
    ],
    look: {
      at,
      passage: tell`Look at the drawing at ${duration(at, 0)}: one colour from the coil up to the boundary, and the hot half untouched above it.`,
    },
  };
}

function coilHigher(before: Result, after: Result): Answer {
  const [slow, quick] = [before.measures.recovery, after.measures.recovery];
  const [much, less] = [before.measures.usableAtSatisfied, after.measures.usableAtSatisfied];
  const isSooner = quick !== null && (slow === null || slow - quick >= TOLD);
  const isLess = much === null || less === null || less < LESS * much;
  return {
    option: isSooner ? (isLess ? 'soonerLess' : 'soonerSame') : 'later',
    passages: [
      tell`From cold the stat is satisfied after ${live(after, 'recovery', 'after')} where it took ${live(before, 'recovery', 'before')}: ${soonerOrLater(slow, quick)}.`,
      tell`There is less to heat, for the water under the coil is left out: ${live(after, 'coldAtSatisfied', 'after')} stay below 40\u00a0°C in place of ${live(before, 'coldAtSatisfied', 'before')}. The usable litres at the tap go from ${live(before, 'usableAtSatisfied', 'before')} to ${live(after, 'usableAtSatisfied', 'after')}.`,
    ],
    look: {
      at: quick ?? after.outcome.at,
      passage: tell`Look at the water below the coil in the drawing, and at the line of the bottom in the curve: neither takes part.`,
    },
  };
}

/** `stays at 60.0 °C`, or `goes from 10.0 °C to 40.8 °C`. */
function fromTo(from: number, to: number): string {
  const [was, is] = [celsius(from), celsius(to)];
  return was === is ? `stays at ${is}` : `goes from ${was} to ${is}`;
}

/** When the water around the coil first comes within 1 K of the top. */
function metAt({ trace }: Result): number | null {
  const sample = trace.of.coilWater.findIndex((T, i) => trace.of.top[i] - T < MET);
  return sample < 0 ? null : trace.time[sample];
}

const TEN_MINUTES = 600; // s
const ALIKE = 10; // K between top and bottom: less would feel the same at the tap
const TOP_STAYS = 1; // K, what standing loss and rounding may do in ten minutes
const MET = 1; // K
const LESS = 0.95; // of the usable litres: a twentieth is noticed
