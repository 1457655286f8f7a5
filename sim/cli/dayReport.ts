import { cautionsOf } from '../../shared/cautions.ts';
import type { DayRun, DrawReport } from '../../shared/day.ts';
import type { Delivered } from '../../shared/delivery.ts';
import { celsius, clock, shown } from '../../shared/format.ts';
import { plain } from '../../shared/sentences.ts';
import { dayFinding } from '../../shared/sentences/day.ts';
import { drawName, drawTrouble } from '../../shared/sentences/dayDraws.ts';
import {
  dayMeasureGroups,
  efficiencyWords,
  lossWords,
  patternWords,
} from '../../shared/sentences/dayMeasures.ts';
import {
  deliveryRows,
  firstHourRule,
  firstHourWords,
  usableRule,
  usableWords,
} from '../../shared/sentences/delivery.ts';
import {
  guidanceWords,
  hygieneWords,
  reductionWords,
  scaldWords,
  warmthRows,
} from '../../shared/sentences/hygiene.ts';
import { scaldTimeBand } from '../closures/scaldTime.ts';
import { closing } from './closing.ts';
import { columns, paragraph, table } from './layout.ts';

/** A day of hot water in use, and what the store gives in one draw, as text for a terminal. */
export function dayReport(day: DayRun, delivered: Delivered): string {
  const { heading, summary } = dayFinding(day);
  const band = scaldTimeBand(day.measures.hottestAtTap ?? 0);
  const words = (texts: readonly string[]) =>
    texts
      .filter((text) => text !== '')
      .map((text) => paragraph(text))
      .join('\n');
  const sections = [
    day.variant.name,
    words([plain(heading), summary.map(plain).join(' '), patternWords(day)]),
    ...dayMeasureGroups(day).map(
      ({ title, rows }) => `${title}\n${columns(rows.map(({ label, text }) => [label, text]))}`,
    ),
    words([lossWords(day), ...efficiencyWords(day)]),
    `Draws\n${day.draws.length === 0 ? '  none' : table(day.draws.map((draw) => drawLine(day, draw)))}`,
    `How warm the store was kept\n${table([['', 'coldest tenth', 'top'], ...warmthRows(day)])}`,
    words([...hygieneWords(day), scaldWords(day, band), guidanceWords, reductionWords]),
    `What the store gives in one draw\n${table([['', 'drawn, l', 'estimate, l', 'difference, l'], ...deliveryRows(delivered)])}`,
    words([usableWords(delivered), usableRule]),
    `The first hour\n${words([firstHourWords(delivered.firstHour), firstHourRule])}`,
    ...closing(cautionsOf(day.variant, null, day)),
  ];
  return `${sections.join('\n\n')}\n`;
}

/** When, what, how much and how warm, what of it was useful, and what was wrong. */
function drawLine({ variant, shownDays }: DayRun, draw: DrawReport): string[] {
  const useful = shown(draw.useful, 'kilowattHour', 3);
  return [
    clock(draw.from, shownDays),
    drawName(draw, variant),
    shown(draw.volume, 'litre', 1),
    celsius(draw.mean),
    draw.usefulAsked === null
      ? useful
      : `${useful} of ${shown(draw.usefulAsked, 'kilowattHour', 3)}`,
    drawTrouble(draw),
  ];
}
