import { expect, test } from 'vitest';
import type { PoolRequest } from '../../../shared/poolMessages.ts';
import { Pool } from '../../../src/worker/pool.ts';
import type { PoolPort } from '../../../src/worker/poolHand.ts';
import { right, squares } from '../../make/squares.ts';

test('towards the end of 400 runs of 1 ms batches shrink from 40 to 8, so that 2 workers end together', () => {
  const sizes: number[] = [];
  const waiting: (() => void)[] = [];
  const start = (): PoolPort => {
    const port: PoolPort = {
      onmessage: null,
      onerror: null,
      onmessageerror: null,
      terminate: () => undefined,
      postMessage: (request: PoolRequest<number, number>) => {
        if (request.kind !== 'compute') return;
        const { task, runs } = request;
        sizes.push(runs.length);
        const found = runs.map(({ key, asked }) => ({ key, point: asked * asked }));
        const data = { kind: 'found', task, runs: found, spent: runs.length };
        waiting.push(() => port.onmessage?.({ data } as MessageEvent));
      },
    };
    return port;
  };
  const { task, values } = squares(400);
  new Pool<number, number, number>(start, 2).begin(task);
  for (let answer = waiting.shift(); answer; answer = waiting.shift()) answer();
  expect(values()).toEqual(right(400));
  const full = sizes.lastIndexOf(40);
  expect(full).toBeGreaterThan(3);
  const falling = sizes.slice(full);
  expect(falling).toEqual(falling.toSorted((one, other) => other - one));
  expect(falling.slice(-4, -1)).toEqual([8, 8, 8]);
});
