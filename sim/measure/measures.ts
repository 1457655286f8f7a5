import { timeOf } from '../../shared/phaseTime.ts';
import type { Limit, Mark, Measures, Phase, Trace } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Plant } from '../plant/plant.ts';
import type { Slots } from '../solve/slots.ts';
import { arrangementOf } from '../../shared/arrangements.ts';
import { primaryVelocity } from '../plant/primaryFlows.ts';
import { energyUse } from './energyUse.ts';
import { heldByPrimary } from './primaryHeat.ts';
import { roomMeasures } from './rooms.ts';
import { belowUsable, usableIn } from './usable.ts';

/** What a run left behind, as far as the measures need it. */
interface Left {
  readonly start: readonly number[];
  readonly end: { readonly state: readonly number[] };
  readonly marks: readonly {
    readonly mark: Mark;
    readonly snapshot: { readonly state: readonly number[] };
  }[];
  readonly phases: readonly Phase[];
  readonly burnerStarts: number | null;
}

/** The numbers that answer the question, from one run. */
export function measuresOf(plant: Plant, slots: Slots, left: Left, trace: Trace): Measures {
  const { layers, layerVolume } = plant.cylinder;
  const litresAt = (state: readonly number[]) => usableIn(plant, state);
  const calls = left.marks.filter(({ mark }) => mark.kind === 'hotWaterCalled');
  const satisfied = left.marks.find(({ mark }) => mark.kind === 'statSatisfied');
  const recovery = satisfied?.mark.at ?? null;
  const until = recovery ?? trace.time[trace.samples - 1];
  const nextCall = recovery === null ? undefined : calls.find(({ mark }) => mark.at >= recovery);

  const state = satisfied?.snapshot.state;
  const coilHeat = (state ?? left.end.state)[slots.throughCoil] - left.start[slots.throughCoil];
  const coilTime = timeOf(left.phases, ({ coilRuns }) => coilRuns, until);
  const held = (...limits: Limit[]) =>
    timeOf(left.phases, ({ coilRuns, limit }) => coilRuns && limits.includes(limit), until);
  const { returnTemperature, coilHeat: coilTrace } = trace.of;
  const { heated } = arrangementOf(plant.variant.heating.arrangement);
  const around = plant.cylinder.surroundings;
  const firstCall = calls[0]?.mark.at ?? until;

  return {
    recovery,
    ruleTime: recovery === null ? null : coilHeat / plant.variant.boiler.output,
    coilHeat,
    meanCoilHeat: coilTime > 0 ? coilHeat / coilTime : null,
    peakCoilHeat: coilTime > 0 ? greatest(coilTrace) : null,
    meanReturn: coilTime > 0 ? timeMean(trace, returnTemperature, until) : null,
    waitingTime: Math.min(firstCall, until),
    outputLimitTime: held('output'),
    flowLimitTime: held('flowLimit'),
    minimumTime: held('minimum'),
    restingTime:
      held('resting', 'lockedOut') +
      timeOf(left.phases, ({ limit, from }) => limit === 'valve' && from >= firstCall, until),
    leftInPrimary:
      state === undefined || plant.built === null
        ? null
        : heldByPrimary(plant.built.loop, slots, (slot) => state[slot] - around),
    coilFlow: plant.flows.coilAlone,
    radiatorFlow: heated ? plant.flows.radiatorsAlone : null,
    primaryVelocity: primaryVelocity(plant.variant, plant.flows.coilAlone),
    burnerStarts: left.burnerStarts,
    ...energyUse(plant.variant, slots, left.start, left.end.state, left.phases),
    ...roomMeasures(plant, trace),
    usableAtStart: litresAt(left.start),
    usableAtSatisfied: state ? litresAt(state) : null,
    usableAtCall: nextCall ? litresAt(nextCall.snapshot.state) : null,
    coldAtSatisfied: state ? belowUsable(state, 0, layers, layerVolume) : null,
    topAtSatisfied: state ? state[layers - 1] : null,
    bottomAtSatisfied: state ? state[0] : null,
    hottest: greatest(trace.layerTemperature),
    hotWaterCalls: calls.length,
  };
}

/** Mean over time of a quantity while the coil runs and up to a moment, by trapezes between samples. */
function timeMean(trace: Trace, values: Float64Array, until: Seconds): number | null {
  let area = 0;
  let span = 0;
  for (let sample = 1; sample < trace.samples && trace.time[sample] <= until; sample++) {
    const width = trace.time[sample] - trace.time[sample - 1];
    const coilRan = trace.of.coilInlet[sample - 1] + trace.of.coilInlet[sample];
    if (width <= 0 || Number.isNaN(coilRan)) continue;
    area += (width * (values[sample - 1] + values[sample])) / 2;
    span += width;
  }
  return span > 0 ? area / span : null;
}

function greatest(values: Float64Array): number {
  let most = Number.NEGATIVE_INFINITY;
  for (const value of values) if (value > most) most = value;
  return most;
}
