import { cautionsOf } from './cautions.ts';
import { toFile } from './codec.ts';
import { type DayRun, type DrawReport, dayMeasureRows, type Warmth } from './day.ts';
import { notModelled } from './notModelled.ts';
import { balanceFile, measuresFile, traceFile } from './resultFile.ts';
import { plain } from './sentences.ts';
import { dayFinding } from './sentences/day.ts';
import { fromSI } from './units.ts';

/** What stands under `format` in a saved day. */
export const dayFormat = 'reheat-bench day';

/** A day of hot water in use for other programs: units in the keys, null where there is no value. */
export function dayFile(day: DayRun): Record<string, unknown> {
  const { variant, outcome, measures, hygiene, draws, marks, balance, cost, trace } = day;
  const words = dayFinding(day);
  return {
    format: dayFormat,
    version: 1,
    variant: toFile(variant),
    finding: [words.heading, ...words.summary].map(plain),
    outcome: { kind: outcome.kind, atHours: fromSI(outcome.at, 'hour') },
    simulatedDays: day.simulatedDays,
    shownDays: day.shownDays,
    isSteady: day.isSteady,
    differenceKelvins: day.difference,
    measures: measuresFile(dayMeasureRows, measures),
    draws: draws.map(drawFile),
    hygiene: {
      coldestTenth: warmthFile(hygiene.coldestTenth),
      top: warmthFile(hygiene.top),
      neverHotLitres: fromSI(hygiene.neverHot, 'litre'),
      neverHotBestCelsius: hygiene.neverHotBest,
      longDraws: hygiene.longDraws,
      coolerDraws: hygiene.cooler,
    },
    marks: marks.map(({ at, kind }) => ({ atHours: fromSI(at, 'hour'), kind })),
    balance: balanceFile(balance),
    cost,
    cautions: cautionsOf(variant, null, day),
    notModelled,
    trace: traceFile(trace),
  };
}

function drawFile(draw: DrawReport): Record<string, unknown> {
  const minutes = (seconds: number | null) => (seconds === null ? null : fromSI(seconds, 'minute'));
  const kilowattHours = (joules: number | null) =>
    joules === null ? null : fromSI(joules, 'kilowattHour');
  return {
    name: draw.name,
    fromHours: fromSI(draw.from, 'hour'),
    lastedMinutes: minutes(draw.to - draw.from),
    askedLitres: fromSI(draw.asked, 'litre'),
    drawnLitres: fromSI(draw.volume, 'litre'),
    fromStoreLitres: fromSI(draw.fromStore, 'litre'),
    heatKilowattHours: kilowattHours(draw.heat),
    usefulKilowattHours: kilowattHours(draw.useful),
    usefulAskedKilowattHours: kilowattHours(draw.usefulAsked),
    wantedCelsius: draw.wanted,
    peakCelsius: draw.peak,
    hasPeaked: draw.hasPeaked,
    meanCelsius: draw.mean,
    hottestCelsius: draw.hottest,
    afterMinuteCelsius: draw.afterMinute,
    waitedMinutes: minutes(draw.waitTime),
    coldMinutes: minutes(draw.coldTime),
    coldLitres: fromSI(draw.coldVolume, 'litre'),
    isCut: draw.isCut,
  };
}

function warmthFile(warmth: Warmth): Record<string, number> {
  return {
    leastCelsius: warmth.least,
    mostCelsius: warmth.most,
    hotHours: fromSI(warmth.hotTime, 'hour'),
    longestHotHours: fromSI(warmth.longestHot, 'hour'),
    growthHours: fromSI(warmth.growthTime, 'hour'),
    fewestTenfoldReductions: warmth.fewestReductions,
    mostTenfoldReductions: warmth.mostReductions,
  };
}
