import fc from 'fast-check';
import type { ArrangementThrow } from '../../shared/arrangementThrow.ts';
import { type Arrangement, arrangements } from '../../shared/arrangements.ts';
import type { Variant } from '../../shared/variant.ts';
import { anyRun } from './anyRun.ts';

/** Any run of at most 3 h, and 1 to 4 throws of the switch in it, some at its start, at once or after its end. */
export const anyThrows: fc.Arbitrary<{ variant: Variant; throws: ArrangementThrow[] }> = fc
  .record({
    variant: anyRun,
    throws: fc.array(
      fc.record({
        share: fc.oneof(
          { weight: 6, arbitrary: fc.double({ min: 0, max: 1, noNaN: true }) },
          { weight: 1, arbitrary: fc.constantFrom(0, 0.25, 0.5, 1, 1.2) },
        ),
        arrangement: fc.constantFrom(...(Object.keys(arrangements) as Arrangement[])),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ variant, throws }) => ({
    variant,
    throws: throws
      .map(({ share, arrangement }) => ({ at: share * variant.run.duration, arrangement }))
      .sort((one, other) => one.at - other.at),
  }));
