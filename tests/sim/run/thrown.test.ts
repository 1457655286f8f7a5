import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ArrangementThrow } from '../../../shared/arrangementThrow.ts';
import type { Mark, Quantity, Result } from '../../../shared/result.ts';
import { presets, presetVariant } from '../../../shared/presets.ts';
import { type Variant, withSetting } from '../../../shared/variant.ts';
import { simulate, simulateToEnd } from '../../../sim/run/simulate.ts';
import { goOn, simulateThrown, type ThrowPoint } from '../../../sim/run/thrown.ts';
import { toEnd } from '../../../sim/run/toEnd.ts';
import { anyThrows } from '../../make/anyThrows.ts';

const presetOf = (key: string) => {
  const preset = presets.find((one) => one.key === key);
  if (!preset) throw new Error(`there is no preset ${key}`);
  return presetVariant(preset);
};
const thrown = (
  variant: Variant,
  throws: readonly ArrangementThrow[],
  keep?: (point: ThrowPoint) => void,
) => toEnd(simulateThrown(variant, throws, {}, keep));
const heatingFirst = (at: number): ArrangementThrow => ({ at, arrangement: 'heatingFirst' });

/** A run taken up from where another stood at a throw: its samples and marks from there on. */
function takenUp(variant: Variant, point: ThrowPoint, throws: readonly ArrangementThrow[]): Result {
  return toEnd(
    simulate(variant, {
      *through(_system, marching) {
        const pieces = yield* goOn(point, throws, marching);
        const marks = pieces.flatMap((piece) => piece.marks);
        return { ...pieces[pieces.length - 1], marks, start: pieces[0].start };
      },
    }),
  );
}

/** Bits of the samples with these numbers, each NaN the same. */
function bitsOf({ trace }: Result, from: number, to: number): string {
  const rows = Object.keys(trace.of).map((key) => trace.of[key as Quantity].slice(from, to));
  const layers = trace.layerTemperature.slice(from * trace.layers, to * trace.layers);
  return [trace.time.slice(from, to), layers, ...rows].map((row) => row.join(' ')).join('\n');
}

const countBefore = ({ trace }: Result, at: number) =>
  trace.time.filter((time) => time < at).length;
const marksOf = ({ marks }: Result, which: (mark: Mark) => boolean) => marks.filter(which);

/** What every run with throws has to keep. */
function keepsItsWord(variant: Variant, throws: readonly ArrangementThrow[]) {
  const plain = simulateToEnd(variant);
  const points: ThrowPoint[] = [];
  const result = thrown(variant, throws, (point) => points.push(point));
  const end = result.outcome.at;
  const marked = marksOf(result, ({ kind }) => kind === 'switchThrown').map(({ at }) => at);
  if (result.outcome.kind === 'finished') {
    expect(marked).toEqual(throws.map(({ at }) => at).filter((at) => at < end - 1e-7));
    expect(plain.outcome.kind).toBe('finished');
    expect(end).toBeCloseTo(plain.outcome.at, 7); // where the last step ends, rounded
  }

  // until the first throw it is the run without it
  const first = throws[0].at;
  const before = countBefore(result, first);
  expect(before).toBe(countBefore(plain, first));
  expect(bitsOf(result, 0, before)).toBe(bitsOf(plain, 0, before));
  const isBefore = ({ at }: Mark) => at < first;
  expect(marksOf(result, isBefore)).toEqual(marksOf(plain, isBefore));
  const closed = ({ phases }: Result) => phases.filter(({ to }) => to < first);
  expect(closed(result)).toEqual(closed(plain));

  // from each throw it is the run that goes on from what was kept there
  for (const [index, point] of points.entries()) {
    const again = takenUp(variant, point, throws.slice(index));
    const { samples } = result.trace;
    expect(bitsOf(result, samples - again.trace.samples, samples)).toBe(
      bitsOf(again, 0, again.trace.samples),
    );
    expect(again.marks).toEqual(result.marks.slice(-again.marks.length));
    expect(again.trace.time[0]).toBe(point.at);
  }

  for (const at of marked) {
    expect(result.trace.time.filter((time) => time === at).length).toBeGreaterThanOrEqual(2);
  }
  for (let sample = 1; sample < result.trace.samples; sample++) {
    if (result.trace.time[sample] < result.trace.time[sample - 1]) throw new Error('time fell');
  }
  for (let one = 1; one < result.phases.length; one++) {
    expect(result.phases[one].from).toBe(result.phases[one - 1].to);
  }
  // rounding, as for any run
  expect(Math.abs(result.balance.relative)).toBeLessThan(1e-9);
  return { plain, result };
}

test('60 runs over all settings with 1 to 4 throws: nothing before a throw knows of it, and what was kept goes on to the same bits', () => {
  fc.assert(
    fc.property(anyThrows, ({ variant, throws }) => {
      keepsItsWord(variant, throws);
    }),
    { numRuns: 60, endOnFailure: true },
  );
}, 300_000);

describe('at an awkward moment', () => {
  const variant = presetOf('both-at-once');
  const { marks } = simulateToEnd(variant);
  const firsts = new Map([...marks].reverse().map(({ at, kind }) => [kind, at]));

  test.each([...firsts])('in the same moment as %s at %d s', (_kind, at) => {
    keepsItsWord(variant, [heatingFirst(at)]);
  });

  test('at 0 s, and a microsecond after it', () => {
    keepsItsWord(variant, [heatingFirst(0)]);
    keepsItsWord(variant, [heatingFirst(1e-6)]);
  });

  test('2 throws in 1 s, and 3 at once of which the last is what goes on', () => {
    keepsItsWord(variant, [heatingFirst(900), { at: 901, arrangement: 'priority' }]);
    const throws = [heatingFirst(900), heatingFirst(900), { at: 900, arrangement: 'priority' }];
    const { result } = keepsItsWord(variant, throws as ArrangementThrow[]);
    expect(afterwards(result, 900 + variant.primary.valveTravel, 60, 'radiatorFlow')).toBe(0);
  });

  test('at the end and after it there is no throw', () => {
    const { duration } = variant.run;
    for (const at of [duration, duration + 1]) {
      const { plain, result } = keepsItsWord(variant, [heatingFirst(at)]);
      expect(bitsOf(result, 0, result.trace.samples)).toBe(bitsOf(plain, 0, plain.trace.samples));
      expect(result.measures).toEqual(plain.measures);
    }
  });
});

/** A quantity a while after a time. */
function afterwards({ trace }: Result, at: number, seconds: number, key: Quantity): number {
  return trace.of[key][trace.time.findIndex((time) => time >= at + seconds)];
}

describe('what a throw does', () => {
  const variant = withSetting(presetOf('rapid-coil'), 'heating.arrangement', 'priority');
  const travel = variant.primary.valveTravel;

  test('from hot water first to heating first at 10 min: the coil gives 0 W once the valve has arrived, until the rooms are satisfied', () => {
    const result = thrown(variant, [heatingFirst(600)]);
    expect(afterwards(result, 540, 0, 'coilHeat')).toBeGreaterThan(1000);
    expect(afterwards(result, 600 + travel, 60, 'radiatorFlow')).toBeGreaterThan(0);
    expect(afterwards(result, 600 + travel, 60, 'coilFlow')).toBe(0);
    const arrived = result.marks.find(({ kind, at }) => kind === 'valveArrived' && at > 600);
    expect(arrived?.at).toBeCloseTo(600 + travel, 6); // the solver's clock
  });

  test('there and back within the travel of the valve: it stays where it was, and the reheat is later by less than 1 s', () => {
    const back = thrown(variant, [heatingFirst(600), { at: 605, arrangement: 'priority' }]);
    const plain = simulateToEnd(variant);
    const arrivals = (result: Result) => marksOf(result, ({ kind }) => kind === 'valveArrived');
    expect(arrivals(back).map(({ at }) => Math.round(at))).toEqual(
      arrivals(plain).map(({ at }) => Math.round(at)),
    );
    const { recovery } = plain.measures;
    expect(Math.abs((back.measures.recovery ?? 0) - (recovery ?? 1e9))).toBeLessThan(1);
  });

  test('to the arrangement it has: 0 phases more, and layers within 5 mK of the run without it', () => {
    const plain = simulateToEnd(variant);
    const result = thrown(variant, [{ at: 777, arrangement: 'priority' }]);
    expect(result.phases).toHaveLength(plain.phases.length);
    const layers = (of: Result) => of.trace.layerTemperature.slice(-of.trace.layers);
    const [one, other] = [layers(plain), layers(result)];
    // other steps, the same tolerance of 1e-4 K a step
    for (const [layer, T] of one.entries()) expect(Math.abs(other[layer] - T)).toBeLessThan(5e-3);
  });

  test('from turns to hot water first: 0 turns are taken afterwards', () => {
    const turns = withSetting(variant, 'heating.arrangement', 'priorityWithLimit');
    const at = turns.heating.priorityLimit / 2;
    const result = thrown(turns, [{ at, arrangement: 'priority' }]);
    expect(result.marks.filter(({ kind }) => kind === 'turnTaken')).toEqual([]);
  });

  test('from both to hot water first the coil keeps its share of the flow for as long as the valve travels', () => {
    const both = withSetting(variant, 'heating.arrangement', 'simultaneous');
    const result = thrown(both, [{ at: 1200, arrangement: 'priority' }]);
    const shared = afterwards(result, 1190, 0, 'coilFlow');
    expect(afterwards(result, 1200, travel / 2, 'coilFlow')).toBe(shared);
    expect(afterwards(result, 1200 + travel, 5, 'coilFlow')).toBeGreaterThan(shared);
  });
});
