import type { Crew } from './crew.ts';
import type { Done, Task } from './rows.ts';

/**
 * Has tasks done side by side and hands what was done on in the order of the tasks. No more than a few tasks for each worker
 * are ever under way, so that what is held does not grow with the study.
 */
export async function inOrder(
  tasks: AsyncIterable<Task>,
  { compute, workers }: Pick<Crew, 'compute' | 'workers'>,
  hand: (done: Done) => Promise<void>,
): Promise<void> {
  const under: Promise<Done>[] = [];
  const handFirst = async () => {
    const first = under.shift();
    if (first) await hand(await first);
  };
  for await (const task of tasks) {
    const done = compute(task);
    done.catch(() => {}); // said when its turn comes
    under.push(done);
    if (under.length >= AHEAD * workers) await handFirst();
  }
  while (under.length > 0) await handFirst();
}

/** Tasks under way for each worker: a slow row must not leave the others idle. Engineering guess, no source. */
const AHEAD = 6;
