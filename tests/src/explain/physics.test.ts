import { beforeAll, describe, expect, test } from 'vitest';
import { valueAt } from '../../../shared/sampleAt.ts';
import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { records } from '../../../sim/closures/records.ts';
import { readingAt } from '../../../src/explain/reading.ts';
import type { Here } from '../../../src/explain/physics/section.ts';
import { sections } from '../../../src/explain/physics/sections.ts';
import { relations } from '../../../src/explain/relations/all.ts';
import type { WorkingKey } from '../../../src/explain/working.ts';
import { workingOf } from '../../../src/explain/workings.ts';
import { type UnlikeRun, unlikeRuns } from '../../make/unlikeRuns.ts';

const all: readonly ClosureRecord[] = [...records, ...relations];
let runs: UnlikeRun[] = [];
beforeAll(() => {
  runs = unlikeRuns();
}, 120_000);

/** The start, the middle and the end of a reheat, as the view tells them. */
function moments({ result, day }: UnlikeRun): Here[] {
  const end = result.outcome.at;
  return [0, (result.measures.recovery ?? end) / 2, end].map((at) => {
    const reading = readingAt(result, at);
    return { result, at, reading, coilRuns: Number.isFinite(reading.conductance), day };
  });
}

const everywhere = () =>
  runs.flatMap((run) => moments(run).map((here) => [run.name, here] as const));

describe('19 sections, told of 16 unlike runs at 3 moments each', () => {
  test('each has its own place, and 2 to 7 sentences with 1 live number or more', () => {
    expect(new Set(sections.map(({ id }) => id)).size).toBe(19);
    for (const [name, here] of everywhere()) {
      for (const { id, said } of sections) {
        const told = said(here);
        const text = told.flat().map((part) => (typeof part === 'string' ? part : part.text));
        const words = text.join('');
        const where = `${name}, ${id}: ${words}`;
        expect(words, where).not.toMatch(/NaN|undefined|null|Infinity|not reached|\s\.|\.\.|\s{2}/);
        expect(words.match(/[.:](?:\s|$)/g)?.length ?? 0, where).toBeGreaterThanOrEqual(1);
        expect(words.split(/(?<=[.])\s/).length, where).toBeLessThanOrEqual(7);
        for (const paragraph of told) {
          const whole = paragraph.map((part) => (typeof part === 'string' ? part : part.text));
          expect(whole.join(''), where).toMatch(/^[A-Z].*\.$/s);
        }
        expect(
          told.flat().some((part) => typeof part !== 'string'),
          where,
        ).toBe(true);
      }
    }
  }, 60_000);

  test('each shows 1 or 2 relations of the two lists, and no number that is none', () => {
    for (const [name, here] of everywhere()) {
      for (const section of sections) {
        const steps = section.formulas(here);
        const where = `${name}, ${section.id}`;
        expect(steps.length, where).toBeGreaterThanOrEqual(1);
        expect(steps.length, where).toBeLessThanOrEqual(2);
        for (const { record, values } of steps) {
          for (const value of Object.values(values)) expect(value, where).not.toBeNaN();
          expect(
            all.map(({ key }) => key),
            where,
          ).toContain(record.key);
        }
      }
    }
  }, 60_000);

  test('halfway through the first reheat 0 of their relations lack a number', () => {
    const [, here] = moments(runs[0]);
    const open = sections.flatMap((section) =>
      section
        .formulas(here)
        .filter(({ values }) => values.result === undefined)
        .map(({ record }) => record.key),
    );
    expect(open).toEqual([]);
  });

  test('together, and by what they open, they reach all 114 relations', () => {
    const found = new Set<string>();
    for (const run of runs) {
      for (const here of moments(run)) {
        const open: WorkingKey[] = [];
        for (const { said, formulas, further } of sections) {
          for (const { record } of formulas(here)) found.add(record.key);
          for (const part of said(here).flat()) if (typeof part !== 'string') open.push(part.of);
          open.push(...further.map(({ key }) => key));
        }
        const asked = new Set<WorkingKey>();
        for (let key = open.pop(); key !== undefined; key = open.pop()) {
          if (asked.has(key)) continue;
          asked.add(key);
          const { steps, further } = workingOf(key, run.result, here.at, { day: run.day });
          for (const { record } of steps) found.add(record.key);
          open.push(...further.map((next) => next.key));
        }
      }
    }
    expect(all.filter(({ key }) => !found.has(key)).map(({ key }) => key)).toEqual([]);
  }, 60_000);
});

describe('numbers of the workings agree with the run', () => {
  const stepOf = (run: UnlikeRun, key: WorkingKey, record: string, at = 0) =>
    workingOf(key, run.result, at, { day: run.day }).steps.find((s) => s.record.key === record)
      ?.values.result ?? Number.NaN;
  const named = (name: string) => runs.find((run) => run.name === name) as UnlikeRun;

  test('radiators: the heat worked from their mean is the sampled heat within 1 in 1e3', () => {
    const run = named('weather compensation, rooms and cylinder at once');
    const { trace } = run.result;
    const at = (run.result.measures.recovery ?? 0) / 2;
    const sampled = valueAt(trace.time, trace.of.radiatorHeat, at);
    expect(sampled).toBeGreaterThan(100);
    // between two samples both temperatures and the heat are each drawn straight
    expect(stepOf(run, 'moment.radiatorHeat', 'radiator', at) / sampled).toBeCloseTo(1, 3);
  });

  test('litres by kelvins over the mean coil output: the recovery within 5 %', () => {
    const { measures } = runs[0].result;
    const ran = (measures.recovery ?? 0) - measures.waitingTime;
    const time = stepOf(runs[0], 'store.heatUp', 'heatUpTime');
    // the wall and the loss take what the formula leaves out
    expect(time / ran).toBeLessThan(1);
    expect(time / ran).toBeGreaterThan(0.95);
    expect(stepOf(runs[0], 'store.heatUp', 'tradeHeatUpTime') / time).toBeCloseTo(1, 1);
  });

  test('pipes of an ideal boiler: what the flow falls by is worked and sampled alike, to 1 in 1e3', () => {
    const run = named('an ideal boiler');
    const { trace, measures } = run.result;
    const at = (measures.recovery ?? 0) / 2;
    const worked = stepOf(run, 'moment.coilInlet', 'pipeEnd', at);
    const flow = valueAt(trace.time, trace.of.flow, at);
    const fallen = flow - valueAt(trace.time, trace.of.coilInlet, at);
    expect(fallen).toBeGreaterThan(0.05);
    // between two samples both ends are each drawn straight
    expect((flow - worked) / fallen).toBeCloseTo(1, 3);
  });

  test('litres run off while waiting come back out of flow and time, behind 10 m of pipe', () => {
    const run = named('a day by load profile in a small store');
    const waited = run.day?.measures.waitVolume ?? 0;
    expect(waited).toBeGreaterThan(1e-4);
    expect(stepOf(run, 'day.waitVolume', 'ranFor') / waited).toBeCloseTo(1, 9); // rounding
  });

  test('circulator less pipes, coil and what is fixed: nothing is left over, to 1 in 1e3', () => {
    const run = runs[0];
    const { variant, measures } = run.result;
    const added = stepOf(run, 'measure.coilFlow', 'circulator');
    const share = (measures.coilFlow / (15 / 60_000)) ** 2;
    const lost =
      stepOf(run, 'pipe.friction', 'pipePressureDrop') +
      stepOf(run, 'coil.friction', 'pipePressureDrop') +
      stepOf(run, 'measure.coilFlow', 'quadraticDrop') +
      variant.boiler.pressureDrop * share;
    expect(variant.primary.flowFrom).toBe('network');
    // the network is solved to 1e-16 of its range; what is left is the rounding of nine sums
    expect(lost / added).toBeCloseTo(1, 3);
  });

  test('a day: what was drawn, its heat, its bill and its loss come back out of their workings', () => {
    const run = named('a day of a household');
    const { measures } = run.day as NonNullable<UnlikeRun['day']>;
    for (const [key, record, measure] of [
      ['day.drawn', 'atTheTaps', measures.drawn],
      ['day.heatDrawn', 'storedHeat', measures.heatDrawn],
      ['day.efficiency', 'efficiencyOfDay', measures.efficiency],
      ['day.standingLoss', 'lostInTime', measures.standingLoss],
      ['day.standingLossCost', 'costOfLoss', measures.standingLossCost],
      ['day.cost', 'bill', measures.cost],
    ] as const) {
      expect(stepOf(run, key, record) / (measure ?? Number.NaN), key).toBeCloseTo(1, 9); // rounding
    }
    // a kilogram and a litre differ by what warm water has expanded, at most 2 % to 60 °C
    const kilograms = stepOf(run, 'day.fromStore', 'outletBlend');
    expect(Math.abs(kilograms / (1000 * measures.fromStore) - 1)).toBeLessThan(0.02);
  });

  test('a store as one body: the cool-down gives back the 1.67 W/K that were put in', () => {
    expect(stepOf(runs[0], 'store.coolDown', 'coolDown')).toBeCloseTo(1.6667, 3);
  });
});
