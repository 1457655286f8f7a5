import { columnsOf } from './columns.ts';
import type { Trace } from './result.ts';

/** The traces as comma-separated text: units in the headers, full precision, empty where no value. */
export function traceCsv(trace: Trace): string {
  const columns = columnsOf(trace);
  const lines = [columns.map(({ key }) => key).join(',')];
  for (let sample = 0; sample < trace.samples; sample += 1) {
    lines.push(columns.map(({ at }) => at(sample) ?? '').join(','));
  }
  return `${lines.join('\n')}\n`;
}
