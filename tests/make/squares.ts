import type { RunFound } from '../../shared/poolMessages.ts';
import type { PoolEnding } from '../../src/worker/pool.ts';

/** A task that squares the numbers below `length`. @param steps  of each run */
export function squares(length: number, steps = 3, lane = 'map') {
  const found: RunFound<number>[] = [];
  let next = 0;
  let end: (ending: PoolEnding) => void;
  const ending = new Promise<PoolEnding>((resolve) => {
    end = resolve;
  });
  let told = '';
  let waiting: { count: number; go: () => void }[] = [];
  /** Goes on in the moment at which so many have been found. */
  const reached = (count: number) =>
    new Promise<void>((go) => {
      if (found.length >= count) go();
      else waiting.push({ count, go });
    });
  const task = {
    lane,
    job: steps,
    take: (most: number) => {
      const runs = Array.from({ length: Math.min(most, length - next) }, (_, index) => ({
        key: next + index,
        asked: next + index,
      }));
      next += runs.length;
      return runs;
    },
    left: () => length - next,
    found: (runs: readonly RunFound<number>[]) => {
      found.push(...runs);
      waiting = waiting.filter(({ count, go }) => {
        if (found.length >= count) go();
        return found.length < count;
      });
    },
    ended: (how: PoolEnding, details: string) => {
      told = details;
      end(how);
    },
  };
  const values = () => {
    const at = new Array<number | string | undefined>(length).fill(undefined);
    for (const run of found) at[run.key] = 'point' in run ? run.point : run.fault;
    return at;
  };
  return { task, found, reached, ending, values, details: () => told, taken: () => next };
}

/** What it finds, in order. */
export const right = (length: number) => Array.from({ length }, (_, index) => index * index);
