import { describe, expect, test } from 'vitest';
import { defaultVariant, fieldAt } from '../../shared/fields.ts';
import { duration, measureText } from '../../shared/format.ts';
import { presets, presetVariant } from '../../shared/presets.ts';
import type { Phase, Result } from '../../shared/result.ts';
import { plantFinding } from '../../shared/sentences/plant.ts';
import { findingOf, plain, type Sentence } from '../../shared/sentences.ts';
import { timeShut } from '../../shared/sentences/hindrances.ts';
import { toSI } from '../../shared/units.ts';
import { type FieldPath, withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { inventedResult } from '../make/result.ts';

const text = (sentence: Sentence) => plain(sentence).replaceAll('\u00a0', ' ');
const told = (result: Result) => findingOf(result).map(text);

/** A run with some settings, each in its shown unit. */
function ran(...sets: readonly (readonly [FieldPath, number | string])[]): Result {
  return simulateToEnd(
    sets.reduce((variant, [path, value]) => {
      const field = fieldAt(path);
      const inside = field.kind === 'number' ? toSI(Number(value), field.unit) : value;
      return withSetting(variant, path, inside);
    }, defaultVariant('Case')),
  );
}

const minutes = (seconds: number) => duration(seconds).replaceAll('\u00a0', ' ');

describe('a burner that cannot burn as little as the coil takes', () => {
  const result = ran(
    ['boiler.minimumOutput', 12],
    ['boiler.hotWaterFlow', 70],
    ['coil.given', 'area'],
    ['coil.area', 0.35],
    ['run.duration', 3],
  );

  test('a least output of 12 kW on 0.35 m² of coil is told, with its rests counted', () => {
    const rests = result.phases.filter(
      ({ coilRuns, limit, from }) =>
        coilRuns && limit === 'resting' && from < (result.measures.recovery ?? 0),
    ).length;
    expect(rests).toBeGreaterThan(3);
    const { minimumTime, restingTime } = result.measures;
    expect(told(result)).toContain(
      `The coil takes less than the boiler’s least output: the burner is at its least for ${minutes(minimumTime)}, goes off ${rests} times and rests or waits for ${minutes(restingTime)}.`,
    );
  });

  test('neither limit is said to hold for all of the heating', () => {
    expect(told(result).join(' ')).not.toMatch(/for all .* of heating/);
  });
});

describe('faults of the sensor', () => {
  const wired = ['sensor.element', 'thermistor'] as const;

  test('an open lead after 15 min refuses hot water, and nothing speaks of a longer run', () => {
    const [headline, why] = told(ran(wired, ['sensor.fault', 'open'], ['sensor.faultAt', 15]));
    expect(headline).toBe(
      'After 15.0 min the controller shows a sensor fault and refuses hot water.',
    );
    expect(why).toContain('find which before anything else');
    expect(why).not.toContain('longer run');
  });

  test('one that comes at 60 min, after the reheat, stands below the recovery', () => {
    const sentences = told(ran(wired, ['sensor.fault', 'open'], ['sensor.faultAt', 60]));
    expect(sentences[0]).toMatch(/^From cold to 60 °C at the sensor in \d/);
    expect(sentences).toContain(
      'After 60.0 min the controller shows a sensor fault and refuses hot water.',
    );
  });

  test('5 kΩ read as 10 kΩ satisfies the stat too soon, and both temperatures are told', () => {
    const result = ran(
      wired,
      ['sensor.r25', 5000],
      ['sensor.expects', 'thermistor'],
      ['sensor.expectedR25', 10_000],
    );
    const sentences = told(result);
    expect(sentences[0]).toMatch(/^From cold to a reading of 60 °C in \d/);
    const bead = /reads 60\.0 °C while the sensor is at (\d+\.\d) °C/.exec(sentences.join(' '));
    expect(Number(bead?.[1])).toBeLessThan(50);
  });

  test('a sensor strapped on bare says how hot the water beside it is', () => {
    const sentences = told(ran(['stat.mounting', 'strappedBare']));
    expect(sentences.join(' ')).toMatch(
      /the water beside the sensor is at 6\d\.\d °C, the sensor itself at 60\.0 °C\./,
    );
  });
});

describe('what else keeps the boiler from the cylinder', () => {
  test('a hot-water time of 15 min in 2 h: shut for the rest, and the advice is a longer time', () => {
    const result = ran(
      ['programme.startsAt', 6],
      ['programme.hotWater', 'timed'],
      ['programme.hotWaterFrom', 6],
      ['programme.hotWaterFor', 15],
      ['programme.hotWaterAgainFor', 0],
    );
    expect(result.measures.recovery).toBeNull();
    // 120 min less 15; what flows during the overrun is counted as shut
    expect(timeShut(result) / 60).toBeCloseTo(105, 1); // to 3 s: phases end at events
    expect(told(result)[1]).toMatch(/^The hot-water programme is shut for 105\.0 min while/);
  });

  test('a programme that begins at 12:00 lets a run from 6:00 to 8:00 heat nothing', () => {
    const result = ran(
      ['programme.hotWater', 'timed'],
      ['programme.hotWaterFrom', 12],
      ['programme.hotWaterAgainFor', 0],
    );
    expect(told(result)[1]).toBe(
      'The programme lets the boiler heat no hot water while this run lasts.',
    );
  });

  test('turns of 15 min each: the rooms had 10 min or more and no more than 15 min for each turn', () => {
    const result = ran(
      ['heating.arrangement', 'priorityWithLimit'],
      ['heating.priorityLimit', 15],
      ['heating.heatingTurn', 15],
    );
    const turn = /The rooms take their turn: for (\d+\.\d) min/.exec(told(result).join(' '));
    const until = result.measures.recovery ?? 0;
    const changes = result.marks.filter(({ kind, at }) => kind === 'turnTaken' && at < until);
    expect(Number(turn?.[1])).toBeGreaterThanOrEqual(10); // a room stat may be satisfied sooner
    expect(Number(turn?.[1])).toBeLessThanOrEqual(15 * Math.ceil(changes.length / 2));
  });

  test('a valve that takes 120 s is told, one that takes 20 s is not', () => {
    expect(told(ran(['primary.valveTravel', 120]))).toContain(
      'For 2.0 min of them a valve is on its way.',
    );
    expect(told(ran()).join(' ')).not.toContain('valve');
  });

  test('one target for both at 55 °C: the boiler holds 55 °C, and a target of its own is the advice', () => {
    const [headline, why] = told(ran(['boiler.targets', 'shared'], ['boiler.heatingFlow', 55]));
    expect(headline).toBe('The sensor never reaches 60 °C: the boiler holds its flow at 55 °C.');
    expect(why).toMatch(/^There is one flow target: the cylinder gets heating’s\./);
  });

  test('one target for both at 75 °C is named as the limit', () => {
    const sentences = told(ran(['boiler.targets', 'shared'], ['boiler.heatingFlow', 75]));
    expect(sentences.join(' ')).toContain('75 °C limit');
    expect(sentences.join(' ')).not.toContain('80 °C');
    expect(sentences).toContain('There is one flow target: the cylinder is heated at heating’s.');
  });
});

describe('the immersion heater', () => {
  test('3 kW in place of the boiler: no word of full output, and no rule of the trade', () => {
    const result = ran(
      ['immersion.used', 'insteadOfBoiler'],
      ['immersion.setPoint', 65],
      ['run.duration', 6],
    );
    expect(result.measures.recovery).not.toBeNull();
    const sentences = told(result);
    expect(sentences[1]).toBe(
      'The immersion heater does it alone at 3 kW; the boiler heats no hot water.',
    );
    expect(sentences.join(' ')).not.toMatch(/full output|trade/);
  });

  test('beside the boiler it adds the electricity of the measures', () => {
    const result = ran(['immersion.used', 'withBoiler']);
    const added = measureText('electricity', result.measures.electricity).replace('\u00a0', ' ');
    expect(told(result)).toContain(`The immersion heater adds ${added} over the whole run.`);
  });
});

test.each(presets)('$key: what its finding says of minutes stays within its recovery', (preset) => {
  const result = simulateToEnd(presetVariant(preset));
  const { recovery } = result.measures;
  if (recovery === null) return expect(told(result)[0]).toMatch(/never|Not back|fault/);
  for (const [, part] of told(result)
    .join(' ')
    .matchAll(/for (\d+\.\d) min of them/g)) {
    expect(Number(part)).toBeLessThanOrEqual(Number((recovery / 60).toFixed(1)));
  }
});

describe('the plant at one moment', () => {
  const invented = inventedResult(); // 24 kW to 20 min, at rest from 40 min
  const at = (result: Result, seconds: number) => text(plantFinding(result, seconds).heading);
  const changed = (change: Partial<Phase>) => ({
    ...invented,
    phases: invented.phases.map((phase) => ({ ...phase, ...change })),
  });

  test('at 10 min the boiler gives 24.0 kW and the coil passes 23.5 kW', () => {
    expect(at(invented, 600)).toBe('At 10 min the boiler gives 24.0 kW: the coil passes 23.5 kW.');
    expect(plantFinding(invented, 600).summary.map(text)).toEqual([
      'The burner is at full output, the way is open to the coil.',
    ]);
  });

  test('at 60 min no water flows', () => {
    expect(at(invented, 3600)).toBe(
      'At 60 min no primary water flows and the cylinder loses 0.000 kW.',
    );
  });

  test('a resting burner, and an immersion heater of 3 kW, are told', () => {
    const resting = changed({ limit: 'resting', coilRuns: true });
    expect(at(resting, 600)).toBe('At 10 min the burner rests: the coil passes 23.5 kW.');
    const heated = changed({ immersionRuns: true });
    heated.trace.of.immersionHeat.fill(3000);
    expect(at(heated, 600)).toBe(
      'At 10 min the boiler gives 24.0 kW: the coil passes 23.5 kW; the immersion heater gives 3.0 kW.',
    );
  });

  test('every heading of all presets, 9 or more, at 5 moments has a verb, a number and no dash', () => {
    for (const preset of presets) {
      const result = simulateToEnd(presetVariant(preset));
      for (const share of [0, 0.2, 0.4, 0.7, 1]) {
        const heading = at(result, share * result.outcome.at);
        expect(heading, preset.key).toMatch(/ (gives|passes|give|flows|loses)\b.*\d/);
        expect(heading, preset.key).not.toContain('–');
        expect(plantFinding(result, 600).summary.length).toBeLessThanOrEqual(2);
      }
    }
    expect(presets.length).toBeGreaterThanOrEqual(9);
  });
});
