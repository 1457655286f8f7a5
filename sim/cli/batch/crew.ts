import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import type { Done, Task } from './rows.ts';

/** Those who compute rows. */
export interface Crew {
  readonly workers: number;
  /** Of the program that computes: another one may come to other numbers. */
  readonly program: string;
  readonly compute: (task: Task) => Promise<Done>;
  readonly dismiss: () => Promise<void>;
}

/** A pool of workers. @param jobs  how many; null for one on each core */
export async function poolCrew(jobs: number | null): Promise<Crew> {
  const workers = jobs ?? availableParallelism();
  // bundled beside this file; the names of what it imports change with their content
  const worker = new URL('./batch.worker.mjs', import.meta.url);
  const program = createHash('sha256')
    .update(await readFile(fileURLToPath(worker)))
    .digest('hex');
  const { default: Tinypool } = await import('tinypool');
  const pool = new Tinypool({
    filename: worker.href,
    minThreads: workers,
    maxThreads: workers,
  });
  return {
    workers,
    program,
    compute: (task) => pool.run(task) as Promise<Done>,
    dismiss: () => pool.destroy(),
  };
}
