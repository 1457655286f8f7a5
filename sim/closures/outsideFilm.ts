import { prandtlFactor } from './coilOutside.ts';
import { lastFew } from './lastFew.ts';
import { sixthRoot } from './power.ts';
import { rayleigh } from './rayleigh.ts';
import { SmoothTable } from './smoothTable.ts';
import { prandtl, type Water } from './water.ts';

/**
 * The outside coefficient of a coil prepared for a run: h = (a + b y)², y the sixth root of the
 * difference between tube and water, with a and b kept as smooth cubic pieces against film
 * temperature, 1 K apart from 0 to 110 °C, end values kept outside. Within 1e-4 of the direct
 * formula from 8 to 95 °C. Reading it allocates nothing.
 */
export class OutsideFilm {
  /**
   * [piece × 8] coefficients of 1, u, u², u³ for a, √(W/(m² K)), then for b, the same per K^(1/6).
   */
  readonly pieces: Float64Array;
  readonly water: Water;
  readonly diameter: number;
  readonly enhancement: number;

  /**
   * @param water        the stored water
   * @param diameter     tube outside diameter, m
   * @param enhancement  pure number on h
   */
  constructor(water: Water, diameter: number, enhancement: number) {
    this.water = water;
    this.diameter = diameter;
    this.enhancement = enhancement;
    const scale = (film: number): number =>
      Math.sqrt((enhancement * water.conductivity(film)) / diameter);
    const still = new SmoothTable(0, PIECES, PIECES, (film) => 0.6 * scale(film));
    const convective = new SmoothTable(0, PIECES, PIECES, (film) => {
      const root = sixthRoot(rayleigh(water, diameter, film, 1));
      return 0.387 * scale(film) * root * prandtlFactor(prandtl(water, film));
    });
    this.pieces = new Float64Array(8 * PIECES);
    for (let i = 0; i < PIECES; i++) {
      this.pieces.set(still.pieces.subarray(4 * i, 4 * i + 4), 8 * i);
      this.pieces.set(convective.pieces.subarray(4 * i, 4 * i + 4), 8 * i + 4);
    }
  }

  /** h, W/(m² K). @param film  °C @param difference  between tube and water, K, not negative */
  coefficient(film: number, difference: number): number {
    return this.coefficientAtRoot(film, sixthRoot(difference));
  }

  /** h, W/(m² K). @param film  °C @param y  sixth root of the difference, K^(1/6) */
  coefficientAtRoot(film: number, y: number): number {
    const i = piece(film);
    const u = within(film) - i;
    const c = this.pieces;
    const k = 8 * i;
    const a = c[k] + u * (c[k + 1] + u * (c[k + 2] + u * c[k + 3]));
    const b = c[k + 4] + u * (c[k + 5] + u * (c[k + 6] + u * c[k + 7]));
    const root = a + b * y;
    return root * root;
  }

  /**
   * h at the surface temperature that balances the heat that arrives with the heat that leaves,
   * W/(m² K). The unknown is y, the sixth root of the difference between surface and tank, for then
   * no root is left in
   *   y⁶ (1 + R h) = D.
   * The left side is nearly a power of y, so a step of Newton's method between logarithms lands
   * almost on the answer; two steps are the rule, one beside a balance just found; more are only
   * taken for a film that crosses 4 °C, where convection almost stops.
   * @param resistance  R, from the hot side to the surface, per outside area, m² K/W
   * @param hot         temperature beyond that resistance, °C; may be below `tank`
   * @param tank        °C
   * @param beside      a balance found before at a place much like it, and written with this one
   */
  balanced(resistance: number, hot: number, tank: number, beside: Balance = anywhere()): number {
    const whole = Math.abs(hot - tank); // D, K
    // Without a difference the tube only conducts into still water
    if (whole < 1e-300) return this.coefficientAtRoot(tank, 0);
    const half = hot < tank ? -0.5 : 0.5; // film beyond tank for each kelvin of surface beyond tank
    const moved = whole / beside.whole;
    let y =
      moved > 1 / MOST_MOVED && moved < MOST_MOVED
        ? beside.y * ratioPower(moved, beside.exponent)
        : this.#firstRoot(resistance, whole, tank, half);
    let h = Number.NaN;
    const c = this.pieces;
    for (let count = 0; count < MOST_STEPS; count++) {
      const surplus = sixthPower(y); // K, surface beyond tank
      const film = tank + half * surplus;
      const i = piece(film);
      const u = within(film) - i;
      const k = 8 * i;
      const a = c[k] + u * (c[k + 1] + u * (c[k + 2] + u * c[k + 3]));
      const b = c[k + 4] + u * (c[k + 5] + u * (c[k + 6] + u * c[k + 7]));
      const da = c[k + 1] + u * (2 * c[k + 2] + 3 * u * c[k + 3]);
      const db = c[k + 5] + u * (2 * c[k + 6] + 3 * u * c[k + 7]);
      const root = a + b * y;
      h = root * root;
      const all = 1 + resistance * h;
      // d ln h / d ln y, from y itself and from the film that moves with it
      const growth = (2 * (b * y + 6 * half * surplus * (da + db * y))) / root;
      const exponent = all / (6 * all + resistance * h * growth);
      const step = ratioPower(whole / (surplus * all), exponent);
      y *= step;
      const close = Math.abs(film - DENSEST) < NEAR_DENSEST ? CLOSE_THERE : CLOSE;
      if (step > 1 - close && step < 1 + close) {
        beside.whole = whole;
        beside.y = y;
        beside.exponent = exponent;
        return h * ratioPower(step, growth);
      }
    }
    return h;
  }

  /** y to start from: as if the film had six tenths of the difference. */
  #firstRoot(resistance: number, whole: number, tank: number, half: number): number {
    const rootOfWhole = sixthRoot(whole);
    const h = this.coefficientAtRoot(tank + 0.6 * half * whole, 0.92 * rootOfWhole);
    return rootOfWhole * ratioPower(1 / (1 + resistance * h), 1 / 6);
  }
}

/**
 * The film of a tube, made once and kept while it is among the last few asked for: it does not depend on the flow inside,
 * so that runs which differ in anything else share it.
 */
export const outsideFilm = lastFew(
  8,
  (water: Water, diameter: number, enhancement: number) =>
    new OutsideFilm(water, diameter, enhancement),
);

/** A balance: y at a difference D, and the power of D that y follows there. */
export interface Balance {
  /** D, K; 0 for none. */
  whole: number;
  y: number;
  exponent: number;
}

/** No balance yet: the next is looked for from afar. */
export function anywhere(): Balance {
  return { whole: 0, y: 0, exponent: 0 };
}

const MOST_MOVED = 2;
const MOST_STEPS = 8;
// A step this near 1 is the last: what it leaves behind is below 1e-6 of h
const CLOSE = 2e-4;
// Where water is densest convection almost stops, and the balance bends most
const DENSEST = 4; // °C, from memory
const NEAR_DENSEST = 1; // K
const CLOSE_THERE = 2e-5;

const PIECES = 110; // 1 K each from 0 °C

/** The piece that holds a film temperature. */
function piece(film: number): number {
  return film > 0 ? (film < PIECES ? film | 0 : PIECES - 1) : 0;
}

/** The film temperature moved to the nearer end of the table when it is outside, °C. */
function within(film: number): number {
  return Math.min(Math.max(film, 0), PIECES);
}

function sixthPower(y: number): number {
  const y3 = y * y * y;
  return y3 * y3;
}

/**
 * A ratio to a small power without a logarithm; for ratios near 1 wrong by about (ratio − 1)³ ×
 * exponent / 12.
 */
function ratioPower(ratio: number, exponent: number): number {
  const up = 1 + exponent;
  const down = 1 - exponent;
  return (up * ratio + down) / (down * ratio + up);
}
