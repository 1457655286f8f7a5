import type { DayRun, DrawReport } from '../../shared/day.ts';
import { fails } from '../../shared/drawFails.ts';
import { clock, figure } from '../../shared/format.ts';
import { drawTrouble } from '../../shared/sentences/dayDraws.ts';
import { fromSI } from '../../shared/units.ts';
import type { TableOf } from '../charts/table.ts';

/** The draws of a day as rows of text, at most 30: where there are more, those that failed and the largest. */
export function dayTable({ draws, shownDays }: DayRun): TableOf {
  const listed = draws.length > MOST ? pickedOf(draws) : draws;
  const failed = draws.filter(fails).length;
  const byProfile = draws.some(({ usefulAsked }) => usefulAsked !== null);
  return {
    columns: [
      'time',
      'draw',
      'drawn, l',
      'mean, °C',
      byProfile ? 'useful of asked, kWh' : 'useful, kWh',
      'what was wrong',
    ],
    rows: listed.map((draw) => [
      clock(draw.from, shownDays),
      draw.name,
      figure(fromSI(draw.volume, 'litre'), 1),
      figure(draw.mean, 1),
      usefulText(draw),
      drawTrouble(draw) || 'nothing',
    ]),
    ...(listed.length < draws.length && {
      caption: `${listed.length} of ${draws.length} draws: ${failed > MOST ? `the largest of ${failed} that failed` : `${failed} that failed and the largest of the others`}.`,
    }),
  };
}

function pickedOf(draws: readonly DrawReport[]): DrawReport[] {
  const ranked = [...draws].sort(
    (one, other) => Number(fails(other)) - Number(fails(one)) || other.volume - one.volume,
  );
  return ranked.slice(0, MOST).sort((one, other) => one.from - other.from);
}

function usefulText({ useful, usefulAsked }: DrawReport): string {
  const kilowattHours = (joules: number) => figure(fromSI(joules, 'kilowattHour'), 3);
  return usefulAsked === null
    ? kilowattHours(useful)
    : `${kilowattHours(useful)} of ${kilowattHours(usefulAsked)}`;
}

const MOST = 30;
