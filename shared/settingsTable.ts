import { fields, groupLabels, groupOf } from './fields.ts';
import { filePathOf } from './fileKeys.ts';
import type { Field } from './fields/row.ts';
import { units } from './units.ts';

/** Every setting of a file as a Markdown table: key, what it is, what it may be, default. */
export function settingsTable(): string {
  const rows = fields.map((field) => [
    `\`${filePathOf(field)}\``,
    named(field),
    allowed(field),
    String(field.default),
  ]);
  const lines = [['key', 'what', 'allowed', 'default'], ['---', '---', '---', '---'], ...rows];
  return `${lines.map((cells) => `| ${cells.join(' | ')} |`).join('\n')}\n`;
}

/** Group and label; a label that begins with the name of its group stands alone. */
function named(field: Field): string {
  const group = groupLabels[groupOf(field)];
  return field.label.startsWith(group) ? field.label : `${group}: ${field.label}`;
}

function allowed(field: Field): string {
  if (field.kind === 'choice') return field.choices.map(({ value }) => `\`${value}\``).join(', ');
  const { symbol } = units[field.unit];
  return `${field.least} to ${field.most}${symbol === '' ? '' : ` ${symbol}`}`.replace(/-/g, '−');
}
