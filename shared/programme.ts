import type { Seconds } from './units.ts';
import type { Programme } from './variant.ts';

/** What a programme can allow. */
export type Service = 'hotWater' | 'heating';

/** Whether a service is allowed at a time. @param clock  s after the midnight before the run */
export function isAllowed(programme: Programme, service: Service, clock: Seconds): boolean {
  if (programme[service] === 'always') return true;
  return periodsOf(programme, service).some(({ from, to, isWholeDay }) => {
    if (isWholeDay) return true; // its end and its next start may be a bit apart
    // the last start not after this time; its end is the same sum as in `nextEdge`, to the last bit
    const day = lastOf(from, clock);
    return clock < to + day * DAY;
  });
}

/** The next time at which either service begins or ends to be allowed; infinite without a programme. */
export function nextEdge(programme: Programme, clock: Seconds): Seconds {
  let next = Number.POSITIVE_INFINITY;
  for (const service of ['hotWater', 'heating'] as const) {
    if (programme[service] === 'always') continue;
    for (const { from, to, isWholeDay } of periodsOf(programme, service)) {
      if (isWholeDay) continue;
      for (const edge of [from, to]) {
        next = Math.min(next, edge + (lastOf(edge, clock) + 1) * DAY);
      }
    }
  }
  return next;
}

/** The day of the last time not after `clock` at which a daily event happens. */
function lastOf(event: Seconds, clock: Seconds): number {
  const day = Math.floor((clock - event) / DAY);
  if (event + (day + 1) * DAY <= clock) return day + 1;
  return event + day * DAY > clock ? day - 1 : day;
}

interface Period {
  readonly from: Seconds;
  readonly to: Seconds;
  readonly isWholeDay: boolean;
}

function periodsOf(programme: Programme, service: Service): readonly Period[] {
  const periods = [
    [programme[`${service}From`], programme[`${service}For`]],
    [programme[`${service}AgainFrom`], programme[`${service}AgainFor`]],
  ];
  return periods
    .filter(([, length]) => length > 0)
    .map(([from, length]) => ({ from, to: from + length, isWholeDay: length >= DAY }));
}

const DAY = 86_400; // s
