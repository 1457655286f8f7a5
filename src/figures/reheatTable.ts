import { figure } from '../../shared/format.ts';
import { paceAt, paceWords } from '../../shared/pace.ts';
import { type Quantity, quantities, type Result } from '../../shared/result.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import { fromSI, type Seconds, units } from '../../shared/units.ts';
import type { TableOf } from '../charts/table.ts';

const columns: readonly Quantity[] = [
  'top',
  'sensor',
  'bottom',
  'coilInlet',
  'coilOutlet',
  'boilerHeat',
  'coilHeat',
];

/**
 * The reheat curve as rows of text, at most 24 of them at even minutes and one for the recovery.
 * @param end  end of the time axis, s
 */
export function reheatTable(result: Result, end: Seconds): TableOf {
  const { trace, measures } = result;
  const last = Math.min(end, result.outcome.at);
  const step = [1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480].find((each) => last / each / 60 <= 23);
  const every = (step ?? 1440) * 60;
  const even = Array.from({ length: Math.floor(last / every) + 1 }, (_, row) => row * every);
  const { recovery } = measures;
  const isExtra = recovery !== null && recovery <= last && !even.includes(recovery);
  const times = (isExtra ? [...even, recovery] : even).sort((one, other) => one - other);
  return {
    columns: [
      'min',
      ...columns.map((key) => `${quantities[key].label}, ${units[quantities[key].unit].symbol}`),
      'what sets the pace',
    ],
    rows: times.map((at) => [
      figure(at / 60, at % 60 === 0 ? 0 : 1),
      ...columns.map((key) => {
        const { unit, digits } = quantities[key];
        return figure(fromSI(valueAt(trace.time, trace.of[key], at), unit), digits);
      }),
      paceWords(paceAt(result, at)),
    ]),
  };
}
