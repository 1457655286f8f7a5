import { duration, kilowatts, percent, quantityText, settingText, shown } from '../format.ts';
import type { Result } from '../result.ts';
import { adjustable, type Answer, type Lesson, live, type Passage, tell } from './lesson.ts';
import { readAt, soonerOrLater, TOLD } from './readings.ts';

export const coil: Lesson = {
  key: 'coil',
  title: 'What a coil can give',
  aim: 'A boiler gives what the coil can pass on, and a coil passes the less the warmer the store is.',
  description:
    'Invented: 210\u00a0l from cold, 24\u00a0kW, 1\u00a0mm of scale on an ordinary coil, no heating.',
  setUp: [
    ['heating.arrangement', 'hotWaterOnly'],
    ['coil.scaleThickness', 1],
  ],
  text,
  moves: [
    {
      key: 'larger-boiler',
      question:
        'A boiler of 35\u00a0kW takes the place of the one of 24\u00a0kW. How much sooner is it hot?',
      options: [
        { key: 'inProportion', text: 'By about a third, as its output says' },
        { key: 'little', text: 'By a little' },
        { key: 'none', text: 'Not at all' },
      ],
      sets: [['boiler.output', 35]],
      answer: largerBoiler,
    },
    {
      key: 'cooler-flow',
      question:
        'The flow target for hot water is lowered from 80\u00a0°C to 70\u00a0°C. What becomes of the reheat?',
      options: [
        { key: 'none', text: 'It takes as long: the boiler is as strong as before' },
        { key: 'tenth', text: 'It takes about a tenth longer: 10 of 80 are missing' },
        { key: 'much', text: 'It takes much longer than that' },
      ],
      sets: [['boiler.hotWaterFlow', 70]],
      answer: coolerFlow,
    },
    {
      key: 'clean-coil',
      question: 'The coil is descaled: 1\u00a0mm of lime is gone. How much sooner is it hot?',
      options: [
        { key: 'hardly', text: 'Hardly: a millimetre is thin' },
        { key: 'several', text: 'By several minutes' },
        { key: 'full', text: 'As soon as if the boiler gave its full output all the time' },
      ],
      sets: [['coil.scaleThickness', 0]],
      answer: cleanCoil,
    },
  ],
  closing:
    'First find out who sets the pace. While the boiler is at full output, only more output helps; once its flow is at the limit, only the coil, its cleanness, the flow or the limit does.',
};

function text(result: Result): readonly Passage[] {
  const { measures, outcome, variant } = result;
  const setPoint = settingText('stat.setPoint', variant.stat.setPoint);
  const given = tell`The boiler gives up to ${adjustable('boiler.output')} and takes ${adjustable('boiler.hotWaterFlow')} as the limit of its flow. The scale on the coil is ${adjustable('coil.scaleThickness')} thick.`;
  if (measures.meanCoilHeat === null || measures.peakCoilHeat === null) {
    return [given, tell`No heat passes the coil during this run.`];
  }
  const idle = measures.minimumTime + measures.restingTime;
  const atLeast =
    idle < A_MINUTE ? '' : ` For ${duration(idle)} the burner is at its least output, or rests.`;
  const held = tell`For ${live(result, 'outputLimitTime')} of it the boiler gives all it can; for ${live(result, 'flowLimitTime')} its flow is at its limit, and the coil sets the pace.${atLeast}`;
  const rule =
    measures.ruleTime === null
      ? []
      : [
          tell`The trade’s formula, all this heat at full boiler output, would say ${live(result, 'ruleTime')}.`,
        ];
  return [
    given,
    measures.recovery === null
      ? tell`Within ${duration(outcome.at)} the sensor does not reach ${setPoint}.`
      : tell`From cold to ${setPoint} at the sensor takes ${live(result, 'recovery')}.`,
    held,
    tell`The coil passes ${live(result, 'peakCoilHeat')} at its best and ${live(result, 'meanCoilHeat')} on average: what drives the heat through it is how much hotter the flow is than the water around it, and that shrinks as the store warms.`,
    ...rule,
  ];
}

function largerBoiler(before: Result, after: Result): Answer {
  const saved = savedShare(before, after);
  const byOutput = 1 - before.variant.boiler.output / after.variant.boiler.output;
  const option =
    saved < SOME ? 'none' : saved > IN_PROPORTION * byOutput ? 'inProportion' : 'little';
  return {
    option,
    passages: [
      tell`It is hot after ${live(after, 'recovery', 'after')} where it took ${live(before, 'recovery', 'before')}: ${soonerOrLater(before.measures.recovery, after.measures.recovery)}${Number.isFinite(saved) ? `, ${percent(Math.abs(saved))} of the time` : ''}. Its output alone would promise ${percent(byOutput)}.`,
      tell`The larger boiler is at full output for ${live(after, 'outputLimitTime', 'after')} only, the smaller one for ${live(before, 'outputLimitTime', 'before')}. The rest of the time the flow stands at its limit and the coil takes what it can: ${live(after, 'meanCoilHeat', 'after')} on average, in place of ${live(before, 'meanCoilHeat', 'before')}.`,
    ],
    look: {
      at: middle(after),
      passage: tell`Look at the power under the curve: half-way the boiler gives ${quantityText('boilerHeat', readAt(after, 'boilerHeat', middle(after)))} of its ${settingText('boiler.output', after.variant.boiler.output)}.`,
    },
  };
}

function coolerFlow(before: Result, after: Result): Answer {
  const longer = -savedShare(before, after);
  const option = longer < SOME ? 'none' : longer < A_TENTH_OR_SO ? 'tenth' : 'much';
  const drive = ({ boiler, stat }: Result['variant']) =>
    shown(boiler.hotWaterFlow - stat.setPoint, 'kelvin', 0);
  const share = Number.isFinite(longer)
    ? `, ${percent(Math.abs(longer))} ${longer < 0 ? 'less' : 'more'}`
    : '';
  return {
    option,
    passages: [
      tell`It is hot after ${live(after, 'recovery', 'after')} where it took ${live(before, 'recovery', 'before')}: ${soonerOrLater(before.measures.recovery, after.measures.recovery)}${share}.`,
      tell`It is not the flow of ${target(before)} or ${target(after)} that drives the heat, but its difference to the water around the coil. When the store nears its set-point that was ${drive(before.variant)} and is now ${drive(after.variant)}. The coil passes ${live(after, 'meanCoilHeat', 'after')} on average in place of ${live(before, 'meanCoilHeat', 'before')}.`,
    ],
    look: {
      at: middle(after),
      passage: tell`Look at the flow in the curve: it lies flat at its limit for most of the reheat, ${live(after, 'flowLimitTime', 'after')} of it, and the sensor creeps up towards it.`,
    },
  };
}

function cleanCoil(before: Result, after: Result): Answer {
  const { recovery, ruleTime } = after.measures;
  const saved = (before.measures.recovery ?? Number.NaN) - (recovery ?? Number.NaN);
  const isFull = recovery !== null && ruleTime !== null && recovery - ruleTime < A_MINUTE;
  const option = isFull ? 'full' : saved > SEVERAL ? 'several' : 'hardly';
  const at = middle(after);
  return {
    option,
    passages: [
      tell`It is hot after ${live(after, 'recovery', 'after')} where it took ${live(before, 'recovery', 'before')}: ${soonerOrLater(before.measures.recovery, recovery)}. At full boiler output all the time it would be ${live(after, 'ruleTime', 'after')}.`,
      tell`Lime conducts so little beside copper that a millimetre of it counts. At ${duration(at, 0)} the clean coil passes ${quantityText('coilHeat', readAt(after, 'coilHeat', at))}, the scaled one ${quantityText('coilHeat', readAt(before, 'coilHeat', at))}; full output is ${kilowatts(after.variant.boiler.output)}.`,
    ],
    look: {
      at,
      passage: tell`Look at the strip under the curve: the boiler now keeps its full output for ${live(after, 'outputLimitTime', 'after')}, before for ${live(before, 'outputLimitTime', 'before')}.`,
    },
  };
}

const target = ({ variant }: Result): string =>
  settingText('boiler.hotWaterFlow', variant.boiler.hotWaterFlow);

/** Part of the recovery time that was saved; below 0 where it takes longer, minus infinity where it is no longer reached. */
function savedShare(before: Result, after: Result): number {
  const was = before.measures.recovery;
  const now = after.measures.recovery;
  if (was === null) return now === null ? 0 : 1;
  if (now === null) return Number.NEGATIVE_INFINITY;
  return Math.abs(was - now) < TOLD ? 0 : 1 - now / was;
}

/** Half-way through the reheat, on a whole minute. */
function middle({ measures, outcome }: Result): number {
  return Math.round((measures.recovery ?? outcome.at) / 2 / A_MINUTE) * A_MINUTE;
}

const A_MINUTE = 60; // s
const SEVERAL = 3 * A_MINUTE;
const SOME = 0.01; // of the time: less is not noticed
const IN_PROPORTION = 0.75; // of what the outputs promise
const A_TENTH_OR_SO = 0.2; // 10 of 80 is an eighth; twice that is no longer a tenth
