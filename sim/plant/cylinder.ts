import { incomingCold } from '../../shared/coldWater.ts';
import type { CubicMetres, Metres, Watts } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { layerConductance } from '../closures/conduction.ts';
import { lossPerKelvin } from '../closures/storeLoss.ts';
import { volumetricHeat, type Water } from '../closures/water.ts';
import { metals } from '../closures/metals.ts';

/** The stratified store, cut into equal layers. Fixed during a run. */
export interface Cylinder {
  readonly layers: number;
  readonly layerHeight: Metres;
  readonly layerVolume: CubicMetres;
  /** Heat held by the water of one cubic metre and kelvin, J/(m³ K). */
  readonly waterHeat: number;
  /** Water and wall of one layer, J/K. */
  readonly layerCapacity: number;
  /** Between neighbouring layer centres, W/K. */
  readonly conductance: number;
  /** To the surroundings, [layer], W/K. */
  readonly lossConductance: Float64Array;
  /** To the surroundings from all layers below this one, [layer, and above the last], W/K. */
  readonly lossUpTo: Float64Array;
  readonly surroundings: number;
}

/**
 * Cuts a cylinder into layers. Heat held is taken as proportional to temperature with the water's density times specific
 * heat at 35 °C: against the true heat of a fixed volume from 10 to 60 °C that is wrong by less than 0.1 %.
 */
export function makeCylinder(variant: Variant, water: Water): Cylinder {
  const { volume, height, wallMaterial, wallThickness, surroundings, stirring } = variant.cylinder;
  const layers = variant.run.layers;
  const layerHeight = height / layers;
  const area = volume / height;
  const diameter = 2 * Math.sqrt(area / Math.PI);
  const metal = metals[wallMaterial];
  const side = Math.PI * diameter * layerHeight;
  const waterHeat = volumetricHeat(water, BOOK_TEMPERATURE);

  // Standing loss spread over the surface: side, and the two ends on the first and last layer
  const perArea = lossPerKelvin(variant.cylinder) / (side * layers + 2 * area);
  const lossConductance = new Float64Array(layers).fill(perArea * side);
  lossConductance[0] += perArea * area;
  lossConductance[layers - 1] += perArea * area;
  const lossUpTo = new Float64Array(layers + 1);
  for (let layer = 0; layer < layers; layer++)
    lossUpTo[layer + 1] = lossUpTo[layer] + lossConductance[layer];

  return {
    layers,
    layerHeight,
    layerVolume: volume / layers,
    waterHeat,
    layerCapacity: (waterHeat * volume) / layers + metal.volumetricHeat * side * wallThickness,
    conductance: layerConductance(
      water.conductivity(BOOK_TEMPERATURE) * stirring,
      diameter,
      metal.conductivity,
      wallThickness,
      layerHeight,
    ),
    lossConductance,
    lossUpTo,
    surroundings,
  };
}

/** Layer temperatures when the run starts, [layer], °C: cold below, hot above, a straight boundary between. */
export function cylinderStart(cylinder: Cylinder, variant: Variant): Float64Array {
  const { hotShare, hotTemperature, boundary } = variant.start;
  const cold = incomingCold(variant.draw);
  const { height } = variant.cylinder;
  const centre = height * (1 - hotShare);
  const warmth = (z: Metres) =>
    boundary > 0 ? clamp((z - centre) / boundary + 0.5) : z > centre ? 1 : 0;
  return Float64Array.from({ length: cylinder.layers }, (_, layer) => {
    const share =
      hotShare <= 0 ? 0 : hotShare >= 1 ? 1 : warmth((layer + 0.5) * cylinder.layerHeight);
    return cold + share * (hotTemperature - cold);
  });
}

/** Adds heat conducted between layers to `net`, [layer], W. */
export function conductionRates(
  { layers, conductance }: Cylinder,
  T: ArrayLike<number>,
  net: Float64Array,
): void {
  for (let layer = 1; layer < layers; layer++) {
    const up = conductance * (T[layer - 1] - T[layer]);
    net[layer - 1] -= up;
    net[layer] += up;
  }
}

/** Takes the standing loss from `net`, [layer], W, and returns all of it, W. */
export function standingLossRates(
  { layers, lossConductance, surroundings }: Cylinder,
  T: ArrayLike<number>,
  net: Float64Array,
): Watts {
  let whole = 0;
  for (let layer = 0; layer < layers; layer++) {
    const loss = lossConductance[layer] * (T[layer] - surroundings);
    net[layer] -= loss;
    whole += loss;
  }
  return whole;
}

/** The temperature between two layer centres is a straight line; beyond the last centres it stays. */
export function temperatureAt(cylinder: Cylinder, T: ArrayLike<number>, height: Metres): number {
  const below = lowerLayer(cylinder, height);
  if (below < 0) return T[0];
  if (below >= cylinder.layers - 1) return T[cylinder.layers - 1];
  const share = height / cylinder.layerHeight - 0.5 - below;
  return T[below] + share * (T[below + 1] - T[below]);
}

/** The layer whose centre is next below a height; -1 when there is none. */
export function lowerLayer(cylinder: Cylinder, height: Metres): number {
  return Math.floor(height / cylinder.layerHeight - 0.5);
}

function clamp(x: number): number {
  return Math.min(1, Math.max(0, x));
}

const BOOK_TEMPERATURE = 35; // °C, middle of a heat-up from 10 to 60 °C
