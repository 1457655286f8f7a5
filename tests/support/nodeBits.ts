import type { TestProject } from 'vitest/node';
import { createServer } from 'vite';

declare module 'vitest' {
  export interface ProvidedContext {
    /** By run: the fingerprint of its trace, computed in Node before the browser starts. */
    nodeBits: Record<string, string>;
    /** The fingerprint of a spread. */
    nodeSpreadBits: string;
  }
}

/** Computes in Node what the browser has to reproduce bit for bit. */
export default async function provideNodeBits(project: TestProject): Promise<void> {
  const server = await createServer({
    configFile: false,
    logLevel: 'error',
    server: { middlewareMode: true, watch: null, ws: false },
    optimizeDeps: { noDiscovery: true },
  });
  try {
    const { comparedRuns, runBits, spreadBits } = (await server.ssrLoadModule(
      `${import.meta.dirname}/../make/runBits.ts`,
    )) as typeof import('../make/runBits.ts');
    project.provide('nodeBits', Object.fromEntries(comparedRuns.map((key) => [key, runBits(key)])));
    project.provide('nodeSpreadBits', spreadBits());
  } finally {
    await server.close();
  }
}
