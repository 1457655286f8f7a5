/**
 * exp, log and roots built from + − × ÷ and the square root alone, which every engine rounds alike.
 * The built-in ones are free to differ in the last bit and do: between two versions of one engine
 * all of them did, also `**`. A run must give the same bits everywhere, so the model uses these.
 * Each is within 1e-15 of the value.
 */

/** e to the power x. 0 below −745, infinite above 709.78. */
export function exponential(x: number): number {
  if (x > 709.78) return Number.POSITIVE_INFINITY;
  if (x < -745) return 0;
  const n = Math.round(x * LOG2_E);
  const r = x - n * LN2_HIGH - n * LN2_LOW;
  return (1 + r * seriesOfGrowth(r)) * POWERS_OF_TWO[n + LOWEST];
}

/** e to the power x, less 1; keeps its figures near x = 0. */
export function exponentialLessOne(x: number): number {
  return x > -0.35 && x < 0.35 ? x * seriesOfGrowth(x) : exponential(x) - 1;
}

/** Natural logarithm of a number above 0 (and not below 1e-307). */
export function logarithm(x: number): number {
  number[0] = x;
  let n = (halves[1] >>> 20) - 1023;
  halves[1] = (halves[1] & 0x000fffff) | 0x3ff00000;
  let m = number[0]; // 1 to 2
  if (m > Math.SQRT2) {
    m *= 0.5;
    n++;
  }
  const s = (m - 1) / (m + 1);
  const q = s * s;
  // q/3 + q²/5 + … to q¹¹/23
  const late = q * (ODD_15 + q * (ODD_17 + q * (ODD_19 + q * (ODD_21 + q * ODD_23))));
  const sum =
    q * (ODD_3 + q * (ODD_5 + q * (ODD_7 + q * (ODD_9 + q * (ODD_11 + q * (ODD_13 + late))))));
  return n * LN2_HIGH + (n * LN2_LOW + 2 * s * (1 + sum));
}

/** Cube root of a number that is not negative. */
export function cubeRoot(x: number): number {
  if (x === 0) return 0;
  if (x < 1e-290) return cubeRoot(x * TWO_TO_162) / TWO_TO_54;
  // A third of the exponent is a start within 5 %; each step of Halley's method cubes the miss
  number[0] = x;
  halves[1] = Math.trunc(halves[1] / 3) + 715094163;
  halves[0] = 0;
  let y = number[0];
  for (let step = 0; step < 3; step++) {
    const cube = y * y * y;
    y *= (cube + 2 * x) / (2 * cube + x);
  }
  return y;
}

/** Cosine of a whole turn times x: 1 at every whole number. */
export function cosineOfTurns(x: number): number {
  const part = Math.abs(x - Math.round(x)); // 0 to a half
  // A half turn is twice a quarter: the series is only asked within a quarter of a turn
  const half = part > 0.25 ? 0.5 - part : part;
  const q = -4 * Math.PI * Math.PI * half * half;
  const late = q * (C12 + q * (C14 + q * (C16 + q * (C18 + q * C20))));
  const sum = 1 + q * (C2 + q * (C4 + q * (C6 + q * (C8 + q * (C10 + late)))));
  return part > 0.25 ? -sum : sum;
}

/**
 * (eʳ − 1) / r for r within ± 0.35, to rounding: its series 1 + r/2! + r²/3! + …, even and odd powers apart so that
 * neither waits for the other.
 */
function seriesOfGrowth(r: number): number {
  const q = r * r;
  const even = 1 + q * (C3 + q * (C5 + q * (C7 + q * (C9 + q * (C11 + q * C13)))));
  const odd = C2 + q * (C4 + q * (C6 + q * (C8 + q * (C10 + q * (C12 + q * C14)))));
  return even + r * odd;
}

// [k] 1/k!
const C2 = 1 / 2;
const C3 = 1 / 6;
const C4 = 1 / 24;
const C5 = 1 / 120;
const C6 = 1 / 720;
const C7 = 1 / 5040;
const C8 = 1 / 40_320;
const C9 = 1 / 362_880;
const C10 = 1 / 3_628_800;
const C11 = 1 / 39_916_800;
const C12 = 1 / 479_001_600;
const C13 = 1 / 6_227_020_800;
const C14 = 1 / 87_178_291_200;
const C16 = 1 / 20_922_789_888_000;
const C18 = 1 / 6_402_373_705_728_000;
const C20 = 1 / 2_432_902_008_176_640_000;

// [k] 1/k
const ODD_3 = 1 / 3;
const ODD_5 = 1 / 5;
const ODD_7 = 1 / 7;
const ODD_9 = 1 / 9;
const ODD_11 = 1 / 11;
const ODD_13 = 1 / 13;
const ODD_15 = 1 / 15;
const ODD_17 = 1 / 17;
const ODD_19 = 1 / 19;
const ODD_21 = 1 / 21;
const ODD_23 = 1 / 23;

// One number seen as two halves of 32 bits, the lower one first as on every machine in use.
// Scratch: written and read within one call
const number = new Float64Array(1);
const halves = new Uint32Array(number.buffer);

// Natural logarithm of 2 in two parts, the first short enough that whole multiples of it are exact
const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const LOG2_E = Math.LOG2E;

const TWO_TO_54 = 2 ** 54; // whole powers of two are exact everywhere
const TWO_TO_162 = 2 ** 162;

const LOWEST = 1080;
const POWERS_OF_TWO = powersOfTwo(); // [exponent + LOWEST], −1080 to 1024

function powersOfTwo(): Float64Array {
  const powers = new Float64Array(LOWEST + 1025);
  powers[LOWEST] = 1;
  for (let n = 1; n <= 1023; n++) powers[LOWEST + n] = powers[LOWEST + n - 1] * 2;
  for (let n = 1; n <= LOWEST; n++) powers[LOWEST - n] = powers[LOWEST - n + 1] / 2;
  return powers;
}
