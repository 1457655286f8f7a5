import type { Mark } from '../../shared/result.ts';
import type { System } from '../solve/system.ts';
import type { MarkedState } from './logbook.ts';
import { march, type Marched, type MarchOptions } from './march.ts';

/** A march to a mark; nothing is found where it does not come in time. */
export interface ToMark {
  readonly found: MarkedState | undefined;
  readonly marched: Marched;
}

/** Takes a system through time until the first mark that fits. */
export function* untilMark(
  system: System,
  options: Omit<MarchOptions, 'until'>,
  fits: (mark: Mark) => boolean,
): Generator<number, ToMark> {
  const marched = yield* march(system, { ...options, until: fits });
  return { found: marched.marks.find(({ mark }) => fits(mark)), marched };
}
