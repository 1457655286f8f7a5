import { cutIn } from '../sentences/bench.ts';
import { celsius, duration, litres, quantityText, settingText, shown } from '../format.ts';
import type { Result } from '../result.ts';
import { adjustable, type Answer, type Lesson, live, type Passage, tell } from './lesson.ts';
import { firstAt, lastAt, readAt, readLast, soonerOrLater, times } from './readings.ts';

export const differential: Lesson = {
  key: 'differential',
  title: 'The differential',
  aim: 'The differential decides how often a store that stands is reheated; in a draw it hardly matters, unless the store has had time to cool.',
  description:
    'Invented: an older cylinder of 210\u00a0l, all of it at 60\u00a0°C, that loses 3.5\u00a0kWh in 24\u00a0h; two days, nothing drawn, no heating.',
  setUp: [
    ['heating.arrangement', 'hotWaterOnly'],
    ['start.hotShare', 100],
    ['cylinder.standingLoss', 3.5],
    ['run.duration', 48],
  ],
  text,
  moves: [
    {
      key: 'half-of-it',
      question:
        'The differential is halved, from 6\u00a0K to 3\u00a0K, and nothing is drawn. How soon does the stat first call?',
      options: [
        { key: 'half', text: 'After about half the time' },
        { key: 'same', text: 'After about the same time: the loss is the same' },
        { key: 'twice', text: 'After about twice the time' },
      ],
      sets: [['stat.differential', 3]],
      answer: halfOfIt,
    },
    {
      key: 'in-a-draw',
      question:
        'Now 100\u00a0l are drawn from the full store, and the differential is doubled from 6\u00a0K to 12\u00a0K. When does the stat call?',
      options: [
        { key: 'twice', text: 'After about twice as many minutes of drawing' },
        { key: 'same', text: 'Within a minute of when it did' },
        { key: 'never', text: 'Not at all while water is drawn' },
      ],
      from: [
        ['run.duration', 2],
        ['draw.volume', 100],
      ],
      sets: [['stat.differential', 12]],
      answer: inADraw,
    },
    {
      key: 'cooled-first',
      question:
        'The store has cooled to 53\u00a0°C overnight, and after 20 minutes 60\u00a0l are drawn. With 20\u00a0K in place of 6\u00a0K, how much hot water is left when the tap is closed?',
      options: [
        { key: 'less', text: 'Less' },
        { key: 'same', text: 'As much' },
        { key: 'more', text: 'More' },
      ],
      from: [
        ['run.duration', 2],
        ['start.hotTemperature', 53],
        ['draw.volume', 60],
        ['draw.startsAt', 20],
      ],
      sets: [['stat.differential', 20]],
      answer: cooledFirst,
    },
  ],
  closing:
    'Narrow means short reheats and often; wide means long ones and seldom, and a store that stands cooler in between. Usual are 5 to 10\u00a0K (common practice, no source).',
};

function text(result: Result): readonly Passage[] {
  const { measures, outcome, variant } = result;
  const { hotWaterCalls } = measures;
  const first = firstAt(result, 'hotWaterCalled');
  const done = first === null ? null : firstAt(result, 'statSatisfied', first);
  const given = tell`Satisfied at ${settingText('stat.setPoint', variant.stat.setPoint)}, the stat rests until its sensor has fallen by the differential: with ${adjustable('stat.differential')} it calls at ${celsius(cutIn(variant))}. This cylinder is declared to lose ${adjustable('cylinder.standingLoss')} when it stands ${settingText('cylinder.declaredAt', variant.cylinder.declaredAt)} above the air.`;
  if (first === null) {
    return [
      given,
      tell`In ${duration(outcome.at)} it does not call: at the end its sensor reads ${quantityText('sensor', readLast(result, 'sensor'))}.`,
    ];
  }
  const when = first === 0 ? 'at once' : `first after ${duration(first)}`;
  const lasts =
    done === null
      ? `, and the reheat is not over by the end`
      : `; the first reheat takes ${duration(done - first)}`;
  return [
    given,
    tell`In ${duration(outcome.at)} it calls ${times(hotWaterCalls)}, ${when}${lasts}.`,
    ...(measures.usableAtCall === null
      ? []
      : [
          tell`When it calls again after its first reheat, the store still gives ${live(result, 'usableAtCall')} at 40\u00a0°C.`,
        ]),
  ];
}

function halfOfIt(before: Result, after: Result): Answer {
  const [was, now] = [firstAt(before, 'hotWaterCalled'), firstAt(after, 'hotWaterCalled')];
  const share = (now ?? Number.POSITIVE_INFINITY) / (was ?? Number.POSITIVE_INFINITY);
  const option = share < HALF_OR_SO ? 'half' : share > 1 / HALF_OR_SO ? 'twice' : 'same';
  return {
    option,
    passages: [
      tell`The stat first calls after ${toldTime(now)}; with the wider differential it was ${toldTime(was)}. In ${duration(after.outcome.at)} it calls ${times(after.measures.hotWaterCalls)} in place of ${times(before.measures.hotWaterCalls)}.`,
      tell`The store cools at nearly the same pace, so half the fall takes about half the time. Each reheat is shorter: the first takes ${toldTime(lengthOfFirst(after))} in place of ${toldTime(lengthOfFirst(before))}, and each has boiler and pipes to warm first. Kept warmer, the store loses ${lost(after)} in place of ${lost(before)}.`,
    ],
    look: {
      at: now ?? after.outcome.at,
      passage: tell`Look at the sensor in the curve: it sinks to ${celsius(cutIn(after.variant))} and is heated again, while the former run, drawn thin, goes on sinking to ${celsius(cutIn(before.variant))}.`,
    },
  };
}

function inADraw(before: Result, after: Result): Answer {
  const since = (run: Result) => {
    const at = firstAt(run, 'hotWaterCalled');
    return at === null ? null : at - run.variant.draw.startsAt;
  };
  const [was, now] = [since(before), since(after)];
  const closed = firstAt(after, 'drawEnded');
  const isLate = closed !== null && now !== null && now + after.variant.draw.startsAt > closed;
  const isAlike = was !== null && now !== null && Math.abs(now - was) < A_MINUTE;
  const option = isAlike ? 'same' : now === null || isLate ? 'never' : 'twice';
  return {
    option,
    passages: [
      tell`The stat calls ${toldTime(now)} after the tap was opened; with ${width(before)} it was ${toldTime(was)}. The store is at its set-point again after ${live(after, 'recovery', 'after')} in place of ${live(before, 'recovery', 'before')}.`,
      tell`The boundary between hot and cold is thin, so the sensor falls fast: from ${celsius(cutIn(before.variant))} down to ${celsius(cutIn(after.variant))} is a moment, and the call comes ${soonerOrLater(was, now)}. What delays the call in a draw is the height of the sensor, not the differential.`,
    ],
    look: {
      at: (now ?? 0) + after.variant.draw.startsAt,
      passage: tell`Look at the curve of the sensor at the call: it falls so steeply that a few kelvins are no time.`,
    },
  };
}

function cooledFirst(before: Result, after: Result): Answer {
  const [was, now] = [leftAfterDraw(before), leftAfterDraw(after)];
  const option = Math.abs(now - was) < ALIKE * was ? 'same' : now < was ? 'less' : 'more';
  return {
    option,
    passages: [
      tell`When the tap is closed ${litres(now)} are usable; with ${width(before)} it is ${litres(was)}. The store is back at its set-point ${toldTime(lastAt(after, 'statSatisfied'))} after the start in place of ${toldTime(lastAt(before, 'statSatisfied'))}.`,
      tell`At ${settingText('start.hotTemperature', before.variant.start.hotTemperature)} the store is below ${celsius(cutIn(before.variant))}, so the narrow differential calls at once, and the store is hot again before anybody draws. The wide one waits for ${celsius(cutIn(after.variant))} at its sensor: the first call comes after ${toldTime(firstAt(after, 'hotWaterCalled'))}.`,
    ],
    look: {
      at: firstAt(after, 'drawEnded') ?? after.outcome.at,
      passage: tell`Look at the top in the curve when the tap is closed: ${celsius(readAt(after, 'top', firstAt(after, 'drawEnded') ?? after.outcome.at))}, and ${celsius(readAt(before, 'top', firstAt(before, 'drawEnded') ?? before.outcome.at))} with the narrow differential.`,
    },
  };
}

/** Usable litres when the draw ends. */
function leftAfterDraw(result: Result): number {
  return readAt(result, 'usable', firstAt(result, 'drawEnded') ?? result.outcome.at);
}

/** From the first call until satisfied, or null. */
function lengthOfFirst(result: Result): number | null {
  const from = firstAt(result, 'hotWaterCalled');
  const to = from === null ? null : firstAt(result, 'statSatisfied', from);
  return from === null || to === null ? null : to - from;
}

const width = ({ variant }: Result): string =>
  settingText('stat.differential', variant.stat.differential);

const lost = ({ balance }: Result): string => shown(balance.lostByCylinder, 'kilowattHour', 2);

const toldTime = (seconds: number | null): string =>
  seconds === null ? 'a time beyond this run' : duration(seconds);

const A_MINUTE = 60; // s
const HALF_OR_SO = 0.7; // between a half and the whole
const ALIKE = 0.05; // of the usable litres
