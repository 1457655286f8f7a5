import { PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import { fittedCoils } from '../../shared/fittedCoils.ts';
import type { Celsius, JoulesPerKelvin, Watts } from '../../shared/units.ts';
import type { Coil, Variant } from '../../shared/variant.ts';
import { metals } from '../closures/metals.ts';
import { volumetricHeat, type Water } from '../closures/water.ts';
import type { CoilRun } from './coil.ts';
import { tubeBore, tubeLength, tubeOf } from './coilTube.ts';

/**
 * The water that stands in the coils, in two halves: the one the flow enters and the one it leaves. While it runs they carry
 * it along; when it stops they give their heat to the store. Fixed during a run.
 */
export interface RestingCoil {
  /** Water and tube of one half, J/K; 0 where nothing is known of the tube. */
  readonly halfCapacity: JoulesPerKelvin;
  /** [half] [piece] what one piece passes for each kelvin while the water stands, W/K. */
  readonly conductance: readonly [Float64Array, Float64Array];
  /** [piece] the layer it lies in. */
  readonly layer: Int32Array;
}

/** @param run  the coils cut into pieces, in flow order */
export function makeRestingCoil(variant: Variant, run: CoilRun, water: Water): RestingCoil {
  const whole = run.size.reduce((sum, size) => sum + size, 0);
  const conductance = [0, 1].map(() => new Float64Array(run.size.length));
  let passed = 0;
  run.size.forEach((size, piece) => {
    const half = passed + size / 2 < whole / 2 ? 0 : 1;
    conductance[half][piece] = size * run.still[piece];
    passed += size;
  });
  return {
    halfCapacity:
      fittedCoils(variant).reduce((sum, coil) => sum + coilCapacity(coil, water), 0) / 2,
    conductance: [conductance[0], conductance[1]],
    layer: run.layer,
  };
}

/**
 * Heat one half gives to the store, W; adds it to `net`, [layer], W.
 * @param half   0 where the flow enters, 1 where it leaves
 * @param water  standing in it, °C
 * @param T      store, [layer] °C
 */
export function restingHeat(
  { conductance, layer }: RestingCoil,
  half: 0 | 1,
  water: Celsius,
  T: ArrayLike<number>,
  net: Float64Array,
): Watts {
  let given = 0;
  for (let piece = 0; piece < layer.length; piece++) {
    const passes = conductance[half][piece];
    if (passes === 0) continue;
    const heat = passes * (water - T[layer[piece]]);
    net[layer[piece]] += heat;
    given += heat;
  }
  return given;
}

/**
 * How fast the standing water and the layers around it come together, 1/s, for the length of a step.
 * @param layerCapacity  of one layer of the store, J/K
 */
export function restingRate(
  { conductance, halfCapacity }: RestingCoil,
  layerCapacity: JoulesPerKelvin,
): number {
  if (halfCapacity === 0) return 0;
  let fastest = 0;
  for (const half of conductance) {
    let whole = 0;
    let most = 0;
    for (const piece of half) {
      whole += piece;
      most = Math.max(most, piece);
    }
    fastest = Math.max(fastest, whole / halfCapacity + (2 * most) / layerCapacity);
  }
  return fastest;
}

/**
 * What a coil passes while the water in it stands, W/(m² K) of outside area: still water inside, the solid parts, and the
 * store outside. The inside decides, so the outside is one figure.
 */
export function stillCoefficient(coil: Coil, water: Water): number {
  const { outsideDiameter, insideDiameter, scaleThickness, scaleConductivity } = tubeOf(coil);
  // source: vdiCoil, Nusselt number of a round tube without flow, 3.66; from memory
  const inside = (3.66 * water.conductivity(PRIMARY_TEMPERATURE)) / insideDiameter;
  return (
    1 /
    (outsideDiameter / insideDiameter / inside +
      scaleThickness / scaleConductivity +
      1 / STILL_OUTSIDE)
  );
}

/** Heat held by the water and the tube of a coil, J/K; nothing is known of the tube behind a known conductance. */
function coilCapacity(coil: Coil, water: Water): JoulesPerKelvin {
  if (coil.given === 'conductance') return 0;
  const length = tubeLength(coil, water);
  const bore = tubeBore(coil);
  const inside = (Math.PI / 4) * bore * bore * length;
  const whole = (Math.PI / 4) * coil.tubeOutside * coil.tubeOutside * length;
  return (
    inside * volumetricHeat(water, PRIMARY_TEMPERATURE) +
    (whole - inside) * metals[coil.tubeMaterial].volumetricHeat
  );
}

// engineering guess, no source: a few kelvins of difference by Churchill and Chu; a factor of two moves the whole by a tenth
const STILL_OUTSIDE = 600; // W/(m² K)
