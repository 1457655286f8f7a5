import type { Metres } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';

/** Where everything of the section stands, pixels of the drawing. */
export interface SectionPlan {
  /** Pixels in a metre, both ways. */
  readonly scale: number;
  /** Height above the inside base to pixels downwards. */
  readonly y: (height: Metres) => number;
  /** Of the cylinder's axis. */
  readonly middle: number;
  /** Inside radius, and the radius outside the jacket. */
  readonly radius: number;
  readonly outer: number;
  /** Rise of the dished top and fall of the dished base. */
  readonly crown: number;
  readonly dish: number;
  readonly height: number;
  /** Where the dimension of the whole height and that of the sensor stand; the former may lack. */
  readonly heightLine: number | null;
  readonly sensorLine: number;
  /** Where pipes end and where their names start. */
  readonly pipeEnd: number;
  /** Middle of the cold pipe, pixels. */
  readonly cold: number;
  readonly nameLeft: number;
}

/** Pixels the store may take upwards on a screen with room. */
export const usualTallest = 392;

/** Thickness the jacket is drawn with. Of the drawing only: the model knows its standing loss. */
const jacket: Metres = 0.05;

/**
 * Plan of the section for a width and a greatest height of the store.
 * @param width    of the drawing, pixels
 * @param tallest  the store may take, pixels
 */
export function sectionPlan(variant: Variant, width: number, tallest: number): SectionPlan {
  const { volume, height } = variant.cylinder;
  const inside = Math.sqrt(volume / (Math.PI * height));
  const isNarrow = width < 300;
  const leftOfShell = isNarrow ? 58 : 108;
  const rightOfShell = isNarrow ? 84 : 124;
  const room = Math.max(48, width - leftOfShell - rightOfShell);
  const scale = Math.min(tallest / height, room / (2 * (inside + jacket)));
  const radius = inside * scale;
  const outer = radius + Math.max(5, jacket * scale);
  const crown = Math.min(0.45 * radius, 0.08 * height * scale);
  const dish = Math.min(0.14 * radius, 0.03 * height * scale);
  const top = isNarrow ? 36 : 46;
  const base = top + height * scale;
  const middle = leftOfShell + (room - 2 * outer > 0 ? (room - 2 * outer) * 0.4 : 0) + outer;
  return {
    scale,
    y: (z) => base - z * scale,
    middle,
    radius,
    outer,
    crown,
    dish,
    height: base + 26,
    heightLine: isNarrow ? null : middle - outer - 84,
    sensorLine: middle - outer - (isNarrow ? 32 : 36),
    cold: base - dish - Math.min(7, Math.max(3, 0.022 * scale)),
    pipeEnd: middle + outer + 12,
    nameLeft: middle + outer + (isNarrow ? 28 : 42),
  };
}

/**
 * Outline with a dished top and base, path data.
 * @param radius  half the width, pixels
 * @param top     highest pixel
 * @param base    lowest pixel
 */
export function shellPath(
  middle: number,
  radius: number,
  top: number,
  base: number,
  crown: number,
  dish: number,
): string {
  const [left, right] = [middle - radius, middle + radius];
  return (
    `M${left} ${base - dish}V${top + crown}A${radius} ${crown} 0 0 1 ${right} ${top + crown}` +
    `V${base - dish}A${radius} ${dish} 0 0 1 ${left} ${base - dish}Z`
  );
}
