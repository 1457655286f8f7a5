import { figure, metres } from '../../shared/format.ts';
import type { Result } from '../../shared/result.ts';
import { profileAt } from '../../shared/sampleAt.ts';
import type { Seconds } from '../../shared/units.ts';
import { evenPicks, type TableOf } from '../charts/table.ts';

/**
 * The field as rows of text: at most 24 even moments against six heights.
 * @param end  end of the time axis, s
 */
export function fieldTable({ trace, variant, outcome }: Result, end: Seconds): TableOf {
  const last = Math.min(end, outcome.at);
  const picks = evenPicks(trace.layers, 6);
  const every = [1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 480].find((each) => last / each / 60 <= 23);
  const step = (every ?? 1440) * 60;
  const height = (layer: number) => ((layer + 0.5) / trace.layers) * variant.cylinder.height;
  return {
    columns: ['min', ...picks.map((layer) => `${metres(height(layer))} up, °C`)],
    rows: Array.from({ length: Math.floor(last / step) + 1 }, (_, row) => {
      const profile = profileAt(trace, row * step);
      return [figure((row * step) / 60, 0), ...picks.map((layer) => figure(profile[layer], 1))];
    }),
  };
}
