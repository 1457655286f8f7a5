/**
 * Passes the progress of a run on as a part of something larger, which can so be stopped in between.
 * @param from   of the whole that is done before it
 * @param share  of the whole that it is; 0 to let it stand still meanwhile
 */
export function* part<T>(
  run: Generator<number, T>,
  from: number,
  share: number,
): Generator<number, T> {
  for (;;) {
    const step = run.next();
    if (step.done) return step.value;
    yield from + share * step.value;
  }
}
