import { celsius, duration, percent, quantityText, settingText, shown } from '../format.ts';
import type { Result } from '../result.ts';
import { adjustable, type Answer, type Lesson, live, type Passage, tell } from './lesson.ts';
import { meanAt, readAt, readLast, times } from './readings.ts';

export const standingLoss: Lesson = {
  key: 'standing-loss',
  title: 'Standing loss',
  aim: 'A store loses heat all day through its insulation, in proportion to how much warmer it is than the air around it.',
  description:
    'Invented: 210\u00a0l, all of it at 60\u00a0°C, a declared loss of 1.8\u00a0kWh in 24\u00a0h; one day, nothing drawn, no heating, a wide differential so that it is left to cool.',
  setUp: [
    ['heating.arrangement', 'hotWaterOnly'],
    ['start.hotShare', 100],
    ['stat.differential', 10],
    ['run.duration', 24],
  ],
  text,
  moves: [
    {
      key: 'colder-place',
      question:
        'The cylinder stands in a cold room: the air around it is at 5\u00a0°C in place of 20\u00a0°C. How much more does it lose?',
      options: [
        { key: 'none', text: 'No more: the insulation is the same' },
        { key: 'quarter', text: 'A quarter more: 15 of the 60 degrees' },
        { key: 'more', text: 'Clearly more than a quarter' },
      ],
      sets: [['cylinder.surroundings', 5]],
      answer: colderPlace,
    },
    {
      key: 'twice-the-foam',
      question:
        'In place of a declared figure, take factory foam of 50\u00a0mm, and then twice as much, 100\u00a0mm. How much less does it lose?',
      options: [
        { key: 'half', text: 'About half' },
        { key: 'third', text: 'About a third less' },
        { key: 'hardly', text: 'Hardly less' },
      ],
      from: [['cylinder.lossFrom', 'insulation']],
      sets: [['cylinder.insulationThickness', 100]],
      answer: twiceTheFoam,
    },
    {
      key: 'one-hour-a-day',
      question:
        'An older cylinder, losing 3.5\u00a0kWh in 24\u00a0h, stands for two days. Hot water is allowed for one hour in the morning in place of always. What does it lose?',
      options: [
        { key: 'more', text: 'More: heating up again costs more than keeping warm' },
        { key: 'little', text: 'A little less' },
        { key: 'half', text: 'About half, being off for most of the day' },
      ],
      from: [
        ['cylinder.standingLoss', 3.5],
        ['stat.differential', 6],
        ['programme.startsAt', 7],
        ['run.duration', 48],
      ],
      sets: [
        ['programme.hotWater', 'timed'],
        ['programme.hotWaterAgainFor', 0],
      ],
      answer: oneHourADay,
    },
  ],
  closing:
    'Insulation, a warmer place and lagged pipes lower the loss. Storing cooler would too, and is not the way: below 60\u00a0°C Legionella is not reliably killed.',
};

function text(result: Result): readonly Passage[] {
  const { outcome, variant, measures } = result;
  const { cylinder } = variant;
  const declared =
    cylinder.lossFrom === 'declared'
      ? tell`The cylinder is declared to lose ${adjustable('cylinder.standingLoss')} when it stands ${settingText('cylinder.declaredAt', cylinder.declaredAt)} above the air. Here it stands in air of ${adjustable('cylinder.surroundings')} all day.`
      : tell`Its loss follows from ${adjustable('cylinder.insulationThickness')} of ${settingText('cylinder.insulation', cylinder.insulation)}. Here it stands in air of ${adjustable('cylinder.surroundings')} all day.`;
  const calls = measures.hotWaterCalls;
  const made =
    calls === 0
      ? tell`Nothing makes it up: the stat does not call.`
      : tell`The stat calls ${times(calls)} to make it up, and the burner takes ${live(result, 'fuel')} of fuel.`;
  return [
    declared,
    tell`It loses ${shown(readAt(result, 'standingLoss', 0), 'watt', 1)} at first and ${shown(readLast(result, 'standingLoss'), 'watt', 1)} at the end: ${lost(result)} in ${duration(outcome.at)}. The store goes from ${celsius(meanAt(result, 0))} to ${celsius(meanAt(result, outcome.at))} on average.`,
    made,
  ];
}

function colderPlace(before: Result, after: Result): Answer {
  const more = lostShare(before, after) - 1;
  const option = more < HARDLY ? 'none' : more > CLEARLY ? 'more' : 'quarter';
  const apart = ({ variant }: Result) =>
    shown(variant.start.hotTemperature - variant.cylinder.surroundings, 'kelvin', 0);
  return {
    option,
    passages: [
      tell`It loses ${lost(after)} in ${duration(after.outcome.at)} where it lost ${lost(before)}: ${changed(more)}.`,
      tell`What counts is the difference between store and air, not the degrees of the store: at the start that is ${apart(after)} in place of ${apart(before)}. As the store cools the difference shrinks, and the loss with it.`,
    ],
    look: {
      at: after.outcome.at,
      passage: tell`Look at the curve at the end: the top is at ${quantityText('top', readLast(after, 'top'))} and the bottom at ${quantityText('bottom', readLast(after, 'bottom'))}. What cools at the wall sinks, so the bottom cools first.`,
    },
  };
}

function twiceTheFoam(before: Result, after: Result): Answer {
  const less = 1 - lostShare(before, after);
  const option = less >= ABOUT_HALF ? 'half' : less >= A_SIXTH ? 'third' : 'hardly';
  return {
    option,
    passages: [
      tell`It loses ${lost(after)} in ${duration(after.outcome.at)} where it lost ${lost(before)}: ${changed(-less)}.`,
      tell`Twice the foam conducts half as much, but foam is not all: by the table this goes by, part of the loss stays however thick it is, as it does where pipes and fittings pass through.`,
    ],
    look: {
      at: after.outcome.at,
      passage: tell`Look at the drawing at the end: the store is at ${celsius(meanAt(after, after.outcome.at))} on average where it was ${celsius(meanAt(before, before.outcome.at))}.`,
    },
  };
}

function oneHourADay(before: Result, after: Result): Answer {
  const share = lostShare(before, after);
  const option = share > 1 ? 'more' : share > A_LITTLE ? 'little' : 'half';
  return {
    option,
    passages: [
      tell`In ${duration(after.outcome.at)} the store loses ${lost(after)} where it lost ${lost(before)}: ${changed(share - 1)}. The stat is satisfied ${times(satisfied(after))} in place of ${times(satisfied(before))}, and the store ends at ${celsius(meanAt(after, after.outcome.at))} on average in place of ${celsius(meanAt(before, before.outcome.at))}.`,
      tell`Heating up puts back what was lost and no more. A store that is off cools, and a cooler store loses less; but a day is short for it, so the difference is small. It is also cooler when somebody wants hot water.`,
    ],
    look: {
      at: lowest(after),
      passage: tell`Look at the sensor in the curve: it sinks to ${quantityText('sensor', readAt(after, 'sensor', lowest(after)))} before the hour begins, lower than the stat alone would let it.`,
    },
  };
}

/** Lost by the cylinder over the run, as text. */
const lost = ({ balance }: Result): string => shown(balance.lostByCylinder, 'kilowattHour', 2);

function lostShare(before: Result, after: Result): number {
  return after.balance.lostByCylinder / before.balance.lostByCylinder;
}

/** A part more or less, in words. */
function changed(more: number): string {
  if (Math.abs(more) < 0.005) return 'no more and no less';
  return `${percent(Math.abs(more))} ${more > 0 ? 'more' : 'less'}`;
}

const satisfied = ({ marks }: Result): number =>
  marks.filter(({ kind }) => kind === 'statSatisfied').length;

/** When the sensor reads lowest, s. */
function lowest({ trace }: Result): number {
  const least = trace.of.sensor.reduce((low, T) => Math.min(low, T));
  return trace.time[trace.of.sensor.indexOf(least)];
}

const HARDLY = 0.05; // of the loss
const CLEARLY = 0.3; // a quarter and a little
const ABOUT_HALF = 5 / 12; // half-way between a third and a half
const A_SIXTH = 1 / 6; // half-way between nothing and a third
const A_LITTLE = 0.75; // of the loss: half-way between all and a half
