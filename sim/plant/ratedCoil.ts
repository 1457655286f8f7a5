import { exponential } from '../../shared/portableMaths.ts';
import type { SquareMetres } from '../../shared/units.ts';
import type { Coil } from '../../shared/variant.ts';
import {
  type CoilTube,
  overallCoefficient,
  type PreparedCoil,
  prepareCoil,
} from '../closures/overallCoefficient.ts';
import type { Water } from '../closures/water.ts';

/**
 * The area that, with its tube clean, reproduces a declared rating, m²: the mean output while a mixed store is heated from
 * one temperature to another with the primary entering at one temperature.
 */
export function ratedArea(
  coil: Coil,
  tubeOf: (coil: Coil) => CoilTube,
  water: Water,
): SquareMetres {
  const clean = { ...tubeOf(coil), scaleThickness: 0 };
  const massFlow = coil.ratedFlow * water.density(coil.ratedInlet);
  const prepared = prepareCoil(clean, massFlow, water, water);
  const heatRate = massFlow * water.specificHeat(coil.ratedInlet);
  const mean = (area: SquareMetres) => meanOutput(coil, prepared, heatRate, area);

  // Output rises with area: bracket, then halve
  let low = 0;
  let high = 1;
  while (mean(high) < coil.ratedOutput && high < LARGEST) high *= 2;
  for (let halving = 0; halving < 60; halving++) {
    const middle = (low + high) / 2;
    if (mean(middle) < coil.ratedOutput) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Mean over the heat-up: its heat over its time, the time by Simpson's rule over store temperature, W. */
function meanOutput(coil: Coil, prepared: PreparedCoil, heatRate: number, area: number): number {
  const span = coil.ratedTo - coil.ratedFrom;
  let time = 0;
  for (let node = 0; node <= NODES; node++) {
    const store = coil.ratedFrom + (span * node) / NODES;
    const weight = node === 0 || node === NODES ? 1 : node % 2 === 1 ? 4 : 2;
    time += weight / (3 * NODES * output(prepared, heatRate, area, coil.ratedInlet, store));
  }
  return 1 / time;
}

/** Output of a coil of one area in water of one temperature, in equal pieces, W. */
function output(
  prepared: PreparedCoil,
  heatRate: number,
  area: number,
  inlet: number,
  store: number,
): number {
  let primary = inlet;
  for (let piece = 0; piece < PIECES; piece++) {
    const conductance = (area / PIECES) * overallCoefficient(prepared, primary, store);
    primary = store + (primary - store) * exponential(-conductance / heatRate);
  }
  return heatRate * (inlet - primary);
}

const NODES = 8;
const PIECES = 24;
const LARGEST = 1000; // m², beyond any coil: the rating is then at the limit of the flow
