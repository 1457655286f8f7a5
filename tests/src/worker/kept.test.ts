import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Study } from '../../../shared/study.ts';
import { withSetting } from '../../../shared/variant.ts';
import { kept } from '../../../src/worker/kept.ts';

const study: Study = { kind: 'placement', points: [] };

/** A study of 3 steps that counts how often it is begun. */
function counted() {
  let begun = 0;
  const remembered = kept(
    function* () {
      begun++;
      yield 0.3;
      yield 0.6;
      yield 1;
      return { ...study };
    },
    ({ boiler }) => boiler,
  );
  const steps = (kilowatts: number) => {
    const run = remembered(withSetting(defaultVariant('any'), 'boiler.output', kilowatts * 1000));
    let count = 0;
    while (!run.next().done) count++;
    return count;
  };
  return { steps, remembered, begun: () => begun };
}

test('a study of 3 steps is made once for each of 2 variants, and remembered in 0 steps', () => {
  const { steps, begun } = counted();
  expect([steps(24), steps(30), steps(24), steps(30)]).toEqual([3, 3, 0, 0]);
  expect(begun()).toBe(2);
});

test('the 13th variant pushes the first one out', () => {
  const { steps } = counted();
  for (let kilowatts = 1; kilowatts <= 13; kilowatts++) steps(kilowatts);
  expect([steps(13), steps(2), steps(1)]).toEqual([0, 0, 3]);
});

test('one that was stopped half-way is not remembered', () => {
  const { steps, remembered } = counted();
  const run = remembered(withSetting(defaultVariant('any'), 'boiler.output', 24_000));
  run.next();
  expect(steps(24)).toBe(3);
});

test('what does not matter to a study does not make it again', () => {
  const { steps, remembered } = counted();
  steps(24);
  const named = withSetting(defaultVariant('other'), 'boiler.output', 24_000);
  expect(remembered(named).next().done).toBe(true);
});
