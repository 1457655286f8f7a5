import type { Caution } from '../../shared/cautions.ts';
import { notModelled } from '../../shared/notModelled.ts';
import { paragraph } from './layout.ts';

/** What every report ends with: its cautions, and what the model does not do. */
export function closing(cautions: readonly Caution[]): string[] {
  const list = (texts: readonly string[]) =>
    texts.map((text) => paragraph(text, '  - ')).join('\n');
  return [
    `Cautions\n${list(cautions.map(({ text, source }) => `${text} [${source}]`))}`,
    `What the model does not do\n${list(notModelled)}`,
  ];
}
