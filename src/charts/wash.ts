/** Temperatures of the wash, °C, each with its token `--wash-10` to `--wash-70`. */
const stops = [10, 20, 30, 40, 50, 60, 70];

/**
 * The wash of a temperature as a CSS colour, mixed from the two nearest tokens so that it follows
 * the theme. Below 10 °C and above 70 °C the end of the ramp. The number is the code, this a hint.
 * @param temperature  °C, rounded to half a kelvin so that near neighbours share a colour
 */
export function wash(temperature: number): string {
  const half = Math.round(temperature * 2) / 2;
  const held = Math.min(70, Math.max(10, half));
  const below = Math.min(60, Math.floor(held / 10) * 10);
  const share = Math.round((held - below) * 10);
  if (share === 0) return `var(--wash-${below})`;
  if (share === 100) return `var(--wash-${below + 10})`;
  return `color-mix(in srgb, var(--wash-${below + 10}) ${share}%, var(--wash-${below}))`;
}

/** Edges between the steps in which a field of temperatures is painted, °C. */
export const washSteps: readonly number[] = stops.flatMap((stop) => [stop, stop + 5]).slice(0, -1);
