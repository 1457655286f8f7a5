import { PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import { fittedCoils } from '../../shared/fittedCoils.ts';
import { exponential } from '../../shared/portableMaths.ts';
import type { Celsius, KilogramsPerSecond } from '../../shared/units.ts';
import type { Coil, Variant } from '../../shared/variant.ts';
import {
  overallCoefficient,
  type PreparedCoil,
  prepareCoil,
} from '../closures/overallCoefficient.ts';
import { anywhere } from '../closures/outsideFilm.ts';
import { scaleResistance } from '../closures/scale.ts';
import type { Water } from '../closures/water.ts';
import { coilArea, tubeOf } from './coilTube.ts';
import type { Cylinder } from './cylinder.ts';
import { stillCoefficient } from './restingCoil.ts';
import { footLayer } from './sensed.ts';

/** The coils of a cylinder at one primary flow, cut where the layers are cut, in the order the water flows. */
export interface CoilRun {
  readonly massFlow: KilogramsPerSecond;
  /** Mass flow times specific heat of the primary water, W/K. */
  readonly heatRate: number;
  /** [piece] the layer it lies in. */
  readonly layer: Int32Array;
  /** [piece] outside area, m²; for a known UA, its conductance, W/K. */
  readonly size: Float64Array;
  /** [stretch] its first piece, and at the end the number of pieces: stretches of tube that share one coefficient. */
  readonly stretch: Int32Array;
  /** [piece] what it passes while the water in it stands, W/(m² K) of outside area; 0 for a known UA. */
  readonly still: Float64Array;
  /** [stretch] its coil made ready; null for a known UA. */
  readonly tube: readonly (PreparedCoil | null)[];
}

/** Makes the coils of a variant ready for one primary flow, kg/s. */
export function makeCoilRun(
  variant: Variant,
  cylinder: Cylinder,
  water: Water,
  massFlow: KilogramsPerSecond,
): CoilRun {
  const layer: number[] = [];
  const size: number[] = [];
  const still: number[] = [];
  const stretch: number[] = [];
  const tube: (PreparedCoil | null)[] = [];
  for (const coil of inFlowOrder(variant)) {
    const whole = coil.given === 'conductance' ? coil.conductance : coilArea(coil, water);
    const prepared =
      coil.given === 'conductance' ? null : prepareCoil(tubeOf(coil), massFlow, water, water);
    const atRest = coil.given === 'conductance' ? 0 : stillCoefficient(coil, water);
    const pieces = cut(coil, cylinder);
    const longest = Math.ceil(pieces.length / STRETCHES);
    pieces.forEach((piece, index) => {
      if (index % longest === 0) {
        stretch.push(layer.length);
        tube.push(prepared);
      }
      layer.push(piece.layer);
      size.push(piece.share * whole);
      still.push(atRest);
    });
  }
  return {
    massFlow,
    heatRate: massFlow * water.specificHeat(PRIMARY_TEMPERATURE),
    layer: Int32Array.from(layer),
    size: Float64Array.from(size),
    still: Float64Array.from(still),
    stretch: Int32Array.from([...stretch, layer.length]),
    tube,
  };
}

/** The same coils with so many times the surface. */
export function enlarged(run: CoilRun, factor: number): CoilRun {
  return { ...run, size: run.size.map((size) => size * factor) };
}

/**
 * Coils whose tube and films do not resist, in the layer where the foot of the lowest lies: they leave their water as warm as
 * the store. Only scale still lies between, where all of them have it.
 */
export function unlimitedCoil(
  variant: Variant,
  cylinder: Cylinder,
  water: Water,
  massFlow: KilogramsPerSecond,
): CoilRun {
  const heatRate = massFlow * water.specificHeat(PRIMARY_TEMPERATURE);
  return {
    massFlow,
    heatRate,
    layer: Int32Array.of(footLayer(cylinder, variant)),
    size: Float64Array.of(Math.min(scaleConductance(variant, water), UNLIMITED * heatRate)),
    stretch: Int32Array.of(0, 1),
    still: Float64Array.of(0),
    tube: [null],
  };
}

/** What the scale on the coils would pass by itself, W/K; infinite where a coil has none. */
function scaleConductance(variant: Variant, water: Water): number {
  return fittedCoils(variant).reduce((sum, coil) => {
    if (coil.given === 'conductance') return Number.POSITIVE_INFINITY;
    return (
      sum + coilArea(coil, water) / scaleResistance(coil.scaleThickness, coil.scaleConductivity)
    );
  }, 0);
}

/**
 * Sends primary water through the coils. The coefficient is found once for each stretch, at the mean of its water and of
 * its primary; then every piece passes its layer with the exact exponential of its own conductance. Adds the heat it
 * leaves to `net`, [layer], W, unless `net` is null.
 * @param inlet  primary water at the coil's inlet, °C
 * @param T      [layer] °C
 * @returns primary water at the outlet, °C
 */
export function passCoil(
  run: CoilRun,
  inlet: Celsius,
  T: ArrayLike<number>,
  net: Float64Array | null,
): Celsius {
  const { heatRate, layer, size, stretch, tube } = run;
  let primary = inlet;
  let guess = 0; // W/K per size, the coefficient of the stretch before
  beside.whole = 0;
  for (let part = 0; part < tube.length; part++) {
    const first = stretch[part];
    const end = stretch[part + 1];
    const prepared = tube[part];
    let coefficient = 1;
    if (prepared !== null) {
      let whole = 0;
      let warmth = 0;
      for (let piece = first; piece < end; piece++) {
        whole += size[piece];
        warmth += size[piece] * T[layer[piece]];
      }
      const tank = warmth / whole;
      // Primary half way along: first guessed from the stretch before
      if (part === 0) guess = overallCoefficient(prepared, primary, tank, beside);
      const middle = tank + (primary - tank) / (1 + (0.5 * guess * whole) / heatRate);
      coefficient = overallCoefficient(prepared, middle, tank, beside);
      guess = coefficient;
    }
    let sized = Number.NaN;
    let left = 1; // share of the difference left after a piece; equal pieces share it
    for (let piece = first; piece < end; piece++) {
      const tank = T[layer[piece]];
      if (size[piece] !== sized) {
        sized = size[piece];
        left = exponential((-coefficient * sized) / heatRate);
      }
      const out = tank + (primary - tank) * left;
      if (net !== null) net[layer[piece]] += heatRate * (primary - out);
      primary = out;
    }
  }
  return primary;
}

/** Mean temperature of the water around the coils, weighted by the size of the pieces, °C. */
export function waterAroundCoil(run: CoilRun, T: ArrayLike<number>): Celsius {
  let sum = 0;
  let weight = 0;
  for (let piece = 0; piece < run.layer.length; piece++) {
    sum += run.size[piece] * T[run.layer[piece]];
    weight += run.size[piece];
  }
  return sum / weight;
}

/** Coils in series: flow that enters the lowest at the top meets the upper coil first. */
function inFlowOrder(variant: Variant): readonly Coil[] {
  const upwards = [...fittedCoils(variant)].sort((a, b) => a.bottom - b.bottom);
  return upwards[0].flowEnters === 'top' ? upwards.reverse() : upwards;
}

/** The layers a coil passes and the share of it in each, in flow order. */
function cut(coil: Coil, cylinder: Cylinder): { layer: number; share: number }[] {
  const pieces: { layer: number; share: number }[] = [];
  for (let layer = 0; layer < cylinder.layers; layer++) {
    const floor = layer * cylinder.layerHeight;
    const above = coil.top - floor;
    const below = coil.bottom - floor;
    // Whole layers get exactly the same share
    const inside =
      below <= 0 && above >= cylinder.layerHeight
        ? cylinder.layerHeight
        : Math.min(above, cylinder.layerHeight) - Math.max(below, 0);
    if (inside > 1e-9) pieces.push({ layer, share: inside / (coil.top - coil.bottom) });
  }
  return coil.flowEnters === 'top' ? pieces.reverse() : pieces;
}

const beside = anywhere(); // scratch: written and read within one call

const UNLIMITED = 100; // times the flow: the rest of the difference is lost in rounding
const STRETCHES = 5; // of one coil; a coefficient for every piece moves the recovery time by 0.05 %
