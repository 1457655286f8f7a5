import { afterEach, describe, expect, test, vi } from 'vitest';
import { Pool } from '../../../src/worker/pool.ts';
import { workerCount } from '../../../src/worker/workerCount.ts';
import { PoolStand } from '../../make/poolStand.ts';
import { right, squares } from '../../make/squares.ts';

afterEach(() => vi.useRealTimers());

/** A pool of stands, with all that were ever started. @param make  the stand of that number, from 0 */
function made(count: number, make: (number: number) => PoolStand = () => new PoolStand()) {
  const stands: PoolStand[] = [];
  const start = () => {
    const stand = make(stands.length);
    stands.push(stand);
    return stand;
  };
  return { pool: new Pool<number, number, number>(start, count, 20), stands };
}

test.each([
  [2, 1],
  [1, 1],
  [8, 7],
  [undefined, 1],
])('of %s cores the map gets %i', (cores, workers) => {
  expect(workerCount(cores)).toBe(workers);
});

test.each([1, 2, 3])('%i workers square 200 numbers, each once', async (count) => {
  const { pool, stands } = made(count);
  const { task, found, ending, values } = squares(200);
  pool.begin(task);
  expect(await ending).toBe('finished');
  expect(found).toHaveLength(200);
  expect(values()).toEqual(right(200));
  expect(stands).toHaveLength(count);
  expect(stands.every(({ finished }) => finished > 0)).toBe(true);
});

test('no worker is started before something is asked, nor for a task of 0 runs', async () => {
  const { pool, stands } = made(2);
  const { task, ending } = squares(0);
  pool.begin(task);
  expect(await ending).toBe('finished');
  expect(stands).toHaveLength(0);
});

test('woken, 3 workers are there before anything is asked, and a task finds them', async () => {
  const { pool, stands } = made(3);
  pool.wake();
  pool.wake();
  expect(stands).toHaveLength(3);
  const { task, ending, values } = squares(100);
  pool.begin(task);
  expect(await ending).toBe('finished');
  expect(values()).toEqual(right(100));
  expect(stands).toHaveLength(3);
});

test('what a worker finds that it was not asked for changes nothing of 20 runs', async () => {
  const { pool, stands } = made(1);
  const { task, found, ending, values } = squares(20);
  pool.begin(task);
  const data = { kind: 'found', task: -1, runs: [{ key: 3, point: 0.5 }], spent: 1 };
  stands[0].onmessage?.({ data } as MessageEvent);
  expect(await ending).toBe('finished');
  expect(found).toHaveLength(20);
  expect(values()).toEqual(right(20));
});

test('of 2 runs each of 2 workers gets 1', async () => {
  const { pool, stands } = made(2);
  const { task, ending } = squares(2);
  pool.begin(task);
  await ending;
  expect(stands.map(({ finished }) => finished)).toEqual([1, 1]);
});

test('runs come in far fewer messages than there are runs: 400 in less than 100', async () => {
  const { pool, stands } = made(1);
  const { task, ending } = squares(400, 0);
  pool.begin(task);
  await ending;
  expect(stands[0].asked.length).toBeLessThan(100);
});

describe('the newest goes first', () => {
  test('a newer task of the same lane ends an older one, of which 0 more runs are begun', async () => {
    const { pool } = made(1);
    const [older, newer] = [squares(500), squares(50)];
    pool.begin(older.task);
    await older.reached(1);
    pool.begin(newer.task);
    expect(await older.ending).toBe('superseded');
    const taken = older.taken();
    expect(await newer.ending).toBe('finished');
    expect(newer.values()).toEqual(right(50));
    expect(older.taken()).toBe(taken);
  });

  test('a newer task of another lane goes before an older one, which then is finished too', async () => {
    const { pool } = made(1);
    const [map, drag] = [squares(300, 30), squares(5, 3, 'drag')];
    pool.begin(map.task);
    await map.reached(1);
    pool.begin(drag.task);
    expect(await drag.ending).toBe('finished');
    expect(map.found.length).toBeLessThan(300);
    expect(await map.ending).toBe('finished');
    expect(map.values()).toEqual(right(300));
  });

  test('of 20 tasks in a burst only the last is computed to its end', async () => {
    const { pool } = made(2);
    const tasks = Array.from({ length: 20 }, () => squares(100));
    for (const { task } of tasks) pool.begin(task);
    const endings = await Promise.all(tasks.map(({ ending }) => ending));
    expect(endings.filter((ending) => ending === 'superseded')).toHaveLength(19);
    expect(tasks[19].values()).toEqual(right(100));
  });
});

describe('stop', () => {
  test('ends at once, keeps what was found, and no more than what was in hand is computed', async () => {
    const { pool, stands } = made(2);
    const { task, found, reached, ending, values } = squares(5000, 200);
    const number = pool.begin(task);
    await reached(20);
    pool.stop(number);
    expect(await ending).toBe('stopped');
    await new Promise((resolve) => setTimeout(resolve, 150)); // the bar: 150 ms
    const done = stands[0].finished + stands[1].finished;
    const kept = found.length;
    await new Promise((resolve) => setTimeout(resolve, 50));
    expect(stands[0].finished + stands[1].finished).toBe(done);
    expect(found.length).toBe(kept);
    expect(kept).toBe(done); // also what was finished and not yet posted when the stop came
    expect(values().filter((value) => value !== undefined)).toHaveLength(kept);
  });

  test('rest ends 2 workers, and the next task starts 2 others', async () => {
    const { pool, stands } = made(2);
    const { task, reached, ending } = squares(5000, 200);
    pool.begin(task);
    await reached(1);
    pool.rest();
    expect(await ending).toBe('stopped');
    expect(pool.size).toBe(0);
    expect(stands.every(({ isEnded }) => isEnded)).toBe(true);
    const next = squares(40);
    pool.begin(next.task);
    expect(await next.ending).toBe('finished');
    expect(stands).toHaveLength(4);
  });
});

describe('a worker is lost', () => {
  test('50 maps in which a worker dies at a moment of its own are complete and right', async () => {
    for (let map = 0; map < 50; map += 1) {
      const { pool, stands } = made(1 + (map % 3));
      const { task, found, reached, ending, values } = squares(60, 20);
      pool.begin(task);
      await reached(map);
      stands[map % stands.length].die();
      expect(await ending).toBe('finished');
      expect(found, `map ${map}`).toHaveLength(60);
      expect(values()).toEqual(right(60));
      pool.rest();
    }
  });

  test('1 map in which 50 workers die is complete and right', async () => {
    const { pool, stands } = made(2);
    const { task, found, reached, ending, values } = squares(600, 60);
    pool.begin(task);
    for (let death = 1; death <= 50; death += 1) {
      await reached(death * 10);
      stands.filter(({ isEnded }) => !isEnded)[death % 2]?.die();
    }
    expect(await ending).toBe('finished');
    expect(stands).toHaveLength(52);
    expect(found).toHaveLength(600);
    expect(values()).toEqual(right(600));
  });

  test('one that is terminated says nothing; its silence is heard, and 200 runs are complete', async () => {
    const { pool, stands } = made(2);
    const { task, reached, ending, values } = squares(200, 60);
    pool.begin(task);
    await reached(30);
    stands[0].terminate();
    expect(await ending).toBe('finished');
    expect(stands).toHaveLength(3);
    expect(values()).toEqual(right(200));
  });

  test('a run that kills every worker is given up after 6, with the reason; the other 99 are right', async () => {
    const { pool, stands } = made(2, () => new PoolStand(37));
    const { task, ending, values } = squares(100, 10);
    pool.begin(task);
    expect(await ending).toBe('finished');
    const found = values();
    expect(found[37]).toBe('the worker that computed it died 6 times');
    expect(found.filter((value, index) => value === index * index)).toHaveLength(99);
    expect(stands.filter(({ isEnded }) => isEnded)).toHaveLength(6);
  });

  test('where none can be kept alive the task is lost after 3, with what was said', async () => {
    const { pool, stands } = made(1, () => {
      const stand = new PoolStand();
      stand.die();
      return stand;
    });
    const { task, ending, details } = squares(10);
    pool.begin(task);
    expect(await ending).toBe('lost');
    expect(details()).toContain('out of memory');
    expect(stands).toHaveLength(3);
  });

  test('where none can be started the task is lost at once', async () => {
    const { pool } = made(1, () => {
      throw new Error('no workers here');
    });
    const { task, ending, details } = squares(10);
    pool.begin(task);
    expect(await ending).toBe('lost');
    expect(details()).toContain('no workers here');
  });
});

test('a run of which something breaks is told with its reason, and the others go on', async () => {
  const { pool } = made(1, () => new PoolStand(null, 7));
  const { task, ending, values } = squares(20);
  pool.begin(task);
  expect(await ending).toBe('finished');
  expect(values()[7]).toBe('7 cannot be squared');
  expect(values().filter((value) => typeof value === 'number')).toHaveLength(19);
});
