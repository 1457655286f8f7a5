import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Point } from '../../../shared/point.ts';
import type { PoolReply } from '../../../shared/poolMessages.ts';
import { pointOf } from '../../../sim/run/pointOf.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { startPointWorker } from '../../../src/worker/pointPool.ts';

test('a worker that warms up gives that up for 1 run that is asked for, which is right to the last bit', async () => {
  const base = defaultVariant('as found');
  const asked = ['recovery'] as const;
  const worker = startPointWorker();
  const found: Extract<PoolReply<Point>, { kind: 'found' }>[] = [];
  worker.onmessage = ({ data }: MessageEvent<PoolReply<Point>>) => {
    if (data.kind !== 'found') return;
    if (found.length === 0) {
      worker.postMessage({
        kind: 'compute',
        task: 1,
        job: { base, asked },
        runs: [{ key: 0, asked: [] }],
      });
    }
    found.push(data);
  };
  await expect.poll(() => found.some(({ task }) => task === 1), { timeout: 20_000 }).toBe(true);
  const [run] = found.find(({ task }) => task === 1)?.runs ?? [];
  expect(run).toEqual({ key: 0, point: toEnd(pointOf(base, asked)) });
  await new Promise((resolve) => setTimeout(resolve, 300)); // as long as all 80 would take
  const warm = found.filter(({ task }) => task !== 1).flatMap(({ runs }) => runs);
  expect(warm.length).toBeGreaterThan(0);
  expect(warm.length).toBeLessThan(80);
  worker.terminate();
});
