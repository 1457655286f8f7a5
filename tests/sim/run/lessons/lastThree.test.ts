import { describe, test, vi } from 'vitest';
import {
  celsius,
  duration,
  litres,
  percent,
  quantityText,
  shown,
} from '../../../../shared/format.ts';
import type { Result } from '../../../../shared/result.ts';
import { expectMove } from '../../../support/expectMove.ts';
import {
  between,
  cutIn,
  end,
  type Expected,
  lost,
  m,
  marked,
  mean,
  minutesApart,
  recovery,
  set,
} from '../../../make/lessonMoves.ts';

// runs of up to three days, several to a test, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const expected: readonly Expected[] = [
  [
    'differential',
    'half-of-it',
    'half',
    (before, after) => [
      duration(marked(after, 'hotWaterCalled')),
      duration(marked(before, 'hotWaterCalled')),
      '48 h 00 min',
      String(after.marks.filter(({ kind }) => kind === 'hotWaterCalled').length),
      String(before.marks.filter(({ kind }) => kind === 'hotWaterCalled').length),
      duration(marked(after, 'statSatisfied') - marked(after, 'hotWaterCalled')),
      duration(marked(before, 'statSatisfied') - marked(before, 'hotWaterCalled')),
      lost(after),
      lost(before),
      cutIn(after),
      cutIn(before),
    ],
  ],
  [
    'differential',
    'in-a-draw',
    'same',
    (before, after) => [
      duration(marked(after, 'hotWaterCalled') - marked(after, 'drawStarted')),
      set(before, 'stat.differential'),
      duration(marked(before, 'hotWaterCalled') - marked(before, 'drawStarted')),
      duration(recovery(after)),
      duration(recovery(before)),
      cutIn(before),
      cutIn(after),
      minutesApart(marked(after, 'hotWaterCalled') - 600, marked(before, 'hotWaterCalled') - 600),
    ],
  ],
  [
    'differential',
    'cooled-first',
    'less',
    (before, after) => [
      litres(between(after, 'usable', marked(after, 'drawEnded'))),
      set(before, 'stat.differential'),
      litres(between(before, 'usable', marked(before, 'drawEnded'))),
      duration(marked(after, 'statSatisfied', -1)),
      duration(marked(before, 'statSatisfied', -1)),
      '53',
      cutIn(before),
      cutIn(after),
      duration(marked(after, 'hotWaterCalled')),
      celsius(between(after, 'top', marked(after, 'drawEnded'))),
      celsius(between(before, 'top', marked(before, 'drawEnded'))),
    ],
  ],
  [
    'who-goes-first',
    'both-at-once',
    'laterWarmer',
    (before, after) => [
      duration(recovery(after)),
      duration(recovery(before)),
      minutesApart(recovery(after), recovery(before)),
      shown(
        after.trace.of.air.reduce((low, T) => Math.min(low, T)),
        'celsius',
        2,
      ),
      m(before, 'lowestRoom'),
      m(after, 'meanCoilHeat'),
      m(before, 'meanCoilHeat'),
      quantityText('boilerHeat', between(after, 'boilerHeat', recovery(after) / 2)),
      quantityText('coilHeat', between(after, 'coilHeat', recovery(after) / 2)),
    ],
  ],
  [
    'who-goes-first',
    'slow-coil',
    'cooler',
    (before, after) => [
      m(after, 'lowestRoom'),
      m(before, 'lowestRoom'),
      duration(recovery(after)),
      duration(recovery(before)),
      m(after, 'meanCoilHeat'),
      '24',
      m(after, 'flowLimitTime'),
    ],
  ],
  [
    'who-goes-first',
    'rooms-first',
    'twice',
    (before, after) => [
      duration(recovery(after)),
      duration(recovery(before)),
      minutesApart(recovery(after), recovery(before)),
      m(after, 'lowestRoom'),
      m(before, 'lowestRoom'),
      duration(servedTime(after)),
    ],
  ],
  [
    'standing-loss',
    'colder-place',
    'more',
    (before, after) => [
      lost(after),
      '24 h 00 min',
      lost(before),
      percent(after.balance.lostByCylinder / before.balance.lostByCylinder - 1),
      '55 40',
      celsius(end(after, 'top')),
      celsius(end(after, 'bottom')),
    ],
  ],
  [
    'standing-loss',
    'twice-the-foam',
    'third',
    (before, after) => [
      lost(after),
      '24 h 00 min',
      lost(before),
      percent(1 - after.balance.lostByCylinder / before.balance.lostByCylinder),
      celsius(mean(after, 86_400)),
      celsius(mean(before, 86_400)),
    ],
  ],
  [
    'standing-loss',
    'one-hour-a-day',
    'little',
    (before, after) => [
      '48 h 00 min',
      lost(after),
      lost(before),
      percent(1 - after.balance.lostByCylinder / before.balance.lostByCylinder),
      '3', // twice in place of 3 times
      celsius(mean(after, 2 * 86_400)),
      celsius(mean(before, 2 * 86_400)),
      celsius(after.trace.of.sensor.reduce((low, T) => Math.min(low, T))),
    ],
  ],
];

/** Time with flow through the coil until satisfied, from the moments its valve is named in the phases. */
function servedTime({ phases, measures }: Result): number {
  let sum = 0;
  for (const { from, to, coilRuns } of phases) {
    if (coilRuns) sum += Math.max(0, Math.min(to, measures.recovery ?? 0) - from);
  }
  return sum;
}

describe('what the moves on differential, rooms and standing loss show', () => {
  test.each(expected)(
    '%s, %s: %s, with the numbers of its two runs',
    (lesson, move, option, numbers) => {
      expectMove(lesson, move, option, numbers);
    },
  );
});
