import type { CoolDown } from '../../shared/coolDown.ts';
import type { Study } from '../../shared/study.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { coolDownConductance } from '../closures/coolDown.ts';
import { MIXED } from '../closures/mixedLitres.ts';
import { System } from '../solve/system.ts';
import { march } from './march.ts';
import { Recorder } from './recorder.ts';
import { TOLERANCE } from './simulate.ts';
import { storeAlone } from './storeAlone.ts';

/** The store left alone for 48 h, all of it at the set-point at first. Yields the share done. */
export function* coolDownStudy(variant: Variant): Generator<number, Study> {
  const start = { hotShare: 1, hotTemperature: variant.stat.setPoint, boundary: 0 };
  const plant = storeAlone({ ...variant, start });
  const system = new System(plant);
  const recorder = new Recorder(system);
  yield* march(system, {
    from: system.start(),
    duration: LENGTH,
    draws: [],
    tolerance: TOLERANCE,
    recorder,
    sampleStep: () => STEP,
  });
  const { samples, layers, time, layerTemperature, of } = recorder.trace();
  const mean = Float64Array.from({ length: samples }, (_, sample) => {
    const here = layerTemperature.subarray(sample * layers, (sample + 1) * layers);
    return here.reduce((sum, T) => sum + T, 0) / layers;
  });
  const capacity = plant.cylinder.layerCapacity * layers;
  const { surroundings } = plant.cylinder;
  return {
    kind: 'coolDown',
    capacity,
    surroundings,
    time,
    top: of.top,
    mean,
    bottom: of.bottom,
    loss: of.standingLoss,
    // nothing else moves heat, so what the store holds less is what it has lost
    lostInDay: capacity * (mean[0] - valueAt(time, mean, DAY)),
    ...recovered(capacity, surroundings, time, mean),
    coolAfter: fallsBelow(MIXED, time, of.top),
  };
}

/** The loss conductance that two readings of the mean give: at the start, and as late as the difference can still be told. */
function recovered(
  capacity: number,
  surroundings: number,
  time: Float64Array,
  mean: Float64Array,
): Pick<CoolDown, 'readAt' | 'conductance'> {
  const left = (sample: number) => mean[sample] - surroundings;
  let last = mean.length - 1;
  while (last > 0 && Math.abs(left(last)) < LEAST_LEFT * Math.abs(left(0))) last--;
  const readAt = time[last];
  if (left(0) === 0 || readAt === 0) return { readAt, conductance: null };
  const end = mean[last];
  return {
    readAt,
    conductance: coolDownConductance(capacity, readAt, mean[0], end, surroundings),
  };
}

/** When a falling line passes a level, straight between its samples; null when it stays above. */
function fallsBelow(level: number, time: Float64Array, line: Float64Array): Seconds | null {
  const after = line.findIndex((value) => value < level);
  if (after < 0) return null;
  if (after === 0) return 0;
  const [from, to] = [line[after - 1], line[after]];
  return time[after - 1] + ((from - level) / (from - to)) * (time[after] - time[after - 1]);
}

const DAY = 86_400; // s
const LENGTH = 2 * DAY;
const STEP = 900; // s
const LEAST_LEFT = 0.1; // of the first difference from the air
