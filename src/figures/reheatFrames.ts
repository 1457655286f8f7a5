import type { Result } from '../../shared/result.ts';
import type { Celsius, Seconds } from '../../shared/units.ts';
import { niceEnd } from '../charts/niceTicks.ts';

/** Places of the stacked frames of the reheat curve, pixels of the drawing. */
export interface ReheatFrames {
  readonly left: number;
  readonly right: number;
  readonly temperature: { readonly top: number; readonly bottom: number };
  readonly strip: { readonly top: number; readonly bottom: number };
  readonly power: { readonly top: number; readonly bottom: number };
  readonly height: number;
}

/**
 * Where the frames stand in a figure of a given width.
 * @param width  of the drawing, pixels
 * @param isLow  on a phone, so that the drawing of the cylinder and the whole curve are seen at once
 */
export function reheatFrames(width: number, isLow: boolean): ReheatFrames {
  const top = 24;
  const temperature = { top, bottom: top + (isLow ? 118 : 216) };
  const strip = { top: temperature.bottom + 28, bottom: temperature.bottom + 39 };
  const powerTop = strip.bottom + (isLow ? 26 : 34);
  const power = { top: powerTop, bottom: powerTop + (isLow ? 30 : 48) };
  return {
    ...plotEdges(width),
    temperature,
    strip,
    power,
    height: power.bottom + 22,
  };
}

/** Left and right edge of the time axis in a figure of a given width, pixels. */
export function plotEdges(width: number): { readonly left: number; readonly right: number } {
  const isNarrow = width < 480;
  return { left: isNarrow ? 26 : 34, right: Math.max(120, width - (isNarrow ? 85 : 100)) };
}

/** What is ringed at the moment, and tied to its height on the section. */
export const tiedHeights = ['top', 'sensor', 'bottom'] as const;

/**
 * End of the time axis, s: half as long again as the recovery, within the run; all of a run that
 * did not recover.
 * @param before  the former result, drawn beside this one while a handle is dragged
 * @param others  those of other variants, drawn beside this one as far as they recover
 */
export function timeEnd(
  result: Result,
  before: Result | null = null,
  others: readonly Result[] = [],
): Seconds {
  const beside = [
    ...(before === null ? [] : [before]),
    ...others.filter(({ measures }) => measures.recovery !== null),
  ];
  const shown = Math.max(recoveryOrEnd(result), ...beside.map(recoveryOrEnd));
  const ran = Math.max(result.outcome.at, ...beside.map(({ outcome }) => outcome.at));
  const wanted = result.measures.recovery === null ? ran : niceEnd(1.5 * shown);
  return Math.max(60, Math.min(ran, wanted));
}

/** Top of the temperature axis, °C: above everything that is drawn in it. */
export function temperatureTop(result: Result): Celsius {
  const { boiler, stat } = result.variant;
  const hottestFlow = result.trace.of.coilInlet.reduce(
    (most, value) => (Number.isNaN(value) ? most : Math.max(most, value)),
    0,
  );
  const most = Math.max(boiler.hotWaterFlow, stat.setPoint, result.measures.hottest, hottestFlow);
  return Math.ceil((most + 2) / 10) * 10;
}

function recoveryOrEnd({ measures, outcome }: Result): Seconds {
  return measures.recovery ?? outcome.at;
}
