import { fileURLToPath } from 'node:url';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig, mergeConfig } from 'vitest/config';
import base from '../vite.config.ts';
import { chromiumArguments, chromiumPath } from './support/chromium.ts';
import { Tally } from './support/tally.ts';

const root = fileURLToPath(new URL('..', import.meta.url));
const executablePath = await chromiumPath();

export default mergeConfig(
  base,
  defineConfig({
    test: {
      root,
      reporters: ['default', new Tally()],
      coverage: {
        provider: 'v8',
        include: ['sim/**/*.ts', 'shared/**/*.ts', 'src/**/*.{ts,svelte}'],
        reportsDirectory: `${root}/node_modules/.cache/coverage`,
      },
      projects: [
        {
          extends: true,
          test: {
            name: 'node',
            // one after the other: these on all cores, then those that look at a page, which must not be kept waiting
            sequence: { groupOrder: 0 },
            maxWorkers: '100%',
            setupFiles: ['tests/support/seed.ts'],
            testTimeout: 30_000, // a busy machine is slow, not wrong
            include: ['tests/**/*.test.ts'],
            exclude: ['tests/browser/**', 'tests/e2e/**'],
            benchmark: { include: ['tests/bench/**/*.bench.ts'] },
          },
        },
        {
          extends: true,
          // named here so that the first run does not stop to find them and reload the page
          optimizeDeps: { include: ['axe-core', 'd3', 'odex', 'vitest-browser-svelte'] },
          test: {
            name: 'browser',
            sequence: { groupOrder: 1 },
            include: ['tests/browser/**/*.test.ts'],
            globalSetup: ['tests/support/nodeBits.ts', 'tests/support/bundledWorker.ts'],
            browser: {
              enabled: true,
              headless: true,
              screenshotFailures: false,
              instances: [{ browser: 'chromium' }],
              provider: playwright({ launchOptions: { executablePath, args: chromiumArguments } }),
            },
          },
        },
        {
          extends: true,
          test: {
            name: 'e2e',
            sequence: { groupOrder: 2 },
            maxWorkers: 1,
            include: ['tests/e2e/**/*.test.ts'],
            globalSetup: ['tests/support/builtApp.ts'],
            testTimeout: 60_000,
            hookTimeout: 60_000,
          },
        },
      ],
    },
  }),
);
