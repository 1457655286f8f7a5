import { arrangementOf } from '../../shared/arrangements.ts';
import type { DayRun } from '../../shared/day.ts';
import { fails } from '../../shared/drawFails.ts';

/** First and last pixel downwards. */
export interface Span {
  readonly top: number;
  readonly bottom: number;
}

/** Places of the stacked frames of a day, pixels of the drawing. */
export interface DayFrames {
  readonly left: number;
  readonly right: number;
  readonly isNarrow: boolean;
  readonly draws: Span;
  readonly store: Span;
  /** One strip for each of its rows. */
  readonly strips: readonly Span[];
  readonly power: Span;
  /** Null where nothing heats the rooms. */
  readonly rooms: Span | null;
  /** Of the lowest frame, under which the axis stands. */
  readonly axis: number;
  readonly height: number;
}

/**
 * Where the frames stand in a figure of a given width.
 * @param width   of the drawing, pixels
 * @param strips  how many strips stand between the store and the boiler
 */
export function dayFrames(width: number, day: DayRun, strips: number): DayFrames {
  const isNarrow = width < 480;
  const drawsTop = day.draws.some(fails) ? 48 : 22;
  const draws = { top: drawsTop, bottom: drawsTop + 34 };
  const storeTop = draws.bottom + 36;
  const store = { top: storeTop, bottom: storeTop + (isNarrow ? 126 : 170) };
  const stripTop = (row: number) => store.bottom + 32 + row * 32;
  const rows = Array.from({ length: strips }, (_, row) => ({
    top: stripTop(row),
    bottom: stripTop(row) + 11,
  }));
  const powerTop = stripTop(strips - 1) + 11 + 36;
  const power = { top: powerTop, bottom: powerTop + (isNarrow ? 36 : 48) };
  const roomsTop = power.bottom + 36;
  const isHeated = arrangementOf(day.variant.heating.arrangement).heated;
  const rooms = isHeated ? { top: roomsTop, bottom: roomsTop + (isNarrow ? 48 : 60) } : null;
  const axis = (rooms ?? power).bottom;
  return {
    left: isNarrow ? 28 : 38,
    right: Math.max(120, width - (isNarrow ? 94 : 134)),
    isNarrow,
    draws,
    store,
    strips: rows,
    power,
    rooms,
    axis,
    height: axis + 22,
  };
}
