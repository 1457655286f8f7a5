import { cautionsOf } from '../../shared/cautions.ts';
import { delays } from '../../shared/delays.ts';
import { minutes } from '../../shared/format.ts';
import type { Result } from '../../shared/result.ts';
import { plain } from '../../shared/sentences.ts';
import { changeBuys, changesHeading } from '../../shared/sentences/changes.ts';
import { delayNotes, delaySentence, minutesFinding } from '../../shared/sentences/minutes.ts';
import type { Why } from '../../shared/whyFile.ts';
import { closing } from './closing.ts';
import { columns, paragraph } from './layout.ts';

/** Why a reheat takes so long and what would help, as text for a terminal. */
export function whyReport(result: Result, why: Why): string {
  const { heading, summary } = minutesFinding(why.minutes, result.variant);
  const sections = [
    result.variant.name,
    paragraph([heading, ...summary].map(plain).join(' ')),
    ...shares(why),
    `${changesHeading(why.changes)}\n${columns(changes(why))}`,
    ...why.changes.flatMap(({ text, cautions }) =>
      cautions.map((caution) => paragraph(`${text}: ${caution.text} (${caution.source})`, '  ')),
    ),
    ...closing(cautionsOf(result.variant, result)),
  ];
  return `${sections.join('\n\n')}\n`;
}

function shares({ minutes: found }: Why): string[] {
  if (found.shares.length === 0) return [];
  const rows = [
    ['full boiler output all the way', minutes(found.ideal)],
    ...found.shares.map(({ key, time }) => [delays[key].word, minutes(time)]),
    ...found.absent.map((key) => [delays[key].word, minutes(0)]),
    ['in all', minutes(found.whole)],
  ];
  const words = found.shares.map((share) => paragraph(delaySentence(share, found), '  '));
  const notes = delayNotes(found).map((note) => paragraph(note, '  '));
  return [`Minutes by cause\n${columns(rows)}`, [...words, ...notes].join('\n')];
}

function changes({ changes: all }: Why): string[][] {
  return all.map((change) => [change.text, changeBuys(change)]);
}
