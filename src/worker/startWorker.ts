/** Starts the worker that computes. */
export function startWorker(): Worker {
  return new Worker(new URL('./run.worker.ts', import.meta.url), { type: 'module' });
}
