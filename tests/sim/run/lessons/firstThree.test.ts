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
  end,
  type Expected,
  half,
  m,
  marked,
  mean,
  minutesApart,
  recovery,
} from '../../../make/lessonMoves.ts';

// runs of up to three days, several to a test, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const expected: readonly Expected[] = [
  [
    'layers',
    'left-alone',
    'layers',
    (before, after) => [
      '12 h 00 min',
      celsius(end(after, 'top')),
      celsius(end(after, 'bottom')),
      celsius(mean(after, 0)), // half of 60 and 10
      '20 and 50',
      '0.06', // 30 of the 50 K that 0.1 m goes through at the start
      shownBoundary(after),
      m(before, 'usableAtStart'),
      litres(end(after, 'usable')),
    ],
  ],
  [
    'layers',
    'heated-below',
    'stays',
    (_before, after) => [
      '10 min 60.0',
      '10.0',
      celsius(between(after, 'coilWater', 600)),
      duration(
        after.trace.time[
          after.trace.of.coilWater.findIndex((T, i) => after.trace.of.top[i] - T < 1)
        ],
      ),
      m(after, 'recovery'),
      '10 min',
    ],
  ],
  [
    'layers',
    'coil-higher',
    'soonerLess',
    (before, after) => [
      duration(recovery(after)),
      duration(recovery(before)),
      minutesApart(recovery(after), recovery(before)),
      m(after, 'coldAtSatisfied'),
      '40',
      m(before, 'coldAtSatisfied'),
      m(before, 'usableAtSatisfied'),
      m(after, 'usableAtSatisfied'),
    ],
  ],
  [
    'coil',
    'larger-boiler',
    'little',
    (before, after) => [
      duration(recovery(after)),
      duration(recovery(before)),
      minutesApart(recovery(after), recovery(before)),
      percent((recovery(before) - recovery(after)) / recovery(before)),
      percent((35 - 24) / 35),
      m(after, 'outputLimitTime'),
      m(before, 'outputLimitTime'),
      m(after, 'meanCoilHeat'),
      m(before, 'meanCoilHeat'),
      quantityText('boilerHeat', between(after, 'boilerHeat', half(after))),
      '35',
    ],
  ],
  [
    'coil',
    'cooler-flow',
    'much',
    (before, after) => [
      duration(recovery(after)),
      duration(recovery(before)),
      minutesApart(recovery(after), recovery(before)),
      percent((recovery(after) - recovery(before)) / recovery(before)),
      '80 70 20 10',
      m(after, 'meanCoilHeat'),
      m(before, 'meanCoilHeat'),
      m(after, 'flowLimitTime'),
    ],
  ],
  [
    'coil',
    'clean-coil',
    'several',
    (before, after) => [
      duration(recovery(after)),
      duration(recovery(before)),
      minutesApart(recovery(after), recovery(before)),
      m(after, 'ruleTime'),
      duration(half(after), 0),
      quantityText('coilHeat', between(after, 'coilHeat', half(after))),
      quantityText('coilHeat', between(before, 'coilHeat', half(after))),
      '24.0',
      m(after, 'outputLimitTime'),
      m(before, 'outputLimitTime'),
    ],
  ],
  [
    'sensor',
    'higher-from-cold',
    'same',
    (before, after) => [
      duration(recovery(after)),
      duration(recovery(before)),
      m(after, 'usableAtSatisfied'),
      m(before, 'usableAtSatisfied'),
    ],
  ],
  [
    'sensor',
    'higher-in-a-draw',
    'laterLess',
    (before, after) => [
      '0.90',
      duration(marked(after, 'hotWaterCalled') - marked(after, 'drawStarted')),
      litres(between(after, 'usable', marked(after, 'hotWaterCalled'))),
      '0.44',
      duration(marked(before, 'hotWaterCalled') - marked(before, 'drawStarted')),
      litres(between(before, 'usable', marked(before, 'hotWaterCalled'))),
      m(before, 'usableAtStart'),
      duration(recovery(after)),
      duration(recovery(before)),
    ],
  ],
  [
    'sensor',
    'below-the-coil',
    'hotter',
    (before, after) => [
      celsius(after.trace.layerTemperature.reduce((most, T) => Math.max(most, T))),
      '60',
      m(before, 'hottest'),
      '2 h 00 min',
      celsius(end(after, 'sensor')),
    ],
  ],
];

/** Height between 20 and 50 °C at the end, the two levels found by halving between layer centres. */
function shownBoundary({ trace, variant }: Result): string {
  const layers = Array.from(trace.layerTemperature.subarray(-trace.layers));
  const level = (wanted: number) => {
    const low = layers.findLastIndex((T) => T <= wanted);
    return low + (wanted - layers[low]) / (layers[low + 1] - layers[low]);
  };
  return shown(((level(50) - level(20)) / trace.layers) * variant.cylinder.height, 'metre', 2);
}

describe('what the moves on layers, coil and sensor show', () => {
  test.each(expected)(
    '%s, %s: %s, with the numbers of its two runs',
    (lesson, move, option, numbers) => {
      expectMove(lesson, move, option, numbers);
    },
  );
});
