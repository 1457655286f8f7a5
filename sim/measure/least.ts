/** Where the smallest of some values stands, the first of equals. */
export function indexOfLeast(values: ArrayLike<number>): number {
  let least = 0;
  for (let i = 1; i < values.length; i++) if (values[i] < values[least]) least = i;
  return least;
}
