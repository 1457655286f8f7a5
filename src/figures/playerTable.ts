import type { ArrangementThrow } from '../../shared/arrangementThrow.ts';
import { type Arrangement, arrangementOf } from '../../shared/arrangements.ts';
import { figure } from '../../shared/format.ts';
import { type Quantity, quantities, type Result } from '../../shared/result.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import { paceAt, paceWords } from '../../shared/pace.ts';
import { fromSI, type Seconds, units } from '../../shared/units.ts';
import { evenPicks, type TableOf } from '../charts/table.ts';

const columns: readonly Quantity[] = [
  'air',
  'radiator',
  'boilerHeat',
  'coilHeat',
  'radiatorHeat',
  'top',
  'sensor',
  'bottom',
];

/** The player as rows of text: at most 24 whole minutes so far, every throw, and the moment. @param own  arrangement of the variant */
export function playerTable(
  result: Result,
  throws: readonly ArrangementThrow[],
  at: Seconds,
  own: Arrangement,
): TableOf {
  const { trace } = result;
  const minutes = evenPicks(Math.floor(at / 60) + 1, 24).map((minute) => minute * 60);
  const thrown = throws.filter((one) => one.at <= at);
  const times = [...new Set([...minutes, ...thrown.map((one) => one.at), at])].sort(
    (one, other) => one - other,
  );
  const unitOf = (key: Quantity) => units[quantities[key].unit].symbol;
  return {
    columns: [
      'min',
      ...columns.map((key) => `${quantities[key].label}, ${unitOf(key)}`),
      'what sets the pace',
      'switch',
    ],
    rows: times.map((time) => [
      figure(time / 60, time % 60 === 0 ? 0 : 1),
      ...columns.map((key) => {
        const { unit, digits } = quantities[key];
        return figure(fromSI(valueAt(trace.time, trace.of[key], time), unit), digits);
      }),
      paceWords(paceAt(result, time)),
      arrangementOf(thrown.findLast((one) => one.at <= time)?.arrangement ?? own).label,
    ]),
  };
}
