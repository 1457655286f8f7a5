import { defaultVariant } from '../../shared/fields.ts';
import { type Constraint, gaining, type Pace } from '../../shared/pace.ts';
import type { Measures, Phase, Quantity, Result } from '../../shared/result.ts';
import { quantities } from '../../shared/result.ts';
import type { Variant } from '../../shared/variant.ts';

const layers = 20;
const step = 30;

interface Wish {
  variant?: Variant;
  /** Until the stat is satisfied, s; null for a run that never gets there. */
  recovery?: number | null;
  end?: number;
  /** Layers under the coil that stay cold. */
  coldLayers?: number;
  measures?: Partial<Measures>;
  outcome?: Result['outcome'];
}

/**
 * An invented run, for drawings only: no physics. The store rises from 10 °C in a straight line to
 * 60 °C at `recovery` (or to 50 °C at the end), the boiler is at full output for the first half.
 */
export function inventedResult(wish: Wish = {}): Result {
  const variant = wish.variant ?? defaultVariant('invented');
  const recovery = wish.recovery === undefined ? 2400 : wish.recovery;
  const end = wish.end ?? 7200;
  const coldLayers = wish.coldLayers ?? 2;
  const times = sampleTimes(end, recovery);
  const samples = times.length;
  const layerTemperature = new Float64Array(samples * layers);
  const of = Object.fromEntries(
    Object.keys(quantities).map((key) => [key, new Float64Array(samples)]),
  ) as Record<Quantity, Float64Array>;
  const heatUp = recovery ?? end;
  times.forEach((time, sample) => {
    const isHeated = sample < times.indexOf(heatUp) + 1 && time <= heatUp;
    const share = Math.min(1, time / heatUp);
    const water = 10 + (recovery === null ? 40 : 50) * share;
    const bottom = coldLayers > 0 ? 10 + share : water;
    for (let layer = 0; layer < layers; layer += 1) {
      layerTemperature[sample * layers + layer] = layer < coldLayers ? bottom : water;
    }
    const flow = isHeated ? Math.min(80, 40 + 80 * share) : Number.NaN;
    const heat = isHeated ? (share <= 0.5 ? 24_000 : 24_000 - 24_000 * (share - 0.5)) : 0;
    of.sensor[sample] = water;
    of.bead[sample] = water;
    of.top[sample] = water;
    of.bottom[sample] = bottom;
    of.flow[sample] = flow;
    of.coilInlet[sample] = flow;
    of.returnTemperature[sample] = isHeated ? flow - heat / 1000 : Number.NaN;
    of.coilOutlet[sample] = of.returnTemperature[sample];
    of.coilWater[sample] = water;
    of.boilerHeat[sample] = heat;
    of.fuel[sample] = heat / 0.9;
    of.flowTarget[sample] = isHeated ? 80 : Number.NaN;
    of.coilFlow[sample] = isHeated ? 15 / 60_000 : 0;
    of.coilHeat[sample] = heat * 0.98;
    of.air[sample] = 20 - share;
    of.usable[sample] = 0.3 * Math.max(0, (water - 40) / 20);
  });
  return {
    variant,
    outcome: wish.outcome ?? { kind: 'finished', at: end },
    trace: { samples, layers, time: Float64Array.from(times), layerTemperature, of },
    marks: [
      { at: 0, kind: 'hotWaterCalled' },
      ...(recovery === null ? [] : [{ at: recovery, kind: 'statSatisfied' as const }]),
    ],
    phases: phasesOf(heatUp, end),
    pace: paceOfPhases(phasesOf(heatUp, end), samples),
    measures: { ...measuresOf(recovery, heatUp), ...wish.measures },
    balance: {
      fromBoiler: 4.4e7,
      fromImmersion: 0,
      gainedByPrimary: 0,
      gainedByStore: 4.3e7,
      gainedByHouse: 0,
      lostByCylinder: 5e5,
      lostByPipes: 5e5,
      lostByHouse: 0,
      gainedByTapPipe: 0,
      lostByTapPipe: 0,
      drawn: 0,
      residual: 0,
      relative: 0,
    },
    cost: { derivativeCalls: 1000, steps: 100, restarts: 3 },
  };
}

/** Every half minute, and twice where the stat is satisfied, as a switch is sampled on both sides. */
function sampleTimes(end: number, recovery: number | null): number[] {
  const even = Array.from({ length: Math.floor(end / step) + 1 }, (_, index) => index * step);
  return recovery === null ? even : [...even, recovery].sort((one, other) => one - other);
}

function phasesOf(heatUp: number, end: number): Phase[] {
  const heated = { coilRuns: true, radiatorsRun: false, draws: false, immersionRuns: false };
  const phases: Phase[] = [
    { from: 0, to: heatUp / 2, ...heated, limit: 'output' },
    { from: heatUp / 2, to: heatUp, ...heated, limit: 'flowLimit' },
  ];
  if (heatUp < end) {
    phases.push({
      from: heatUp,
      to: end,
      coilRuns: false,
      radiatorsRun: false,
      draws: false,
      immersionRuns: false,
      limit: 'off',
    });
  }
  return phases;
}

/** Full output is the boiler's pace, a flow at its limit the coil's; nothing gains. */
export function paceOfPhases(phases: readonly Phase[], samples: number): Pace {
  const by = (limit: Phase['limit']): Constraint => {
    if (limit === 'off') return 'satisfied';
    return limit === 'output' ? 'output' : 'coil';
  };
  return {
    stretches: phases.map(({ from, to, limit }) => ({ from, to, by: [by(limit)] })),
    gain: Object.fromEntries(
      gaining.map((key) => [key, new Float64Array(samples)]),
    ) as unknown as Pace['gain'],
  };
}

function measuresOf(recovery: number | null, heatUp: number): Measures {
  const reached = <T>(value: T): T | null => (recovery === null ? null : value);
  return {
    recovery,
    ruleTime: reached(1704),
    coilHeat: 4.3e7,
    meanCoilHeat: 18_000,
    peakCoilHeat: 24_000,
    meanReturn: 52,
    waitingTime: 0,
    outputLimitTime: heatUp / 2,
    flowLimitTime: heatUp / 2,
    minimumTime: 0,
    restingTime: 0,
    leftInPrimary: reached(1.2e6),
    coilFlow: 15 / 60_000,
    radiatorFlow: 15 / 60_000,
    primaryVelocity: 0.78,
    burnerStarts: 1,
    burnerTime: heatUp,
    fuel: 4.9e7,
    fuelForHeating: 0,
    efficiency: 0.9,
    condensingShare: 0.5,
    electricity: 0,
    cost: 0.95,
    carbon: 2.5,
    coldRoomTime: 0,
    sufficientFlow: 48,
    usableAtStart: 0,
    usableAtSatisfied: reached(0.3),
    usableAtCall: reached(0.18),
    coldAtSatisfied: reached(0.021),
    topAtSatisfied: reached(60),
    bottomAtSatisfied: reached(11),
    hottest: 60,
    lowestRoom: 19,
    lowestRoomAt: heatUp,
    hotWaterCalls: 1,
  };
}
