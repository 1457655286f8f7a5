import { type Delivered, type DeliveredAt, DELIVERY_FLOW } from '../../shared/delivery.ts';
import type { Study } from '../../shared/study.ts';
import type { CubicMetres, Seconds } from '../../shared/units.ts';
import { type Variant, withSetting } from '../../shared/variant.ts';
import { MIXED } from '../closures/mixedLitres.ts';
import { ownDraws } from '../demand/schedule.ts';
import { usableIn } from '../measure/usable.ts';
import { makePlant, type Plant } from '../plant/plant.ts';
import { type Snapshot, System } from '../solve/system.ts';
import { firstHour } from './firstHour.ts';
import { march } from './march.ts';
import { TOLERANCE } from './simulate.ts';
import { startFrom, storeAlone } from './storeAlone.ts';

/**
 * Usable water by simulated draws as the run starts, when its stat is satisfied and when it next calls; and the first hour.
 * Yields the share done.
 */
export function* deliveryStudy(variant: Variant): Generator<number, Study> {
  return { kind: 'delivery', delivered: yield* delivered(variant) };
}

/** The same as plain numbers. */
export function* delivered(variant: Variant): Generator<number, Delivered> {
  const system = new System(makePlant(variant));
  const start = system.start();
  const { marks } = yield* march(system, {
    from: start,
    duration: variant.run.duration,
    draws: ownDraws(variant),
    tolerance: TOLERANCE,
  });
  const satisfied = marks.find(({ mark }) => mark.kind === 'statSatisfied');
  const called = marks.find(
    ({ mark }) => satisfied && mark.kind === 'hotWaterCalled' && mark.at >= satisfied.mark.at,
  );
  const alone = storeAlone(withSetting(variant, 'draw.pipeLength', 0));
  const { layers } = system.slots;
  function* at(when: DeliveredAt['when'], time: Seconds, { state }: Snapshot) {
    const T = state.slice(0, layers);
    return {
      when,
      at: time,
      estimate: usableIn(alone, T),
      drawn: yield* usableByDraw(alone, T),
    };
  }
  const moments: DeliveredAt[] = [yield* at('start', 0, start)];
  if (satisfied) moments.push(yield* at('satisfied', satisfied.mark.at, satisfied.snapshot));
  if (called) moments.push(yield* at('called', called.mark.at, called.snapshot));
  return { moments, firstHour: yield* firstHour(variant) };
}

/**
 * Mixed water at 40 °C that a store gives in one draw at 10 l/min, nothing heating it, until the outlet falls to 40 °C.
 * @param alone  the store with nothing to heat it and no pipe to the tap
 * @param T      [layer] °C
 */
// source: EU 814/2013, Annex I, definition of V40; the draw of EN 16147, from memory
export function* usableByDraw(alone: Plant, T: ArrayLike<number>): Generator<number, CubicMetres> {
  const system = new System(alone);
  const from = startFrom(alone, T);
  const { cylinder, inlet } = alone;
  const volume = 2 * cylinder.layers * cylinder.layerVolume;
  const useful = {
    energy: Number.POSITIVE_INFINITY,
    leastTemperature: MIXED,
    peakTemperature: null,
  };
  const { end } = yield* march(system, {
    from,
    duration: volume / DELIVERY_FLOW,
    draws: [{ at: 0, volume, flow: DELIVERY_FLOW, name: 'usable', useful }],
    tolerance: TOLERANCE,
    until: ({ kind }) => kind === 'tapCold',
  });
  const drawn = end.state[system.slots.useful] - from.state[system.slots.useful];
  return drawn / (cylinder.waterHeat * (MIXED - inlet.cold));
}
