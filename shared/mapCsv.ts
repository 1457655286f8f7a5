import { askedFileKey, askedFileValue } from './asked.ts';
import { fieldAt } from './fields.ts';
import { filePathOf } from './fileKeys.ts';
import { overridesAt } from './grid.ts';
import type { MapData } from './sentences/map.ts';
import { units } from './units.ts';

/**
 * A map as comma-separated text, a line for each point: its settings and the measure, each with its unit in the header and
 * every digit; empty where there is no value, with the reason behind it. Points that were not computed are left out.
 */
export function mapCsv({ grid, measure, values, gaps }: MapData): string {
  const order = grid.axes.map((_, axis) => axis).reverse(); // the axis across comes first
  const header = [
    ...order.map((axis) => filePathOf(fieldAt(grid.axes[axis].path))),
    askedFileKey(measure),
    'whyNot',
  ];
  const lines = [header.join(',')];
  for (let place = 0; place < values.length; place += 1) {
    const gap = gaps[place];
    const isKnown = !Number.isNaN(values[place]);
    if (!isKnown && !gap) continue;
    const overrides = overridesAt(grid, place);
    const value = isKnown ? askedFileValue(measure, values[place]) : null;
    const cells = order.map((axis) => {
      const [path, setting] = overrides[axis];
      const field = fieldAt(path);
      return field.kind === 'number' ? Number(setting) / units[field.unit].factor : setting;
    });
    lines.push([...cells, value ?? '', quoted(gap?.sentences.join(' ') ?? '')].join(','));
  }
  return `${lines.join('\n')}\n`;
}

const quoted = (text: string) => (text === '' ? '' : `"${text.replaceAll('"', '""')}"`);
