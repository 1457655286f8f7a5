import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, expOf, frac, mi, mo, paren, row, sub } from '../../shared/mathml.ts';
import { exponential } from '../../shared/portableMaths.ts';

/**
 * Temperature at the far end of a pipe in steady flow, °C. Without flow the far end is as warm as
 * its surroundings.
 * @param inlet        °C
 * @param around       air round the pipe, °C
 * @param loss         per metre and kelvin, W/(m K)
 * @param length       m
 * @param heatRate     mass flow × specific heat, W/K
 */
export function pipeEnd(
  inlet: number,
  around: number,
  loss: number,
  length: number,
  heatRate: number,
): number {
  if (heatRate <= 0) return around;
  // source: kaysLondon, stream passing surroundings at one temperature
  return around + (inlet - around) * exponential((-loss * length) / heatRate);
}

/**
 * Published loss of one metre of copper pipe in still air, W/(m K); sources differ by a factor of
 * two.
 */
export interface PipeLossFigure {
  /** mm */
  readonly outsideMillimetres: number;
  readonly lagged: boolean;
  /** W/(m K) */
  readonly loss: number;
}

export const PIPE_LOSSES: readonly PipeLossFigure[] = [
  // source: pipeTables, bare copper at 38 K difference, W/m divided by 38
  { outsideMillimetres: 15, lagged: false, loss: 32 / 38 },
  { outsideMillimetres: 22, lagged: false, loss: 43 / 38 },
  { outsideMillimetres: 28, lagged: false, loss: 53 / 38 },
  // source: pipeTables, 25 mm of insulation at 55 K difference, W/m divided by 55
  { outsideMillimetres: 22, lagged: true, loss: 8 / 55 },
  { outsideMillimetres: 28, lagged: true, loss: 10 / 55 },
];

export const pipeEndRecord: ClosureRecord = {
  key: 'pipeEnd',
  title: 'What is left of the flow temperature at the end of a pipe',
  result: {
    key: 'result',
    symbol: sub('T', 'end'),
    name: 'temperature at the far end',
    unit: '°C',
    digits: 4,
  },
  terms: [
    { key: 'inlet', symbol: sub('T', 'in'), name: 'temperature at the start', unit: '°C' },
    { key: 'around', symbol: sub('T', 'a'), name: 'air round the pipe', unit: '°C' },
    { key: 'loss', symbol: mi('u'), name: 'loss of the pipe', unit: 'W/(m K)' },
    { key: 'length', symbol: mi('L'), name: 'length', unit: 'm' },
    {
      key: 'mc',
      symbol: row(mi('ṁ'), mi('c')),
      name: 'flow × specific heat',
      unit: 'W/K',
      digits: 4,
    },
  ],
  formula: equals(
    '{result}',
    '{around}',
    mo('+'),
    paren('{inlet}', mo('−'), '{around}'),
    mo('·'),
    expOf(mo('−'), frac(row('{loss}', mo('·'), '{length}'), '{mc}')),
  ),
  sentence: 'A long, bare or slow pipe hands the coil cooler water than the boiler sent.',
  source: 'kaysLondon',
  where: 'stream past surroundings at one temperature; from memory',
  range: 'steady flow; figures for the loss of a pipe differ by a factor of two',
  outside: 'without flow the far end is as warm as the air',
  changes: 'Lagging, a shorter run, more flow.',
  example: {
    given: { inlet: 80, around: 20, loss: 1, length: 20, mc: 1000 },
    gives: 78.8119,
    digits: 4,
    note: 'Worked by hand: 20 + 60 × exp(−0.02), and exp(−0.02) = 0.9801987.',
  },
  compute: ({ inlet, around, loss, length, mc }) => pipeEnd(inlet, around, loss, length, mc),
};
