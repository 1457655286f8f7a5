/** Small makers of MathML presentation markup, so that a formula reads as one line of code. */

/** A symbol; one letter is marked, to be set in italics. */
export const mi = (name: string): string =>
  /^\p{L}\p{M}*$/u.test(name) ? `<mi class="letter">${name}</mi>` : `<mi>${name}</mi>`;

/** A symbol with a subscript. */
export const sub = (name: string, below: string): string => `<msub>${mi(name)}${mi(below)}</msub>`;

/** A plain number. */
export const mn = (value: number | string): string => `<mn>${value}</mn>`;

/** An operator. */
export const mo = (sign: string): string => `<mo>${sign}</mo>`;

/** Parts in a row. */
export const row = (...parts: string[]): string => `<mrow>${parts.join('')}</mrow>`;

/** A fraction. */
export const frac = (above: string, below: string): string => `<mfrac>${above}${below}</mfrac>`;

/** A power. */
export const raised = (base: string, exponent: string): string => `<msup>${base}${exponent}</msup>`;

/** Round brackets around parts. */
export const paren = (...parts: string[]): string => row(mo('('), ...parts, mo(')'));

/** Left-hand side = right-hand side. */
export const equals = (left: string, ...right: string[]): string => row(left, mo('='), ...right);

/** exp(...) as a power of e. */
export const expOf = (...parts: string[]): string => raised(mi('e'), row(...parts));

/** A unit that belongs to a fixed number in a formula. */
export const unit = (name: string): string => `<mtext>${name}</mtext>`;

/** A square root. */
export const root = (...parts: string[]): string => `<msqrt>${parts.join('')}</msqrt>`;
