import { cautionsOf } from '../../shared/cautions.ts';
import { duration, percent } from '../../shared/format.ts';
import type { Result } from '../../shared/result.ts';
import { plain } from '../../shared/sentences.ts';
import { countWords, spreadFinding, unknownRows } from '../../shared/sentences/spread.ts';
import type { Spread } from '../../shared/spread.ts';
import { closing } from './closing.ts';
import { columns, paragraph, table } from './layout.ts';

/** What the unknowns leave open of a reheat, as text for a terminal. @param result  as it is set */
export function spreadReport(spread: Spread, result: Result): string {
  const { heading, summary } = spreadFinding(spread, result.measures.recovery);
  const time = (seconds: number | null) =>
    seconds === null ? `not within ${duration(result.variant.run.duration, 0)}` : duration(seconds);
  const rows = unknownRows(spread);
  const sections = [
    spread.variant.name,
    paragraph([heading, ...summary].map(plain).join(' ')),
    `Time until the stat is satisfied\n${columns([
      ['low, 1 case in 10 is shorter', time(spread.low)],
      ['median', time(spread.median)],
      ['high, 1 case in 10 is longer', time(spread.high)],
      ['as set', time(result.measures.recovery)],
      ['cases', countWords(spread)],
    ])}`,
    ...(rows.length === 0
      ? []
      : [
          `What is not known for certain, and what it explains of the scatter by itself\n${table(
            rows.map(({ name, ranges, share }) => [
              name,
              share === null ? '–' : percent(share),
              ranges.map(({ text }) => text).join(', '),
            ]),
          )}`,
        ]),
    ...closing(cautionsOf(result.variant, result)),
  ];
  return `${sections.join('\n\n')}\n`;
}
