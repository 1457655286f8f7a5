/**
 * Points that fill a box evenly, the same every time: the first points of a Sobol sequence. Any first 2ᵏ of them put
 * one into each 2ᵏ-th of every edge, so a part of a sample is itself a sample. `count` points stand in the middle of
 * their cells, so that none is at the end of a range.
 */
// source: Joe and Kuo 2008, direction numbers of the first dimensions (new-joe-kuo-6), from memory; the tests show that
// they fill evenly, whatever they are
export class EvenPoints {
  /** A power of two. */
  readonly count: number;
  readonly #directions: readonly Uint32Array[];

  /** @param count  a power of two, up to 2³¹ @param edges  of the box, up to 8 */
  constructor(count: number, edges: number) {
    if (count < 1 || (count & (count - 1)) !== 0) {
      throw new Error(`${count} points; expected a power of two`);
    }
    if (edges > polynomials.length) {
      throw new Error(`${edges} edges; expected ${polynomials.length} or fewer`);
    }
    this.count = count;
    this.#directions = polynomials.slice(0, edges).map(directionsOf);
  }

  /** One coordinate, above 0 and below 1. @param index  of the point, from 0 @param edge  from 0 */
  at(index: number, edge: number): number {
    const directions = this.#directions[edge];
    let bits = 0;
    for (let left = index, bit = 0; left > 0; left >>>= 1, bit++) {
      if ((left & 1) === 1) bits ^= directions[bit];
    }
    return (bits >>> 0) / 2 ** BITS + 0.5 / this.count;
  }
}

/** Degree and inner coefficients of a primitive polynomial, and the first direction numbers. */
interface Polynomial {
  readonly degree: number;
  readonly inner: number;
  readonly first: readonly number[];
}

const polynomials: readonly Polynomial[] = [
  { degree: 0, inner: 0, first: [] }, // the first edge: bits turned round
  { degree: 1, inner: 0, first: [1] },
  { degree: 2, inner: 1, first: [1, 3] },
  { degree: 3, inner: 1, first: [1, 3, 1] },
  { degree: 3, inner: 2, first: [1, 1, 1] },
  { degree: 4, inner: 1, first: [1, 1, 3, 3] },
  { degree: 4, inner: 4, first: [1, 3, 5, 13] },
  { degree: 5, inner: 2, first: [1, 1, 5, 5, 17] },
];

/** [bit] what each bit of a point's number turns over, as a fraction of 2³². */
function directionsOf({ degree, inner, first }: Polynomial): Uint32Array {
  const directions = new Uint32Array(BITS);
  for (let bit = 0; bit < BITS; bit++) {
    if (degree === 0 || bit < degree) {
      directions[bit] = ((first[bit] ?? 1) << (BITS - 1 - bit)) >>> 0;
      continue;
    }
    let made = directions[bit - degree] ^ (directions[bit - degree] >>> degree);
    for (let term = 1; term < degree; term++) {
      if (((inner >>> (degree - 1 - term)) & 1) === 1) made ^= directions[bit - term];
    }
    directions[bit] = made >>> 0;
  }
  return directions;
}

const BITS = 32;
