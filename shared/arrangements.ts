/** Who wants heat. */
export interface Calls {
  readonly hotWater: boolean;
  readonly heating: boolean;
}

/** Which circuits are open, and whose flow target the boiler keeps. */
export interface Mode {
  readonly coilRuns: boolean;
  readonly radiatorsRun: boolean;
  readonly limitOf: 'hotWater' | 'heating';
}

/** One way of sharing a boiler between cylinder and rooms: what each pair of calls leads to. */
interface ArrangementRow {
  readonly label: string;
  /** One sentence for the person who has to recognise it in the cupboard. */
  readonly help: string;
  /** Whether the radiators belong to it. */
  readonly heated: boolean;
  readonly hotWater: Mode;
  readonly heating: Mode;
  readonly both: Mode;
  /** Resistance of the valve when it serves both, over that when it serves one; 1 when left out. */
  readonly sharedValve?: number;
  /** When both call for long, the other mode that takes turns with `both`. */
  readonly turn?: Mode;
}

const none: Mode = { coilRuns: false, radiatorsRun: false, limitOf: 'heating' };
const coil: Mode = { coilRuns: true, radiatorsRun: false, limitOf: 'hotWater' };
const radiators: Mode = { coilRuns: false, radiatorsRun: true, limitOf: 'heating' };
const together: Mode = { coilRuns: true, radiatorsRun: true, limitOf: 'hotWater' };

/** One entry for each arrangement. A new arrangement is a new entry here, and its test. */
export const arrangements = {
  priority: {
    label: 'hot water first',
    help: 'A diverter valve in or beside the boiler sends all the flow to the coil until the stat is satisfied.',
    heated: true,
    hotWater: coil,
    heating: radiators,
    both: coil,
  },
  priorityWithLimit: {
    label: 'hot water first, for a time',
    help: 'A diverter valve as above; when the rooms have waited for the time limit they get a turn.',
    heated: true,
    hotWater: coil,
    heating: radiators,
    both: coil,
    turn: radiators,
  },
  simultaneous: {
    label: 'both at once',
    help: 'Two zone valves; when both are open the flow divides as the resistances do.',
    heated: true,
    hotWater: coil,
    heating: radiators,
    both: together,
  },
  midPosition: {
    label: 'both through a mid-position valve',
    help: 'One three-port valve: either side, or between the two when both call.',
    heated: true,
    sharedValve: 3, // engineering guess, no source: each port is about half covered
    hotWater: coil,
    heating: radiators,
    both: together,
  },
  heatingFirst: {
    label: 'heating first',
    help: 'The rooms keep the boiler until they are satisfied; the cylinder gets what time is left.',
    heated: true,
    hotWater: coil,
    heating: radiators,
    both: radiators,
  },
  hotWaterOnly: {
    label: 'no heating',
    help: 'The boiler heats the cylinder only.',
    heated: false,
    hotWater: coil,
    heating: none,
    both: coil,
  },
} as const satisfies Record<string, ArrangementRow>;

/** Who gets the boiler when both cylinder and rooms call. */
export type Arrangement = keyof typeof arrangements;

/** One row of the table. */
export function arrangementOf(arrangement: Arrangement): ArrangementRow {
  return arrangements[arrangement];
}

/** Which circuits these calls open. @param turn  whether it is the rooms' turn, where turns are taken */
export function modeFor(arrangement: Arrangement, calls: Calls, turn = false): Mode {
  const row = arrangementOf(arrangement);
  if (calls.hotWater && calls.heating) return turn && row.turn ? row.turn : row.both;
  if (calls.hotWater) return row.hotWater;
  return calls.heating ? row.heating : none;
}
