/**
 * How many workers compute a map: one less than the machine has cores, for one core must stay free to draw the page and
 * to answer a drag; at least one.
 * @param cores  as the browser tells them; unknown where it does not
 */
export function workerCount(cores: number | undefined): number {
  return Math.max(1, Math.floor(cores ?? 1) - 1);
}
