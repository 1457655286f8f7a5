import type { ArrangementThrow } from '../../shared/arrangementThrow.ts';
import { arrangementOf } from '../../shared/arrangements.ts';
import type { Seconds } from '../../shared/units.ts';
import { textWidth } from '../charts/endLabels.ts';

interface Place {
  readonly top: number;
  readonly bottom: number;
}

/** Places of the stacked frames of the player, pixels of the drawing. */
export interface PlayerFrames {
  readonly left: number;
  readonly right: number;
  readonly air: Place;
  readonly radiators: Place;
  readonly strip: Place;
  readonly power: Place;
  readonly cylinder: Place;
  /** Baseline of the names of throws. */
  readonly thrownAt: number;
  readonly height: number;
}

/**
 * Where the frames stand.
 * @param width   of the drawing, pixels
 * @param height  to be filled; as high as reads well when null
 * @param size    of its text, pixels
 */
export function playerFrames(width: number, height: number | null, size: number): PlayerFrames {
  const unit = size / USUAL;
  const gaps = GAPS * unit;
  const rest = Math.max(LEAST, height === null ? WELL : height - gaps);
  const frame = (above: number, share: number): Place => {
    const top = above + TITLE * unit;
    return { top, bottom: top + share * rest };
  };
  const air = frame(-8 * unit, 0.24);
  const radiators = frame(air.bottom, 0.18);
  const strip = {
    top: radiators.bottom + 24 * unit,
    bottom: radiators.bottom + 35 * unit,
  };
  const power = frame(strip.bottom, 0.24);
  const cylinder = frame(power.bottom, 0.34);
  return {
    left: 34 * unit,
    right: Math.max(120, width - 100 * unit),
    air,
    radiators,
    strip,
    power,
    cylinder,
    thrownAt: cylinder.bottom + 36 * unit,
    height: cylinder.bottom + 40 * unit,
  };
}

/** End of a time axis that holds a moment, s: a first guess, doubled as often as needed, within the run. */
export function playerEnd(guess: Seconds, moment: Seconds, last: Seconds): Seconds {
  let end = guess;
  while (end < moment) end *= 2;
  return Math.min(end, last);
}

/** A throw on the axis: where it stands, and its name where there is room for it. */
export interface ThrowNote {
  readonly key: string;
  readonly x: number;
  readonly name: string;
  readonly left: number;
}

/** The throws up to a moment. @param x  seconds to pixels */
export function throwNotes(
  throws: readonly ArrangementThrow[],
  at: Seconds,
  x: (seconds: Seconds) => number,
  { left, right }: { readonly left: number; readonly right: number },
  size: number,
): ThrowNote[] {
  let taken = Number.NEGATIVE_INFINITY;
  return throws
    .filter((thrown) => thrown.at <= at)
    .map((thrown) => {
      const name = arrangementOf(thrown.arrangement).label;
      const width = textWidth(name, size);
      const here = x(thrown.at);
      const start = Math.max(left, Math.min(here - width / 2, right + 90 - width));
      const fits = start > taken + size / 2;
      if (fits) taken = start + width;
      return { key: `${thrown.at} ${name}`, x: here, name: fits ? name : '', left: start };
    });
}

const USUAL = 12; // px
const TITLE = 32; // px at the usual size, from a frame to the next, clear of the lowest tick
const GAPS = 4 * TITLE + 35 + 40; // px at the usual size: titles, strip, axis
const WELL = 300; // px
const LEAST = 160; // px
