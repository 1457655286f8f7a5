import { describe, expect, test, vi } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Reply, Request } from '../../../shared/messages.ts';
import type { Result } from '../../../shared/result.ts';
import { withSetting } from '../../../shared/variant.ts';
import { type Port, Run } from '../../../src/state/Run.svelte.ts';

/** A worker that answers only when told to. */
class Stand implements Port {
  onmessage: Port['onmessage'] = null;
  onerror: Port['onerror'] = null;
  onmessageerror: Port['onmessageerror'] = null;
  asked: Request[] = [];
  isEnded = false;
  postMessage(request: Request) {
    this.asked.push(request);
  }
  terminate() {
    this.isEnded = true;
  }
  say(reply: Reply) {
    this.onmessage?.({ data: reply } as MessageEvent);
  }
}

const variant = (kilowatts: number) =>
  withSetting(defaultVariant('as found'), 'boiler.output', kilowatts * 1000);
// only its identity matters here
const resultOf = (kilowatts: number) => ({ variant: variant(kilowatts) }) as Result;

function made() {
  const ports: Stand[] = [];
  const run = new Run(() => {
    const port = new Stand();
    ports.push(port);
    return port;
  });
  return { run, ports };
}

test('a worker that is woken is asked nothing, and is the 1 that the first request goes to', () => {
  const { run, ports } = made();
  run.wake();
  expect(ports).toHaveLength(1);
  expect(ports[0].asked).toEqual([]);
  void run.request(variant(24), true);
  expect(ports).toHaveLength(1);
  expect(ports[0].asked).toHaveLength(1);
});

test('a worker that cannot be woken is a fault, and the page stands', () => {
  const run = new Run(() => {
    throw new Error('no workers here');
  });
  run.wake();
  expect(run.fault?.details).toContain('no workers here');
});

describe('the newest wins', () => {
  test('while the first of 20 requests is under way only the last of the others is sent', async () => {
    const { run, ports } = made();
    const endings = Array.from({ length: 20 }, (_, i) => run.request(variant(i + 1), false));
    expect(ports[0].asked).toHaveLength(1);
    ports[0].say({ kind: 'result', number: 1, result: resultOf(1) });
    expect(ports[0].asked).toHaveLength(2);
    ports[0].say({ kind: 'result', number: 2, result: resultOf(20) });
    ports[0].say({ kind: 'finished', number: 2 });
    expect(run.result?.variant.boiler.output).toBe(20_000);
    const ended = await Promise.all(endings);
    expect(ended.filter((ending) => ending === 'superseded')).toHaveLength(19);
    expect(ended[19]).toBe('finished');
  });

  test('a reply to request 1 is dropped once request 2 has been sent', () => {
    const { run, ports } = made();
    void run.request(variant(1), true);
    ports[0].say({ kind: 'result', number: 1, result: resultOf(1) });
    void run.request(variant(2), true);
    ports[0].say({ kind: 'result', number: 2, result: resultOf(2) });
    ports[0].say({ kind: 'result', number: 1, result: resultOf(1) });
    expect(run.result?.variant.boiler.output).toBe(2000);
  });

  test('a run that takes longer than 150 ms gives way without having answered', () => {
    vi.useFakeTimers();
    const { run, ports } = made();
    void run.request(variant(1), false);
    void run.request(variant(2), false);
    vi.advanceTimersByTime(149);
    expect(ports[0].asked).toHaveLength(1);
    vi.advanceTimersByTime(2);
    expect(ports[0].asked).toHaveLength(2);
    vi.useRealTimers();
  });
});

describe('while a handle is dragged', () => {
  test('the steady result stays at 1 kW while the drag shows 2 kW, and follows to 3 kW a task after it is let go', () => {
    vi.useFakeTimers();
    const { run, ports } = made();
    const answer = (number: number) => {
      ports[0].say({ kind: 'result', number, result: resultOf(number) });
      ports[0].say({ kind: 'finished', number });
    };
    void run.request(variant(1), true);
    answer(1);
    vi.runAllTimers();
    run.hold();
    void run.request(variant(2), false);
    vi.advanceTimersByTime(1);
    answer(2);
    vi.advanceTimersByTime(1);
    const kilowatts = () =>
      [run.before, run.result, run.steady].map(
        (result) => (result?.variant.boiler.output ?? 0) / 1000,
      );
    expect(kilowatts()).toEqual([1, 2, 1]);
    run.release();
    void run.request(variant(3), true);
    answer(3);
    expect(kilowatts()).toEqual([0, 3, 1]);
    vi.advanceTimersByTime(1);
    expect(kilowatts()).toEqual([0, 3, 3]);
    vi.useRealTimers();
  });
});

describe('waiting', () => {
  test('progress is not shown before 200 ms, and only rises after', () => {
    vi.useFakeTimers();
    const { run, ports } = made();
    void run.request(variant(1), true);
    ports[0].say({ kind: 'progress', number: 1, done: 0.3 });
    vi.advanceTimersByTime(199);
    expect(run.progress).toBeNull();
    vi.advanceTimersByTime(2);
    expect(run.progress).toBe(0);
    ports[0].say({ kind: 'progress', number: 1, done: 0.5 });
    ports[0].say({ kind: 'progress', number: 1, done: 0.4 });
    expect(run.progress).toBe(0.5);
    ports[0].say({ kind: 'finished', number: 1 });
    expect(run.progress).toBeNull();
    vi.useRealTimers();
  });

  test('the 6 studies stand marked as stale until the request that has them is finished', () => {
    const { run, ports } = made();
    void run.request(variant(1), true);
    ports[0].say({ kind: 'study', number: 1, study: { kind: 'placement', points: [] } });
    expect(Object.keys(run.studies)).toHaveLength(9);
    expect(run.studiesAreStale).toBe(true);
    ports[0].say({ kind: 'finished', number: 1 });
    expect(run.studiesAreStale).toBe(false);
    void run.request(variant(2), false);
    expect(run.studies.placement).not.toBeNull();
    ports[0].say({ kind: 'result', number: 2, result: resultOf(2) });
    ports[0].say({ kind: 'finished', number: 2 });
    expect(run.studiesAreStale).toBe(true);
  });
});

describe('ending', () => {
  test('Stop settles 2 requests and keeps the last result', async () => {
    const { run, ports } = made();
    void run.request(variant(1), false);
    ports[0].say({ kind: 'result', number: 1, result: resultOf(1) });
    const two = [run.request(variant(2), true), run.request(variant(3), true)];
    run.stop();
    // the first of the two gives way, or is stopped; neither is left waiting
    expect(await Promise.all(two)).toEqual(['stopped', 'stopped']);
    expect(run.result?.variant.boiler.output).toBe(1000);
    expect(ports[0].asked.at(-1)).toEqual({ kind: 'stop' });
  });

  test('a worker that dies says 1 sentence, settles what waits, and Start again asks the same', async () => {
    const { run, ports } = made();
    const ending = run.request(variant(7), true);
    ports[0].onerror?.({ message: 'out of memory', filename: 'a', lineno: 1 } as ErrorEvent);
    expect(await ending).toBe('lost');
    expect(ports[0].isEnded).toBe(true);
    expect(run.fault?.message).toBe('The part that computes has stopped. Your settings are safe.');
    expect(run.fault?.details).toContain('out of memory');
    expect(await run.request(variant(8), true)).toBe('lost');
    run.startAgain();
    expect(run.fault).toBeNull();
    expect(ports).toHaveLength(2);
    expect(ports[1].asked[0]).toMatchObject({ variant: { boiler: { output: 8000 } } });
  });

  test('a request with 1 throw sends it, and Start again sends it again without studies', () => {
    const { run, ports } = made();
    const throws = [{ at: 600, arrangement: 'heatingFirst' }] as const;
    void run.request(variant(1), false, throws);
    expect(ports[0].asked[0]).toMatchObject({ throws, studies: false });
    ports[0].onerror?.({ message: 'lost', filename: 'a', lineno: 1 } as ErrorEvent);
    run.startAgain(false);
    expect(ports[1].asked[0]).toMatchObject({ throws, studies: false });
  });

  test('a fault in the model is told with its details, and 1 new worker takes over', () => {
    const { run, ports } = made();
    void run.request(variant(1), true);
    ports[0].say({
      kind: 'fault',
      number: 1,
      message: 'coil has 0 turns',
      details: 'at coil.ts:1',
    });
    expect(run.fault?.details).toBe('at coil.ts:1');
    run.startAgain();
    expect(ports).toHaveLength(2);
  });

  test('a worker that cannot be started at all is told, and 0 requests wait', async () => {
    const run = new Run(() => {
      throw new Error('no workers here');
    });
    expect(await run.request(variant(1), true)).toBe('lost');
    expect(run.fault?.details).toContain('no workers here');
  });
});

test('of 2 studies the one that has come since is not stale, though the other still is', () => {
  const { run, ports } = made();
  const placement = { kind: 'placement', points: [] } as const;
  const minutes = { kind: 'minutes' } as never;
  void run.request(variant(24), true);
  ports[0].say({ kind: 'result', number: 1, result: resultOf(24) });
  ports[0].say({ kind: 'study', number: 1, study: placement });
  ports[0].say({ kind: 'study', number: 1, study: minutes });
  ports[0].say({ kind: 'finished', number: 1 });
  expect([run.isStale('placement'), run.isStale('minutes')]).toEqual([false, false]);
  void run.request(variant(30), true);
  expect([run.isStale('placement'), run.isStale('minutes')]).toEqual([true, true]);
  ports[0].say({ kind: 'study', number: 2, study: placement });
  expect([run.isStale('placement'), run.isStale('minutes')]).toEqual([false, true]);
});
