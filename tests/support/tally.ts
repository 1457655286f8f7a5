import type { Reporter, TestModule } from 'vitest/node';

/** Ends the output with one plain line: `12 passed, 0 failed`, and what was skipped, if anything. */
export class Tally implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: unhandled.length, skipped: 0 };
    for (const module of modules) {
      let failedHere = 0;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state === 'failed') failedHere += 1;
        else if (state === 'passed') count.passed += 1;
        else count.skipped += 1;
      }
      // a file that could not be loaded has no tests, and yet it failed
      count.failed += failedHere === 0 && !module.ok() ? 1 : failedHere;
    }
    const skipped = count.skipped > 0 ? `, ${count.skipped} skipped` : '';
    process.stdout.write(`${count.passed} passed, ${count.failed} failed${skipped}\n`);
  }
}
