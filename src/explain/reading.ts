import type { Quantity, Result } from '../../shared/result.ts';
import { layerAt, profileAt, valueAt } from '../../shared/sampleAt.ts';
import type { Celsius, CubicMetres, Seconds, WattsPerKelvin } from '../../shared/units.ts';
import type { Cylinder } from '../../shared/variant.ts';
import { MIXED } from '../../sim/closures/mixedLitres.ts';
import { constantWater, tabulatedWater } from '../../sim/closures/water.ts';

/** As much of a run, of a reheat or of a day, as one moment is read from. */
export type Sampled = Pick<Result, 'variant' | 'trace'>;

/** What can be read off a run at one moment. */
export interface Reading {
  readonly at: Seconds;
  readonly of: (quantity: Quantity) => number;
  /** [layer] °C */
  readonly layers: readonly Celsius[];
  /** Flow times specific heat of the primary, W/K; NaN while the coil does not run. */
  readonly heatRate: WattsPerKelvin;
  /** What the coil conducts, W/K; NaN while it does not run. */
  readonly conductance: WattsPerKelvin;
  /** Water at 40 °C or above. */
  readonly hotVolume: CubicMetres;
  /** Its mean temperature; NaN when there is none. */
  readonly hotMean: Celsius;
  readonly mean: Celsius;
  /** Mean over the surface of the cylinder: side, and the two ends. */
  readonly surfaceMean: Celsius;
  /** Water within 0.5 K of the top. */
  readonly topVolume: CubicMetres;
  readonly atSensor: Celsius;
}

/** Reads a run at a moment, straight between two samples. */
export function readingAt(result: Sampled, at: Seconds): Reading {
  const { trace, variant } = result;
  const of = (quantity: Quantity) => valueAt(trace.time, trace.of[quantity], at);
  const layers = profileAt(trace, at);
  const layerVolume = variant.cylinder.volume / layers.length;
  const hot = layers.filter((T) => T >= MIXED);
  const top = layers[layers.length - 1];
  const drop = of('coilInlet') - of('coilOutlet');
  const heatRate = of('coilHeat') / drop;
  // the share of its heat that the stream gives up, turned round to what must have conducted it
  const share = drop / (of('coilInlet') - of('coilWater'));
  return {
    at,
    of,
    layers,
    heatRate,
    conductance: share > 0 && share < 1 ? -heatRate * Math.log1p(-share) : Number.NaN,
    hotVolume: hot.length * layerVolume,
    hotMean: mean(hot),
    mean: mean(layers),
    surfaceMean: surfaceMean(layers, variant.cylinder),
    topVolume: layers.filter((T) => Math.abs(T - top) < 0.5).length * layerVolume,
    atSensor: layerAt(layers, variant.stat.sensorHeight / variant.cylinder.height),
  };
}

/** The water of a run, as the model takes it. */
export function waterOf({ variant }: Pick<Sampled, 'variant'>) {
  return variant.run.water === 'constant' ? constant : measured;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

/** Heat is lost through the side of every layer and through the two ends. */
function surfaceMean(layers: readonly Celsius[], { volume, height }: Cylinder): Celsius {
  const end = volume / height;
  const side = Math.sqrt(4 * Math.PI * end) * height;
  const ends = (layers[0] + layers[layers.length - 1]) * end;
  return (mean(layers) * side + ends) / (side + 2 * end);
}

const measured = tabulatedWater();
const constant = constantWater();
