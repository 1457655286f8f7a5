import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../shared/fields.ts';
import type { Programme } from '../../shared/variant.ts';
import { isAllowed, nextEdge } from '../../shared/programme.ts';

const hour = 3600;
const day = 24 * hour;

/** Hot water at set times: one period, and another where given; heating always. */
function hotWater(from: number, length: number, againFrom = 0, againFor = 0): Programme {
  return {
    ...defaultVariant('programme').programme,
    hotWater: 'timed',
    hotWaterFrom: from,
    hotWaterFor: length,
    hotWaterAgainFrom: againFrom,
    hotWaterAgainFor: againFor,
    heating: 'always',
  };
}

const open = (programme: Programme, clock: number) => isAllowed(programme, 'hotWater', clock);

/** The number next below a positive one. */
function justBefore(x: number): number {
  const number = new Float64Array([x]);
  new BigInt64Array(number.buffer)[0] -= 1n;
  return number[0];
}

describe('hot water from 23:00 for 120 min', () => {
  const late = hotWater(23 * hour, 2 * hour);

  test('is open at 0:30 and 23:30, shut at 1:30 and 22:30, on the first day and the third', () => {
    for (const days of [0, 2]) {
      const at = (hours: number) => open(late, days * day + hours * hour);
      expect([0.5, 1.5, 22.5, 23.5].map(at)).toEqual([true, false, false, true]);
    }
  });

  test('opens at 82800 s and shuts at 90000 s, neither a bit sooner', () => {
    expect([justBefore(82_800), 82_800].map((clock) => open(late, clock))).toEqual([false, true]);
    expect([justBefore(90_000), 90_000].map((clock) => open(late, clock))).toEqual([true, false]);
  });

  test('from 0:30 the edges are at 1:00, 23:00, and 1:00 and 23:00 of the next day', () => {
    const edges: number[] = [];
    for (let clock = 0.5 * hour; edges.length < 4;) {
      clock = nextEdge(late, clock);
      edges.push(clock / hour);
    }
    expect(edges).toEqual([1, 23, 25, 47]);
  });
});

test('two periods, 6:00 for 60 min and 17:00 for 90 min, are open for 150 of 1440 min', () => {
  const twice = hotWater(6 * hour, hour, 17 * hour, 1.5 * hour);
  let minutes = 0;
  for (let minute = 0; minute < 1440; minute++) if (open(twice, minute * 60)) minutes++;
  expect(minutes).toBe(150);
  expect([6.5, 12, 18, 18.5].map((hours) => open(twice, hours * hour))).toEqual([
    true,
    false,
    true,
    false,
  ]);
});

test('a period of 0 min is left out: not open at its start, and no edge', () => {
  const once = hotWater(6 * hour, hour, 17 * hour, 0);
  expect(open(once, 17 * hour)).toBe(false);
  expect(nextEdge(once, 7 * hour)).toBe(30 * hour); // 6:00 of the next day
  expect(nextEdge(hotWater(6 * hour, 0), 0)).toBe(Number.POSITIVE_INFINITY);
});

test('without set times both services are open at 3:00 and there is no edge', () => {
  const { programme } = defaultVariant('always');
  expect(isAllowed(programme, 'hotWater', 3 * hour)).toBe(true);
  expect(isAllowed(programme, 'heating', 3 * hour)).toBe(true);
  expect(nextEdge(programme, 3 * hour)).toBe(Number.POSITIVE_INFINITY);
});

test('heating times do not shut hot water: at 12:00 one is shut and the other open', () => {
  const programme: Programme = { ...hotWater(0, 0), hotWater: 'always', heating: 'timed' };
  expect(isAllowed(programme, 'heating', 12 * hour)).toBe(false); // 6:00 for 3 h and 16:00 for 6 h
  expect(isAllowed(programme, 'hotWater', 12 * hour)).toBe(true);
  expect(nextEdge(programme, 12 * hour)).toBe(16 * hour);
});

describe('a period of 24 h', () => {
  test.each([0, 6.25, 23.75])(
    'from %d h never shuts in 3 days, a bit before or at its edges',
    (from) => {
      const always = hotWater(from * hour, day);
      for (let clock = 0; clock < 3 * day; clock = nextEdge(always, clock)) {
        expect(open(always, clock)).toBe(true);
        if (clock > 0) expect(open(always, justBefore(clock))).toBe(true);
      }
    },
  );

  test('that starts at no round number, 0.07 h or 252.00000000000003 s, never shuts either', () => {
    const always = hotWater(0.07 * hour, day);
    for (let clock = 0; clock < 3 * day; clock = nextEdge(always, clock)) {
      expect(open(always, clock)).toBe(true);
    }
  });
});

/** Starts in quarters of an hour and lengths in 5 min, as they are set. */
const anyStart = fc.integer({ min: 0, max: 95 }).map((quarter) => quarter * 900);
const anyLength = fc.integer({ min: 0, max: 288 }).map((fives) => fives * 300);
const anyProgramme = fc
  .record({
    starts: fc.tuple(anyStart, anyStart, anyStart, anyStart),
    lengths: fc.tuple(anyLength, anyLength, anyLength, anyLength),
    hotWater: fc.constantFrom('always' as const, 'timed' as const),
    heating: fc.constantFrom('always' as const, 'timed' as const),
  })
  .map(({ starts, lengths, ...whether }): Programme => ({
    ...whether,
    startsAt: 0,
    hotWaterFrom: starts[0],
    hotWaterFor: lengths[0],
    hotWaterAgainFrom: starts[1],
    hotWaterAgainFor: lengths[1],
    heatingFrom: starts[2],
    heatingFor: lengths[2],
    heatingAgainFrom: starts[3],
    heatingAgainFor: lengths[3],
  }));
const services = ['hotWater', 'heating'] as const;

/** The same by remainders: open while less of the day than its length has gone since the start. */
function byRemainder(programme: Programme, service: 'hotWater' | 'heating', clock: number) {
  if (programme[service] === 'always') return true;
  const since = (from: number) => (((clock - from) % day) + day) % day;
  return (
    since(programme[`${service}From`]) < programme[`${service}For`] ||
    since(programme[`${service}AgainFrom`]) < programme[`${service}AgainFor`]
  );
}

/** Edges over 3 days. */
function edgesOf(programme: Programme): number[] {
  const edges: number[] = [];
  for (let clock = 0; ;) {
    const next = nextEdge(programme, clock);
    if (!(next < 3 * day)) return edges;
    expect(next).toBeGreaterThan(clock);
    edges.push(next);
    clock = next;
  }
}

describe('any programme over 3 days, 300 of them', () => {
  test('is open when the remainder of the day says so', () => {
    fc.assert(
      fc.property(anyProgramme, fc.integer({ min: 0, max: 3 * day }), (programme, clock) => {
        for (const service of services) {
          expect(isAllowed(programme, service, clock)).toBe(byRemainder(programme, service, clock));
        }
      }),
      { numRuns: 300 },
    );
  });

  test('changes nothing between two edges, and at an edge changes something or a period meets or lies in another', () => {
    fc.assert(
      fc.property(anyProgramme, fc.double({ min: 0, max: 1, noNaN: true }), (programme, share) => {
        const edges = [0, ...edgesOf(programme)];
        edges.slice(1).forEach((edge, index) => {
          const before = edges[index];
          const inside = before + share * (justBefore(edge) - before);
          let changes = 0;
          for (const service of services) {
            const at = (clock: number) => isAllowed(programme, service, clock);
            expect(at(inside)).toBe(at(before));
            expect(at(justBefore(edge))).toBe(at(before));
            if (at(edge) !== at(before)) changes++;
          }
          // nothing changes where a service is open on both sides, never where it is shut on both
          if (changes === 0) {
            const timed = services.filter((service) => programme[service] === 'timed');
            expect(timed.some((service) => isAllowed(programme, service, edge))).toBe(true);
          }
        });
      }),
      { numRuns: 300 },
    );
  });

  test('no start or end of a period that is set is missed', () => {
    fc.assert(
      fc.property(anyProgramme, (programme) => {
        const expected = new Set<number>();
        for (const service of services) {
          if (programme[service] === 'always') continue;
          for (const again of ['', 'Again'] as const) {
            const from = programme[`${service}${again}From`];
            const length = programme[`${service}${again}For`];
            // a whole day has neither
            const isPart = length > 0 && length < day;
            for (let days = -1; isPart && days < 3; days++) {
              expected.add(from + days * day);
              expected.add(from + length + days * day);
            }
          }
        }
        const within = [...expected].filter((edge) => edge > 0 && edge < 3 * day);
        expect(edgesOf(programme)).toEqual(within.sort((a, b) => a - b));
      }),
      { numRuns: 300 },
    );
  });
});

test('300 single periods of any length open and shut in turn, exactly at the edges that are foretold', () => {
  const from = fc.double({ min: 0, max: day - 1, noNaN: true });
  const length = fc.double({ min: 1, max: day - 1, noNaN: true });
  fc.assert(
    fc.property(from, length, (start, lasts) => {
      const programme = hotWater(start, lasts);
      let isOpen = open(programme, 0);
      for (const edge of edgesOf(programme)) {
        expect(open(programme, justBefore(edge))).toBe(isOpen);
        isOpen = !isOpen;
        expect(open(programme, edge)).toBe(isOpen);
      }
    }),
    { numRuns: 300 },
  );
});
