import type { Arrangement } from '../../shared/variant.ts';

/** Who wants heat. */
export interface Calls {
  readonly hotWater: boolean;
  readonly heating: boolean;
}

/** Who gets the primary flow, and whose flow limit the boiler keeps. */
export interface Mode {
  readonly coilRuns: boolean;
  readonly radiatorsRun: boolean;
  readonly limitOf: 'hotWater' | 'heating';
}

const off: Mode = { coilRuns: false, radiatorsRun: false, limitOf: 'heating' };
const coilOnly: Mode = { coilRuns: true, radiatorsRun: false, limitOf: 'hotWater' };
const radiatorsOnly: Mode = { coilRuns: false, radiatorsRun: true, limitOf: 'heating' };
const both: Mode = { coilRuns: true, radiatorsRun: true, limitOf: 'hotWater' };

/** One entry for each arrangement: what each pair of calls leads to. A new arrangement is a new entry. */
const modes: Readonly<Record<Arrangement, Readonly<Record<CallKey, Mode>>>> = {
  priority: { none: off, hotWater: coilOnly, heating: radiatorsOnly, both: coilOnly },
  simultaneous: { none: off, hotWater: coilOnly, heating: radiatorsOnly, both },
  hotWaterOnly: { none: off, hotWater: coilOnly, heating: off, both: coilOnly },
};

type CallKey = 'none' | 'hotWater' | 'heating' | 'both';

/** What the valves and the boiler do for these calls. */
export function modeFor(arrangement: Arrangement, calls: Calls): Mode {
  return modes[arrangement][keyOf(calls)];
}

function keyOf({ hotWater, heating }: Calls): CallKey {
  if (hotWater) return heating ? 'both' : 'hotWater';
  return heating ? 'heating' : 'none';
}
