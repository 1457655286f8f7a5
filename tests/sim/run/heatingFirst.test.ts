import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { withSettings } from '../../../shared/presets.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';

test('heating first: while the rooms call the coil never runs, and a cold store waits for all of that time', () => {
  const house = withSettings(defaultVariant('heating first'), [
    ['heating.arrangement', 'heatingFirst'],
    ['run.duration', 3],
  ]);
  const { phases, marks, measures } = simulateToEnd(house);
  // the rooms call from the start, so the first of the time is theirs
  const satisfied = marks.find(({ kind }) => kind === 'roomSatisfied')?.at ?? Number.NaN;
  expect(satisfied).toBeGreaterThan(200);
  for (const { from, coilRuns } of phases) if (from < satisfied) expect(coilRuns).toBe(false);

  const first = simulateToEnd(withSettings(house, [['heating.arrangement', 'priority']]));
  expect((measures.recovery ?? Infinity) - (first.measures.recovery ?? 0)).toBeGreaterThan(
    satisfied,
  );
  expect(measures.lowestRoom).toBeGreaterThan(first.measures.lowestRoom ?? 0);
});
