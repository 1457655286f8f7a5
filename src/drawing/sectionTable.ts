import { figure, litres } from '../../shared/format.ts';
import type { Variant } from '../../shared/variant.ts';
import { evenPicks, type TableOf } from '../charts/table.ts';

/**
 * The section at the moment as rows of text, from the top down, at most 24 of them.
 * @param layers  [layer] °C
 */
export function sectionTable(variant: Variant, layers: readonly number[]): TableOf {
  const { height, volume } = variant.cylinder;
  const centre = (layer: number) => ((layer + 0.5) / layers.length) * height;
  return {
    columns: ['height, m', 'temperature, °C', 'at or below'],
    rows: evenPicks(layers.length, 24)
      .reverse()
      .map((layer) => [
        figure(centre(layer), 2),
        figure(layers[layer], 1),
        litres(((layer + 1) / layers.length) * volume),
      ]),
  };
}
