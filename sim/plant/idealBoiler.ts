import type { Celsius, Watts } from '../../shared/units.ts';
import { passCoil, waterAroundCoil } from './coil.ts';
import type { Limit } from '../../shared/result.ts';
import type { CoilPath } from './loop.ts';
import { alongPipe, type Primary, pipeLoss } from './primary.ts';
import type { Service } from './service.ts';

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
 * straight line, so the secant method settles in two or three rounds; where it is bent, near no heat at all, the rounds
 * are kept between a temperature that takes too little and one that takes too much.
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
  let slope = rate + radiatorRate;
  let tooLittle = Number.NEGATIVE_INFINITY;
  let tooMuch = Number.POSITIVE_INFINITY;
  let missBefore = Number.NaN;
  let step = Number.NaN;
  for (let round = 0; round < ROUNDS; round++) {
    const miss = heat - heatTaken(service, primary, flow, T, radiator);
    if (miss > 0) tooLittle = flow;
    else tooMuch = flow;
    if (round === 0) {
      // what a coil takes rises a little faster than its difference to the store
      if (flow > around && heat - miss > heat / 2) {
        slope = (STEEPER * (heat - miss)) / (flow - around);
      }
    } else {
      const steeper = (missBefore - miss) / step;
      if (steeper > 0) slope = steeper;
    }
    step = miss / slope;
    const lands = flow + step;
    const isInside = lands > tooLittle && lands < tooMuch;
    if (Math.abs(miss) < CLOSE) return flow;
    // Two good rounds: the next lands so close that it need not be tried
    if (isInside && Math.abs(miss) < NEAR && Math.abs(miss) < NEARER * Math.abs(missBefore)) {
      return lands;
    }
    if (!isInside) step = (tooLittle + tooMuch) / 2 - flow;
    flow += step;
    missBefore = miss;
  }
  return flow;
}

/**
 * Flow temperature of an ideal boiler at its limit, and the way of its water through pipes and coil. Adds the heat of the
 * coil to `net`, [layer], W.
 * @param output    the most it gives, W
 * @param target    of its flow, °C
 * @param radiator  water in the radiators, °C
 */
export function idealPath(
  service: Service,
  primary: Primary,
  limit: Limit,
  output: Watts,
  target: Celsius,
  T: ArrayLike<number>,
  radiator: Celsius,
  net: Float64Array,
  path: CoilPath & { flow: Celsius },
): void {
  const { coil } = service;
  path.coilInlet = Number.NaN;
  path.coilOutlet = Number.NaN;
  path.coilReturn = Number.NaN;
  path.coilHeat = 0;
  path.pipeLoss = 0;
  if (limit === 'flowLimit') path.flow = target;
  else if (limit === 'output' || limit === 'idle') {
    path.flow = flowFor(service, primary, limit === 'output' ? output : 0, T, radiator);
  } else path.flow = Number.NaN;
  if (coil === null) return;
  const { heatRate } = coil;
  path.coilInlet = alongPipe(primary, path.flow, heatRate);
  path.coilOutlet = passCoil(coil, path.coilInlet, T, net);
  path.coilHeat = heatRate * (path.coilInlet - path.coilOutlet);
  path.coilReturn = alongPipe(primary, path.coilOutlet, heatRate);
  path.pipeLoss =
    pipeLoss(path.flow, path.coilInlet, heatRate) +
    pipeLoss(path.coilOutlet, path.coilReturn, heatRate);
}

const GUESSED_EFFECTIVENESS = 0.5; // only a start
const STEEPER = 1.25; // only for the second try: 1.2 to 1.3 in a reheat from cold
const ROUNDS = 60;
const CLOSE = 1e-4; // W
const NEAR = 10; // W
const NEARER = 0.1; // of the miss before
