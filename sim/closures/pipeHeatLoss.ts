import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, row } from '../../shared/mathml.ts';
import { logarithm } from '../../shared/portableMaths.ts';
import { rootBetween } from '../../shared/rootBetween.ts';
import { air } from './air.ts';
import { coilOutside } from './coilOutside.ts';
import { radiationCoefficient } from './radiation.ts';

/** A pipe in still air, bare or lagged. */
export interface PipeSurface {
  /** Diameter of the pipe itself, m. */
  readonly outside: number;
  /** Thickness of the lagging, m; 0 for a bare pipe. */
  readonly lagging: number;
  /** W/(m K) */
  readonly laggingConductivity: number;
  /** Of the surface that faces the room, 0 to 1. */
  readonly emissivity: number;
}

/**
 * Heat lost by one metre of a horizontal pipe in still air, W/m; negative for a pipe colder than
 * its surroundings.
 * @param pipeTemperature  °C; the wall is taken as warm as the water
 * @param around           air and walls of the room, °C
 */
export function pipeHeatLoss(pipe: PipeSurface, pipeTemperature: number, around: number): number {
  return pipeConductance(pipe, pipeTemperature, around) * (pipeTemperature - around);
}

/**
 * The same loss for each kelvin of difference, W/(m K): convection and radiation from the outer
 * surface, with the lagging before it. It grows with the difference and stays above zero without
 * one. It looks for the temperature of the surface: work it out once, not in the derivative.
 */
export function pipeConductance(
  pipe: PipeSurface,
  pipeTemperature: number,
  around: number,
): number {
  const surface = surfaceTemperature(pipe, pipeTemperature, around);
  return inSeries(
    pipe.outside,
    pipe.lagging,
    pipe.laggingConductivity,
    surfaceCoefficient(pipe, surface, around),
  );
}

/** A copper pipe in common foam or wool, or bare. @param outside  m @param lagging  m, 0 for none */
export function usualPipe(outside: number, lagging: number): PipeSurface {
  return {
    outside,
    lagging,
    laggingConductivity: LAGGING_CONDUCTIVITY,
    emissivity: lagging > 0 ? LAGGING_EMISSIVITY : COPPER_EMISSIVITY,
  };
}

/** Convection and radiation from its outer surface as warm as it then is, W/(m² K). */
export function pipeSurfaceCoefficient(
  pipe: PipeSurface,
  pipeTemperature: number,
  around: number,
): number {
  return surfaceCoefficient(pipe, surfaceTemperature(pipe, pipeTemperature, around), around);
}

/** Emissivity of copper pipe that has been in use. */
// source: handbookSurfaces, oxidised copper 0.2 to 0.8; the middle is an engineering guess
export const COPPER_EMISSIVITY = 0.5;

/** Emissivity of lagging and of painted pipe. */
export const LAGGING_EMISSIVITY = 0.9; // source: handbookSurfaces, non-metals 0.85 to 0.95

/** Conductivity of foam or wool, W/(m K). */
export const LAGGING_CONDUCTIVITY = 0.04; // common practice, no source

/** The temperature at which the outer surface sheds what the lagging passes, °C. */
function surfaceTemperature(pipe: PipeSurface, pipeTemperature: number, around: number): number {
  if (!(pipe.lagging > 0)) return pipeTemperature;
  const passed =
    (TWO_PI * pipe.laggingConductivity) / laggingResistance(pipe.outside, pipe.lagging);
  const round = Math.PI * (pipe.outside + 2 * pipe.lagging);
  const shedTooMuch = (surface: number): number =>
    round * surfaceCoefficient(pipe, surface, around) * (surface - around) -
    passed * (pipeTemperature - surface);
  return rootBetween(shedTooMuch, around, pipeTemperature, CLOSENESS);
}

/** Convection and radiation from the outer surface, W/(m² K). */
function surfaceCoefficient(pipe: PipeSurface, surface: number, around: number): number {
  const diameter = pipe.outside + 2 * pipe.lagging;
  const film = (surface + around) / 2;
  // source: churchillChu, a horizontal cylinder, here in air
  const convection = coilOutside(air, diameter, film, Math.abs(surface - around), 1);
  return convection + radiationCoefficient(pipe.emissivity, surface, around);
}

/**
 * Lagging and surface one after the other, W/(m K).
 * @param outside      pipe, m
 * @param lagging      m, 0 for none
 * @param k            of the lagging, W/(m K)
 * @param coefficient  at the outer surface, W/(m² K)
 */
function inSeries(outside: number, lagging: number, k: number, coefficient: number): number {
  const surface = 1 / (Math.PI * (outside + 2 * lagging) * coefficient);
  return 1 / (surface + (lagging > 0 ? laggingResistance(outside, lagging) / (TWO_PI * k) : 0));
}

/** Resistance of a round shell times 2π and its conductivity, pure number. */
function laggingResistance(outside: number, lagging: number): number {
  return logarithm(1 + (2 * lagging) / outside);
}

const TWO_PI = 2 * Math.PI;
const CLOSENESS = 1e-9; // K of surface temperature

export const pipeHeatLossRecord: ClosureRecord = {
  key: 'pipeHeatLoss',
  title: 'Loss of a pipe in still air',
  result: { key: 'result', symbol: mi('u'), name: 'loss per metre and kelvin', unit: 'W/(m K)' },
  terms: [
    { key: 'outside', symbol: mi('d'), name: 'outside of the pipe', unit: 'mm', factor: 1000 },
    { key: 'lagging', symbol: mi('s'), name: 'thickness of the lagging', unit: 'mm', factor: 1000 },
    { key: 'k', symbol: mi('k'), name: 'conductivity of the lagging', unit: 'W/(m K)' },
    { key: 'h', symbol: mi('h'), name: 'convection and radiation', unit: 'W/(m² K)' },
  ],
  formula: equals(
    '{result}',
    frac(
      mn(1),
      row(
        frac(
          row(
            mi('ln'),
            mo('('),
            mn(1),
            mo('+'),
            frac(row(mn(2), mo('·'), '{lagging}'), '{outside}'),
            mo(')'),
          ),
          row(mn(2), mi('π'), mo('·'), '{k}'),
        ),
        mo('+'),
        frac(
          mn(1),
          row(
            mi('π'),
            mo('·'),
            mo('('),
            '{outside}',
            mo('+'),
            mn(2),
            mo('·'),
            '{lagging}',
            mo(')'),
            mo('·'),
            '{h}',
          ),
        ),
      ),
    ),
  ),
  sentence:
    'A bare pipe is held back by the air alone; lagging holds back far more than the air does.',
  source: 'churchillChu',
  where:
    'convection in air from the horizontal cylinder, radiation from a grey surface; conduction through a round shell',
  range:
    'still air; published figures spread by a factor of two: of one trade table this gives 0.50 to 0.75 for bare copper and 1.3 to 1.5 for 25 mm of lagging; SAP has 24.5 W/m bare and 9.1 W/m lagged for primaries',
  outside: 'extended; a draught, a vertical run, clips and bare fittings are not in it',
  changes: 'Thicker lagging; a shorter run; cooler water.',
  example: {
    given: { outside: 0.022, lagging: 0.025, k: 0.043, h: 9 },
    gives: 0.2049,
    digits: 4,
    note: 'Worked by hand: ln(72 / 22) / (2π × 0.043) = 4.3883 and 1 / (π × 0.072 × 9) = 0.4912; one over their sum.',
  },
  compute: ({ outside, lagging, k, h }) => inSeries(outside, lagging, k, h),
};
