import { spawn } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, loadavg, tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { askedFileKey, askedRows } from '../../shared/asked.ts';
import { studyFormat } from '../../shared/codec/batchStudy.ts';

// Prints how long a batch of 10 000 reheats takes from the command line to its last row, and the most memory it ever held.
// Asserts nothing. REHEAT_BENCH_ROWS makes it shorter.

const root = fileURLToPath(new URL('../..', import.meta.url));
const rows = Number(process.env.REHEAT_BENCH_ROWS ?? 10_000);
const folder = mkdtempSync(join(tmpdir(), 'reheat-bench-'));

/** Prints the most memory of the main thread's process, workers included, kB, as it ends. */
const peak =
  "import { isMainThread } from 'node:worker_threads';" +
  "if (isMainThread) process.on('exit', () => process.stderr.write('peak ' + process.resourceUsage().maxRSS));";

interface Took {
  readonly seconds: number;
  readonly megabytes: number;
  readonly lines: number;
}

function timed(name: string, measures: readonly string[], jobs: number): Promise<Took> {
  const study = join(folder, `${name}.json`);
  const out = join(folder, `${name}-${jobs}.ndjson`);
  const side = Math.round(Math.sqrt(rows));
  const grid = {
    'coil.scaleThicknessMillimetres': { from: 0, to: 2, count: side },
    'boiler.outputKilowatts': { from: 12, to: 36, count: side },
  };
  const file = {
    format: studyFormat,
    version: 1,
    base: { example: 'healthy-house' },
    grid,
    measures,
  };
  writeFileSync(study, JSON.stringify(file));
  const command = [join(root, '.run', 'ready.cjs'), 'reheat', 'batch', study, '--out', out];
  const began = performance.now();
  const child = spawn(
    process.execPath,
    [
      '--import',
      `data:text/javascript,${encodeURIComponent(peak)}`,
      ...command,
      '--jobs',
      `${jobs}`,
    ],
    { stdio: ['ignore', 'inherit', 'pipe'] },
  );
  let said = '';
  child.stderr.on('data', (piece) => {
    said += piece;
  });
  return new Promise((settle, fail) => {
    child.on('close', (code) => {
      if (code !== 0) return fail(new Error(`the batch ended with ${code}: ${said}`));
      settle({
        seconds: (performance.now() - began) / 1000,
        megabytes: Number(/peak (\d+)/.exec(said)?.[1]) / 1000,
        lines: readFileSync(out, 'utf8').split('\n').length - 1,
      });
    });
  });
}

try {
  const full = askedRows.filter(({ of }) => of === 'run').map(({ key }) => askedFileKey(key));
  const asked = { 'recovery alone': ['recoveryMinutes'], 'all of the run': full };
  for (const [name, measures] of Object.entries(asked)) {
    for (const jobs of new Set([availableParallelism(), 1])) {
      const { seconds, megabytes, lines } = await timed(name, measures, jobs);
      console.log(
        `${lines} rows, ${name.padEnd(16)} ${jobs} workers: ${seconds.toFixed(1).padStart(6)} s, ` +
          `${((1000 * seconds) / lines).toFixed(2)} ms a row, peak ${megabytes.toFixed(0)} MB ` +
          `(load ${loadavg()[0].toFixed(1)}; bar: 10 000 in 40 s on two cores, 300 MB)`,
      );
    }
  }
} finally {
  rmSync(folder, { recursive: true });
}
