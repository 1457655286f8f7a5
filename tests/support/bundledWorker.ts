import { fileURLToPath } from 'node:url';
import { build } from 'rolldown';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  export interface ProvidedContext {
    /** The worker that computes points, as one module: it starts as soon as that of the built app. */
    bundledWorker: string;
  }
}

const input = fileURLToPath(new URL('../../src/worker/points.worker.ts', import.meta.url));

/** Bundles the worker that computes points, for tests that start it many times. */
export default async function provideBundledWorker(project: TestProject): Promise<void> {
  const { output } = await build({
    input,
    platform: 'browser',
    logLevel: 'silent',
    write: false,
    output: { format: 'esm', codeSplitting: false },
  });
  project.provide('bundledWorker', output[0].code);
}
