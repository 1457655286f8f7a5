import type { DayRun, DrawReport } from '../day.ts';
import { fails, missingHeat } from '../drawFails.ts';
import { clock, figure, minutes, shown } from '../format.ts';
import type { CubicMetres, Seconds } from '../units.ts';
import type { Variant } from '../variant.ts';

/** A draw as it is spoken of: `bath`, `0.735 kWh draw`, `“Dog wash”`. */
export function drawName({ name }: DrawReport, { day }: Variant): string {
  if (day.pattern === 'household') return name;
  if (day.pattern !== 'own') return `${name} draw`;
  return name.trim() === '' ? 'draw' : `“${clipped(name.trim())}”`;
}

/** The same with its article, and when it was opened: `the bath at 21:30`. */
export function drawAt(draw: DrawReport, { variant, shownDays }: DayRun): string {
  const name = drawName(draw, variant);
  return `${name.startsWith('“') ? name : `the ${name}`} ${atClock(draw.from, shownDays)}`;
}

/** When something was, within a sentence: `at 21:30`, `on day 2 at 21:30`. */
export function atClock(seconds: Seconds, days: number): string {
  const text = clock(seconds, days);
  return days > 1 ? `on ${text.replace(', ', ' at ')}` : `at ${text}`;
}

/** From opening until a draw ran cold; null when it came warm to the end, or never. */
export function warmTime({ marks }: DayRun, { from, to, coldTime, waitTime }: DrawReport) {
  if (coldTime === 0 || waitTime === null) return null;
  const mark = marks.find(({ kind, at }) => kind === 'tapCold' && at > from && at <= to);
  return (mark?.at ?? to - coldTime) - from;
}

/** Everything that was wrong with a draw, as a few words; empty when nothing was. */
export function drawTrouble(draw: DrawReport): string {
  const { wanted, waitTime, coldTime, coldVolume, hasPeaked, peak } = draw;
  const missing = missingHeat(draw);
  return [
    wanted !== null && waitTime === null && `never came warm, ${coldLitres(coldVolume)}`,
    waitTime !== null && coldTime > 0 && `cold for ${brief(coldTime)}, ${coldLitres(coldVolume)}`,
    !hasPeaked && !draw.isCut && `peak of ${shown(peak, 'celsius', 0)} not reached`,
    missing > 0 && `${shown(missing, 'kilowattHour', 3)} short`,
    (waitTime ?? 0) >= 1 && `waited ${brief(waitTime ?? 0)}`,
    draw.isCut && 'still open when the last day ended',
  ]
    .filter(Boolean)
    .join('; ');
}

/** The one word under which a draw that fails is marked; null for one that does not. */
export function failureWord(draw: DrawReport): 'cold' | 'short' | null {
  if (!fails(draw)) return null;
  return draw.coldTime > 0 ? 'cold' : 'short';
}

/** The same with how much, for a label of 50 characters at most. */
export function failureLabel(draw: DrawReport, variant: Variant): string {
  const name = drawName(draw, variant);
  if (draw.coldTime > 0) return `${name} cold, ${coldLitres(draw.coldVolume)}`;
  const missing = missingHeat(draw);
  return missing > 0
    ? `${name} ${shown(missing, 'kilowattHour', 2)} short`
    : `${name} short of ${shown(draw.peak, 'celsius', 0)}`;
}

/** Litres that came too cold, to a tenth where they are few. */
export function coldLitres(volume: CubicMetres): string {
  return shown(volume, 'litre', volume < 0.00995 ? 1 : 0);
}

/** A time in seconds under a minute, else as everywhere. */
export function brief(seconds: Seconds): string {
  return seconds < 59.5 ? `${figure(Math.max(1, seconds), 0)}\u00a0s` : minutes(seconds);
}

function clipped(name: string): string {
  return name.length > LONGEST_NAME ? `${name.slice(0, LONGEST_NAME - 1).trimEnd()}…` : name;
}

const LONGEST_NAME = 24; // so that a label with its litres stays within 50 characters
