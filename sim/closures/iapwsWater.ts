import { ZERO_CELSIUS } from '../../shared/units.ts';
import { exponential, logarithm } from '../../shared/portableMaths.ts';

/**
 * Liquid water at 0.1 MPa exactly as IAPWS SR6-08(2011) gives it, for checks and for building the
 * tables of waterFit. Range −20 to 110 °C (conductivity from 0 °C); outside it the formulas are
 * extended, and nothing vouches for them.
 */

// source: iapwsLiquid, constants of the Release
const R = 461.51805; // J/(kg K)
const P0 = 0.1e6; // Pa
const TR = 10; // K
const TA = 593; // K
const TB = 232; // K

/** Gibbs energy, J/kg. @param t  °C */
export function iapwsGibbs(t: number): number {
  const T = t + ZERO_CELSIUS;
  const tau = T / TR;
  const series = sum(A_HEAT, alpha(T), 0) + sum(B_HEAT, beta(T), 0);
  return R * TR * (C[0] + C[1] * tau + C[2] * tau * logarithm(tau) + series);
}

/** Entropy, J/(kg K). @param t  °C */
export function iapwsEntropy(t: number): number {
  const T = t + ZERO_CELSIUS;
  const series = sum(A_HEAT, alpha(T), 1) - sum(B_HEAT, beta(T), 1);
  return -R * (C[1] + C[2] * (1 + logarithm(T / TR)) + series);
}

/** Enthalpy, J/kg, zero near 0 °C. @param t  °C */
export function iapwsEnthalpy(t: number): number {
  return iapwsGibbs(t) + (t + ZERO_CELSIUS) * iapwsEntropy(t);
}

/** Specific heat at constant pressure, J/(kg K). @param t  °C */
export function iapwsSpecificHeat(t: number): number {
  const T = t + ZERO_CELSIUS;
  return -R * (C[2] + (T / TR) * (sum(A_HEAT, alpha(T), 2) + sum(B_HEAT, beta(T), 2)));
}

/** Specific volume, m³/kg. @param t  °C */
export function iapwsVolume(t: number): number {
  const T = t + ZERO_CELSIUS;
  return ((R * TR) / P0) * (A5 + sum(A_VOLUME, alpha(T), 0) + sum(B_VOLUME, beta(T), 0));
}

/** Density, kg/m³. @param t  °C */
export function iapwsDensity(t: number): number {
  return 1 / iapwsVolume(t);
}

/** Change of specific volume with temperature, m³/(kg K). @param t  °C */
export function iapwsVolumeSlope(t: number): number {
  const T = t + ZERO_CELSIUS;
  return (R / P0) * (sum(A_VOLUME, alpha(T), 1) - sum(B_VOLUME, beta(T), 1));
}

/** Expansion coefficient, 1/K; negative below 4 °C. @param t  °C */
export function iapwsExpansion(t: number): number {
  return iapwsVolumeSlope(t) / iapwsVolume(t);
}

/** Viscosity, Pa s. @param t  °C */
export function iapwsViscosity(t: number): number {
  return 1e-6 * powers(VISCOSITY, (t + ZERO_CELSIUS) / 300);
}

/** Thermal conductivity, W/(m K). @param t  °C */
export function iapwsConductivity(t: number): number {
  return powers(CONDUCTIVITY, (t + ZERO_CELSIUS) / 300);
}

const alpha = (T: number): number => TR / (TA - T);
const beta = (T: number): number => TR / (T - TB);

/** Σ c xⁿ (order 0), Σ n c xⁿ⁺¹ (order 1) or Σ n (n + 1) c xⁿ⁺² (order 2). */
function sum(terms: readonly Pair[], x: number, order: 0 | 1 | 2): number {
  let total = 0;
  for (const [c, n] of terms) {
    const factor = order === 0 ? 1 : order === 1 ? n : n * (n + 1);
    total += factor * c * wholePower(x, n + order);
  }
  return total;
}

function powers(terms: readonly Pair[], x: number): number {
  const log = logarithm(x);
  let total = 0;
  for (const [c, n] of terms) total += c * exponential(n * log);
  return total;
}

function wholePower(x: number, n: number): number {
  let result = 1;
  for (let i = 0; i < n; i++) result *= x;
  return result;
}

/** Coefficient and exponent. */
type Pair = readonly [number, number];

// source: iapwsLiquid, table of thermodynamic coefficients
const C = [-2.452093414e2, 3.869269598e1, -8.983025854] as const;
const A5 = 1.93763157e-2;
const A_HEAT: readonly Pair[] = [
  [-1.661470539e5, 4],
  [2.70878164e6, 5],
  [-1.557191544e8, 7],
];
const B_HEAT: readonly Pair[] = [
  [-8.237426256e-1, 2],
  [1.908956353, 3],
  [-2.017597384, 4],
  [8.546361348e-1, 5],
];
const A_VOLUME: readonly Pair[] = [
  [6.74458446e3, 4],
  [-2.22521604e5, 5],
  [1.00231247e8, 7],
  [-1.63552118e9, 8],
  [8.32299658e9, 9],
];
const B_VOLUME: readonly Pair[] = [
  [5.78545292e-3, 1],
  [-1.53195665e-2, 2],
  [3.11337859e-2, 3],
  [-4.23546241e-2, 4],
  [3.38713507e-2, 5],
  [-1.19946761e-2, 6],
];

// source: iapwsLiquid, transport properties (coefficients of the power sums in T/300 K)
const VISCOSITY: readonly Pair[] = [
  [280.68, -1.9],
  [511.45, -7.7],
  [61.131, -19.6],
  [0.45903, -40],
];
const CONDUCTIVITY: readonly Pair[] = [
  [1.663, -1.15],
  [-1.7781, -3.4],
  [1.1567, -6.0],
  [-0.432115, -7.6],
];
