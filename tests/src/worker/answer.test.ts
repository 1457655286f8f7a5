import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { DayRun } from '../../../shared/day.ts';
import type { Reply } from '../../../shared/messages.ts';
import type { Result } from '../../../shared/result.ts';
import type { Study } from '../../../shared/study.ts';
import { withSetting } from '../../../shared/variant.ts';
import { answering, type Work } from '../../../src/worker/answer.ts';
import { buffersOf } from '../../../src/worker/buffersOf.ts';
import { channelTick } from '../../../src/worker/channelTick.ts';

const variant = (kilowatts: number) =>
  withSetting(defaultVariant('as found'), 'boiler.output', kilowatts * 1000);
const trace = () => {
  const time = new Float64Array(4);
  return { samples: 4, layers: 1, time, layerTemperature: new Float64Array(4), of: { top: time } };
};
const study: Study = { kind: 'placement', points: [] };

/** A handler whose clock moves by 3 ms at each look, so that a slice holds about 3 steps. */
function made(steps: number, part: Partial<Work> = {}) {
  const replies: Reply[] = [];
  let finished = 0;
  let clock = 0;
  const work: Work = {
    *run(asked) {
      for (let i = 0; i < steps; i++) yield i / steps;
      finished += 1;
      return { variant: asked, trace: trace() } as unknown as Result;
    },
    thrown: async () => () => {
      throw new Error('no throw was asked for');
    },
    studies: async () => [],
    studyCount: 0,
    why: async () => [],
    whyCount: 0,
    ...part,
  };
  const answer = answering(work, {
    post: (reply) => replies.push(reply),
    tick: channelTick(),
    now: () => (clock += 3),
  });
  const ask = (number: number, studies = false) =>
    answer({ kind: 'run', number, variant: variant(number), studies });
  const until = async (kind: Reply['kind'], number: number) => {
    for (let tries = 0; tries < 500; tries++) {
      if (replies.some((reply) => reply.kind === kind && reply.number === number)) return;
      await new Promise((resolve) => setTimeout(resolve, 1));
    }
    throw new Error(`no ${kind} for request ${number} in ${JSON.stringify(replies)}`);
  };
  return { replies, ask, answer, until, finishedRuns: () => finished };
}

test('of 20 requests in a burst the last is answered, and at most 6 runs are completed', async () => {
  const { replies, ask, until, finishedRuns } = made(5);
  for (let number = 1; number <= 20; number++) ask(number);
  await until('finished', 20);
  const results = replies.filter((reply) => reply.kind === 'result');
  expect(results.at(-1)).toMatchObject({ number: 20, result: { variant: variant(20) } });
  expect(finishedRuns()).toBeLessThanOrEqual(6);
});

test('a run of 10 000 steps gives way to a newer request between slices, unfinished', async () => {
  const { replies, ask, until, finishedRuns } = made(10_000);
  ask(1);
  await until('progress', 1);
  ask(2);
  await until('finished', 2);
  expect(finishedRuns()).toBe(1);
  expect(replies.some((reply) => reply.kind === 'result' && reply.number === 1)).toBe(false);
});

test('a run with 1 throw goes by the way for throws, one with an empty list by the usual way', async () => {
  const throws = [{ at: 600, arrangement: 'heatingFirst' }] as const;
  const seen: unknown[] = [];
  const { replies, answer, until } = made(1, {
    thrown: async () =>
      function* (asked, wanted) {
        yield 0;
        seen.push(wanted);
        return { variant: asked, trace: trace() } as unknown as Result;
      },
  });
  answer({ kind: 'run', number: 1, variant: variant(1), studies: false, throws });
  await until('finished', 1);
  answer({ kind: 'run', number: 2, variant: variant(2), studies: false, throws: [] });
  await until('finished', 2);
  expect(seen).toEqual([throws]);
  expect(replies.filter(({ kind }) => kind === 'result')).toHaveLength(2);
});

test('progress rises from 0 to 1 over a run and its 3 studies, which come after the result', async () => {
  function* slow() {
    for (let i = 0; i < 30; i++) yield i / 30;
    return study;
  }
  const { replies, ask, until } = made(30, {
    studies: async () => [slow, slow, slow],
    studyCount: 3,
  });
  ask(1, true);
  await until('finished', 1);
  const done = replies.flatMap((reply) => (reply.kind === 'progress' ? [reply.done] : []));
  expect(done).toEqual([...done].sort((a, b) => a - b));
  expect(done.at(-1)).toBeGreaterThan(0.75);
  expect(done.at(-1)).toBeLessThan(1);
  const kinds = replies.map(({ kind }) => kind).filter((kind) => kind !== 'progress');
  expect(kinds).toEqual(['result', 'study', 'study', 'study', 'finished']);
});

test('a request without studies is finished after 1 result', async () => {
  const { replies, ask, until } = made(1, {
    studies: async () => [
      function* () {
        yield 0;
        return study;
      },
    ],
    studyCount: 1,
  });
  ask(1);
  await until('finished', 1);
  expect(replies.map(({ kind }) => kind)).toEqual(['result', 'finished']);
});

test('the 6 studies of the worker are as many as it reckons with', async () => {
  const { studies } = await import('../../../src/worker/studies.ts');
  const { STUDY_COUNT } = await import('../../../src/worker/studyCount.ts');
  expect(studies).toHaveLength(STUDY_COUNT);
  expect(STUDY_COUNT).toBe(6);
});

test('as many studies say why as the worker counts on', async () => {
  const { why } = await import('../../../src/worker/why.ts');
  const { WHY_COUNT } = await import('../../../src/worker/studyCount.ts');
  expect(why).toHaveLength(WHY_COUNT);
});

test('Stop ends a run of 100 000 steps, and the next request is answered', async () => {
  const { ask, answer, until, finishedRuns } = made(100_000);
  ask(1);
  await until('progress', 1);
  answer({ kind: 'stop' });
  await new Promise((resolve) => setTimeout(resolve, 5));
  expect(finishedRuns()).toBe(0);
  ask(2);
  await until('progress', 2);
  answer({ kind: 'stop' });
});

test('a fault is 1 message with what was thrown, and the next request is answered', async () => {
  let fails = true;
  const { replies, ask, until } = made(1, {
    *run(asked) {
      yield 0;
      if (fails) throw new Error('coil has 0 turns; expected 1 or more');
      return { variant: asked, trace: trace() } as unknown as Result;
    },
  });
  ask(1);
  await until('fault', 1);
  expect(replies).toHaveLength(1);
  expect(replies[0]).toMatchObject({ message: 'coil has 0 turns; expected 1 or more' });
  expect(replies[0].kind === 'fault' && replies[0].details).toContain('answer.test');
  fails = false;
  ask(2);
  await until('finished', 2);
});

test('the memory of a trace is handed over once, though 2 of its columns share it', () => {
  const result = { trace: trace() } as unknown as Result;
  expect(buffersOf(result)).toHaveLength(2);
  expect(buffersOf({ kind: 'arrangement', priority: result, simultaneous: result })).toHaveLength(
    2,
  );
  const day = { trace: trace() } as unknown as DayRun;
  expect(buffersOf({ kind: 'day', day })).toHaveLength(2);
  expect(buffersOf(study)).toEqual([]);
});

test('the 5 lines of a cool-down are handed over with it', () => {
  const line = () => new Float64Array(4);
  const coolDown = {
    kind: 'coolDown',
    time: line(),
    top: line(),
    mean: line(),
    bottom: line(),
    loss: line(),
  } as unknown as Study;
  expect(buffersOf(coolDown)).toHaveLength(5);
});
