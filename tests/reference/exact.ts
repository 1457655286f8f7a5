/**
 * Answers in closed form, written without the code under test. SI and °C; properties constant.
 * Each names the textbook its formula comes from; none of them is a measurement.
 */
import { erf, erfc, scaledErfc, upperGamma } from './specialFunctions.ts';

/**
 * Time for a mixed tank beside a coil at one temperature, s. source: incropera, lumped capacitance
 */
export function timeBesideCoil(
  C: number,
  UA: number,
  coil: number,
  from: number,
  to: number,
): number {
  return (C / UA) * Math.log((coil - from) / (coil - to));
}

/** Mixed tank at constant power with loss, °C after t. source: incropera, lumped capacitance */
export function poweredTank(
  tank: { C: number; UA: number; around: number; start: number },
  power: number,
  t: number,
): number {
  const end = tank.around + power / tank.UA;
  return end + (tank.start - end) * Math.exp((-tank.UA * t) / tank.C);
}

/** Share of its heat a stream gives to water at one temperature. source: kaysLondon */
export function streamShare(UA: number, mc: number): number {
  return 1 - Math.exp(-UA / mc);
}

/** Time for a mixed tank behind a coil fed at one flow temperature, s. source: kaysLondon */
export function timeBehindStream(
  C: number,
  UA: number,
  mc: number,
  inlet: number,
  from: number,
  to: number,
): number {
  return timeBesideCoil(C, streamShare(UA, mc) * mc, inlet, from, to);
}

/**
 * The same with a boiler of limited output first, then limited flow temperature: both times, s, and
 * the change-over, °C.
 */
export function cappedHeatUp(
  coil: { C: number; UA: number; mc: number },
  cap: { power: number; flow: number },
  from: number,
  to: number,
): { changeOver: number; limited: number; fading: number } {
  const K = streamShare(coil.UA, coil.mc) * coil.mc;
  const changeOver = cap.flow - cap.power / K;
  const limited = (coil.C * (changeOver - from)) / cap.power;
  return { changeOver, limited, fading: timeBesideCoil(coil.C, K, cap.flow, changeOver, to) };
}

/**
 * A step of temperature in an endless still column after t, °C at x from it. source: carslawJaeger
 */
export function stepInColumn(
  cold: number,
  hot: number,
  x: number,
  alpha: number,
  t: number,
): number {
  return (cold + hot) / 2 + ((hot - cold) / 2) * erf(x / (2 * Math.sqrt(alpha * t)));
}

/** Thickness of that step between 10 % and 90 %, m. source: carslawJaeger; erf(0.9061938) = 0.8 */
export function frontThickness(alpha: number, t: number): number {
  return 4 * 0.9061938024368232 * Math.sqrt(alpha * t);
}

/**
 * Outlet of N mixed tanks in a row after theta contents, °C, from hot with cold coming in. source:
 * levenspiel
 */
export function tanksInSeries(N: number, theta: number, hot: number, cold: number): number {
  return cold + (hot - cold) * upperGamma(N, N * theta);
}

/**
 * A closed column, cold below b and hot above, after t, °C at height z. source: carslawJaeger,
 * cosine series
 */
export function closedColumn(
  column: { height: number; b: number; cold: number; hot: number; alpha: number },
  z: number,
  t: number,
): number {
  const { height, b, cold, hot, alpha } = column;
  let T = (hot * (height - b) + cold * b) / height;
  for (let n = 1; n < 400; n++) {
    const w = (n * Math.PI) / height;
    const size = ((2 * (hot - cold)) / (n * Math.PI)) * Math.sin(w * b);
    T -= size * Math.cos(w * z) * Math.exp(-alpha * w * w * t);
  }
  return T;
}

/** A mixed tank left to cool, °C after t. source: incropera, lumped capacitance */
export function coolingTank(
  C: number,
  UA: number,
  start: number,
  around: number,
  t: number,
): number {
  return around + (start - around) * Math.exp((-UA * t) / C);
}

/** Loss conductance read back from a cool-down, W/K. source: incropera, lumped capacitance */
export function lossFromCooling(
  C: number,
  t: number,
  from: number,
  to: number,
  around: number,
): number {
  return (C / t) * Math.log((from - around) / (to - around));
}

/** Times on and off of a heater that holds a mixed tank between two temperatures, s. */
export function cycleTimes(
  tank: { C: number; UA: number; around: number },
  power: number,
  cutIn: number,
  cutOut: number,
): { on: number; off: number } {
  const end = tank.around + power / tank.UA;
  const tau = tank.C / tank.UA;
  return {
    on: tau * Math.log((end - cutIn) / (end - cutOut)),
    off: tau * Math.log((cutOut - tank.around) / (cutIn - tank.around)),
  };
}

/**
 * Primary through layers one after the other: outlet, °C, and heat given, W. source: kaysLondon,
 * layer by layer
 */
export function streamThroughLayers(
  layers: readonly number[], // °C, in flow order
  inlet: number,
  UA: number,
  mc: number,
): { outlet: number; heat: number } {
  let T = inlet;
  for (const layer of layers) T = layer + (T - layer) * Math.exp(-UA / mc / layers.length);
  return { outlet: T, heat: mc * (inlet - T) };
}

/**
 * Steady column, top held, side losing, bottom insulated, °C at height z. source: incropera, fin
 * equation
 */
export function steadyColumn(
  column: { k: number; area: number; loss: number; height: number; top: number; around: number },
  z: number,
): number {
  const m = Math.sqrt(column.loss / (column.k * column.area));
  const share = Math.cosh(m * z) / Math.cosh(m * column.height);
  return column.around + (column.top - column.around) * share;
}

/** Front that moves at v and spreads with D, share of the step at x after t. source: ogataBanks */
export function movingFront(x: number, t: number, v: number, D: number): number {
  const spread = 2 * Math.sqrt(D * t);
  const far = (x + v * t) / spread;
  // exp(v x / D) × erfc(far) with the exponents added first: apart, one overflows while the other
  // vanishes
  const second = Math.exp((v * x) / D - far * far) * scaledErfc(far);
  return 0.5 * (erfc((x - v * t) / spread) + second);
}

/**
 * Cold zone of share f under hot water, heated below: time to merge, and to reach a temperature, s.
 * Energy balance.
 */
export function twoZoneReheat(
  C: number,
  f: number,
  cold: number,
  hot: number,
  power: number,
  target: number,
): { merge: number; reached: number } {
  const merge = (f * C * (hot - cold)) / power;
  return { merge, reached: merge + (C * (target - hot)) / power };
}
