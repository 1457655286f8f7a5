import type { Celsius, Watts } from '../../shared/units.ts';
import { type CoilRun, passCoil, waterAroundCoil } from './coil.ts';
import { alongPipe, type Primary } from './primary.ts';

/** What the boiler serves at the moment: which circuits are open, and the limit of its flow. */
export interface Service {
  /** The coil at its present flow, or null when shut. */
  readonly coil: CoilRun | null;
  /** Flow through the radiators times specific heat, W/K; 0 when shut. */
  readonly radiatorRate: number;
  readonly flowLimit: Celsius;
}

/**
 * Heat the open circuits take from the boiler at one flow temperature, W.
 * @param flow      leaving the boiler, °C
 * @param T         store, [layer] °C
 * @param radiator  water in the radiators, °C
 */
export function heatTaken(
  service: Service,
  primary: Primary,
  flow: Celsius,
  T: ArrayLike<number>,
  radiator: Celsius,
): Watts {
  const { coil, radiatorRate } = service;
  const toRadiators = radiatorRate * (flow - radiator);
  if (coil === null) return toRadiators;
  const inlet = alongPipe(primary, flow, coil.heatRate);
  const outlet = passCoil(coil, inlet, T, null);
  return toRadiators + coil.heatRate * (flow - alongPipe(primary, outlet, coil.heatRate));
}

/**
 * The flow temperature at which the open circuits take a given heat, °C. What they take rises with it, nearly in a
 * straight line, so the secant method settles in two or three rounds; it stops when the round after next would change
 * nothing that matters.
 * @param heat   to be taken, W: full output, or 0 for a boiler that gives nothing
 */
export function flowFor(
  service: Service,
  primary: Primary,
  heat: Watts,
  T: ArrayLike<number>,
  radiator: Celsius,
): Celsius {
  const { coil, radiatorRate } = service;
  if (coil === null) return radiator + heat / radiatorRate;
  const around = waterAroundCoil(coil, T);
  const rate = coil.heatRate * GUESSED_EFFECTIVENESS;
  // First guess: as if the coil passed a fixed part of what flow and store allow
  let flow = (heat + rate * around + radiatorRate * radiator) / (rate + radiatorRate);
  let taken = heatTaken(service, primary, flow, T, radiator);
  let slope = taken > heat / 2 && flow > around ? taken / (flow - around) : rate + radiatorRate;
  for (let round = 0; round < ROUNDS; round++) {
    const step = (heat - taken) / slope;
    flow += step;
    const before = taken;
    taken = heatTaken(service, primary, flow, T, radiator);
    const missed = Math.abs(heat - taken);
    if (missed < CLOSE) break;
    const steeper = (taken - before) / step;
    if (!(steeper > 0)) break;
    slope = steeper;
    // The next step lands within the square of this miss: take it and be done
    if (missed < NEAR) return flow + (heat - taken) / slope;
  }
  return flow;
}

const GUESSED_EFFECTIVENESS = 0.5; // only a start
const ROUNDS = 30;
const CLOSE = 1e-4; // W
const NEAR = 10; // W; a step from here misses by far less than a thousandth of it
