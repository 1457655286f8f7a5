import { plainVariant } from './plainVariant.ts';
import type { Variant } from '../../shared/variant.ts';

/** What a closed form leaves open; SI. The rest of the ideal variant does nothing. */
export interface Ideal {
  /** Heat held by the store, J/K. */
  readonly C: number;
  /** Coil over the whole height, W/K. */
  readonly UA: number;
  /** Primary mass flow times specific heat, W/K. */
  readonly mc: number;
  readonly output: number;
  readonly flowLimit: number;
  readonly cold: number;
  readonly setPoint: number;
  readonly differential: number;
  /** Loss of the store, W/K. */
  readonly loss: number;
  readonly surroundings: number;
  readonly layers: number;
  readonly duration: number;
  readonly height: number;
}

/** Heat of a cubic metre of the constant water, J/(m³ K): 1000 kg/m³ and 4180 J/(kg K). */
export const HEAT = 4.18e6;

/**
 * A store for closed forms: constant water, no wall, no pipes, no sensor lag, hot water only, a
 * known UA over the whole height. It breaks limits that people have to keep (no wall, one layer), so
 * it goes straight to the simulation. Left alone it holds 836 kJ/K, 800 W/K and 0.25 kg/s at 80 °C
 * without a limit of output.
 */
export function idealVariant(ideal: Partial<Ideal> = {}): Variant {
  const base = plainVariant('ideal');
  const { height = 1.2, duration = 7200, layers = 1 } = ideal;
  return {
    ...base,
    boiler: {
      ...base.boiler,
      output: ideal.output ?? 1e9,
      hotWaterFlow: ideal.flowLimit ?? 80,
    },
    primary: { ...base.primary, flow: (ideal.mc ?? 0.25 * 4180) / HEAT, length: 0, heatLoss: 0 },
    coil: {
      ...base.coil,
      given: 'conductance',
      conductance: ideal.UA ?? 800,
      bottom: 0,
      top: height,
      // the lowest layer gets most, so that the whole store stirs itself
      flowEnters: 'bottom',
    },
    cylinder: {
      ...base.cylinder,
      volume: (ideal.C ?? 836_000) / HEAT,
      height,
      wallThickness: 0,
      standingLoss: (ideal.loss ?? 0) * 45, // declared at 45 K above the surroundings
      surroundings: ideal.surroundings ?? 20,
    },
    stat: {
      ...base.stat,
      sensorHeight: height / 2,
      lag: 0,
      setPoint: ideal.setPoint ?? 60,
      differential: ideal.differential ?? 5,
    },
    draw: { ...base.draw, incomingCold: ideal.cold ?? 10, inletMixing: 0 },
    heating: { ...base.heating, arrangement: 'hotWaterOnly' },
    run: { duration, layers, water: 'constant' },
  };
}
