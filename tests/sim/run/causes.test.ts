import { describe, expect, test } from 'vitest';
import { type Cause, causes } from '../../../shared/causes.ts';
import { healthyVariant, presetNamed, presetVariant } from '../../../shared/presets.ts';
import type { Measures, Result } from '../../../shared/result.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';

/** The healthy house and the one with the fault, on the same day. */
function pair(cause: Cause): { healthy: Result; faulty: Result } {
  const preset = presetNamed(cause.key);
  if (!preset) throw new Error(`${cause.key} is no preset; expected one`);
  return {
    healthy: simulateToEnd(healthyVariant(cause)),
    faulty: simulateToEnd(presetVariant(preset)),
  };
}

const named = (key: string): Cause => {
  const cause = causes.find((row) => row.key === key);
  if (!cause) throw new Error(`${key} is no cause`);
  return cause;
};

/** What the reason of a cause says, as a fact about the run. */
type Reason = (faulty: Measures, healthy: Measures) => boolean;

const most = (part: number, whole: number | null) => part > 0.9 * (whole ?? Number.NaN);

// Minutes longer than the healthy house, and what shows that it is for the reason given. The minutes are this model's own:
// 0.5 min is the tolerance, for they are there to notice a change; the size has a second way beside it where there is one.
const slower: readonly (readonly [key: string, minutes: number, why: string, reason: Reason])[] = [
  [
    'undersized-boiler',
    45.8, // 12.0 kWh at 9 kW × 0.94 / 0.87 are 74 min, and more for warming boiler and pipes
    'at full output for nine tenths of the time',
    (faulty) => most(faulty.outputLimitTime, faulty.recovery),
  ],
  [
    'flow-too-cool',
    25.6,
    'less than a fifth of the time at full output',
    (faulty) => faulty.outputLimitTime < 0.2 * (faulty.recovery ?? 0),
  ],
  [
    'short-cycling',
    22.6,
    'the burner starts more than 10 times and rests for over 20 min',
    (faulty) => (faulty.burnerStarts ?? 0) > 10 && faulty.restingTime > 20 * 60,
  ],
  [
    'long-rests',
    13.8,
    'it rests for one whole minimum off time',
    (faulty) => Math.abs(faulty.restingTime - 15 * 60) < 60,
  ],
  [
    'small-bore',
    38.0,
    'a third of the flow at most, and a speed above 0.8 m/s',
    (faulty, healthy) => faulty.coilFlow < healthy.coilFlow / 3 && faulty.primaryVelocity > 0.8,
  ],
  [
    'weak-circulator',
    36.0,
    'a third of the flow at most, at a low speed',
    (faulty, healthy) => faulty.coilFlow < healthy.coilFlow / 3 && faulty.primaryVelocity < 0.3,
  ],
  [
    'half-shut-valve',
    50.8,
    'a quarter of the flow at most',
    (faulty, healthy) => faulty.coilFlow < healthy.coilFlow / 4,
  ],
  [
    'bare-primary',
    8.7,
    'more than twice the heat of the healthy house is left in the primary',
    (faulty, healthy) => (faulty.leftInPrimary ?? 0) > 2 * (healthy.leftInPrimary ?? 0),
  ],
  [
    'undersized-coil',
    28.1,
    'the flow at its target for nine tenths of the time and the return hot',
    (faulty, healthy) =>
      most(faulty.flowLimitTime, faulty.recovery) &&
      (faulty.meanReturn ?? 0) > (healthy.meanReturn ?? 0) + 10,
  ],
  [
    'scaled-coil',
    38.0,
    'the flow at its target for nine tenths of the time and the return hot',
    (faulty, healthy) =>
      most(faulty.flowLimitTime, faulty.recovery) &&
      (faulty.meanReturn ?? 0) > (healthy.meanReturn ?? 0) + 10,
  ],
  [
    'heating-shares',
    13.0,
    'the rooms stay warmer while the coil gets less',
    (faulty, healthy) =>
      (faulty.lowestRoom ?? 0) > (healthy.lowestRoom ?? 0) + 1 &&
      (faulty.meanCoilHeat ?? 0) < (healthy.meanCoilHeat ?? 0),
  ],
  [
    'turn-taken',
    19.4,
    'the rooms fall less far',
    (faulty, healthy) => (faulty.lowestRoom ?? 0) > (healthy.lowestRoom ?? 0) + 0.5,
  ],
  [
    'programme-too-short',
    71.2, // from 20 min after six to half past seven are 70 min
    'the coil heats no longer than in the healthy house, in two goes',
    (faulty, healthy) =>
      faulty.outputLimitTime + faulty.flowLimitTime <
      healthy.outputLimitTime + healthy.flowLimitTime + 120,
  ],
  [
    'badly-strapped',
    9.0,
    'the store has to get 5 K hotter: an eighth of 40 K above the air',
    (faulty, healthy) => (faulty.topAtSatisfied ?? 0) > (healthy.topAtSatisfied ?? 0) + 5,
  ],
  [
    'wrong-characteristic',
    8.8,
    'the store has to get 5 to 7 K hotter: 3435 read as 3977 shows 54.8 °C at 60 °C',
    (faulty, healthy) => {
      const hotter = (faulty.topAtSatisfied ?? 0) - (healthy.topAtSatisfied ?? 0);
      return hotter > 5 && hotter < 7;
    },
  ],
  [
    'bad-joint',
    9.2,
    'the store has to get 5 K hotter',
    (faulty, healthy) => (faulty.topAtSatisfied ?? 0) > (healthy.topAtSatisfied ?? 0) + 5,
  ],
  [
    'wide-differential',
    22.5,
    'more than half of the time passes before the stat calls',
    (faulty, healthy) =>
      faulty.waitingTime > (faulty.recovery ?? Infinity) / 2 && healthy.waitingTime === 0,
  ],
];

describe('the healthy house on the same day, with one thing wrong', () => {
  test.each(slower)('%s takes %d min longer: %s', (key, minutes, _why, reason) => {
    const { healthy, faulty } = pair(named(key));
    const longer = (faulty.measures.recovery ?? Infinity) - (healthy.measures.recovery ?? Infinity);
    expect(Math.abs(longer / 60 - minutes)).toBeLessThan(0.5);
    expect(reason(faulty.measures, healthy.measures)).toBe(true);
  });

  test('sensor-too-high: it never calls in 2 h, and half the usable water of the healthy house is missing', () => {
    const { healthy, faulty } = pair(named('sensor-too-high'));
    expect(healthy.measures.recovery).toBeLessThan(25 * 60);
    expect(faulty.measures.hotWaterCalls).toBe(0);
    const last = (result: Result) => result.trace.of.usable[result.trace.samples - 1];
    expect(last(faulty)).toBeLessThan(0.5 * last(healthy));
  });

  test('sensor-too-low: not satisfied in 2 h, while the store gets more than 15 K hotter than set', () => {
    const { faulty } = pair(named('sensor-too-low'));
    expect(faulty.measures.recovery).toBeNull();
    expect(faulty.measures.hottest).toBeGreaterThan(75);
  });

  test('there are 19 causes, each with a reason of one sentence, and each of them is tried here', () => {
    expect(causes).toHaveLength(19);
    const tried = [...slower.map(([key]) => key), 'sensor-too-high', 'sensor-too-low'];
    expect([...tried].sort()).toEqual(causes.map(({ key }) => key).sort());
    for (const { reason } of causes) expect(reason).toMatch(/^[A-Z][^.!?]{30,160}\.$/);
  });
});
