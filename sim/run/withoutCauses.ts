import { arrangementOf } from '../../shared/arrangements.ts';
import { PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import { delayKeys, delays } from '../../shared/delays.ts';
import type { DelayKey } from '../../shared/minutes.ts';
import type { Celsius, Kelvins } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { volumetricHeat } from '../closures/water.ts';
import { withRatedAreas } from '../plant/coilTube.ts';
import { type Altered, makePlant, type Plant, waterOf } from '../plant/plant.ts';
import type { PrimaryFlows } from '../plant/primaryFlows.ts';

/** An installation from which causes of waiting can be taken away. */
export interface Removable {
  /** Rated coils known by their areas, which are found once. */
  readonly variant: Variant;
  /** As the installation has them: taking away coil or pipes lets no more water through. */
  readonly flows: PrimaryFlows;
  /** With so much water that it comes back only a little cooler. */
  readonly ampleFlows: PrimaryFlows;
  /** What it has, in order; at most `MOST`. */
  readonly present: readonly DelayKey[];
  readonly absent: readonly DelayKey[];
  /** Scale is there and goes away with the coil. */
  readonly scaleWithCoil: boolean;
}

/** Makes an installation ready for having causes taken away. The boiler has a part in heating its cylinder. */
export function removable(original: Variant): Removable {
  const water = waterOf(original);
  const variant = withRatedAreas(original, water);
  const { flows } = makePlant(variant);
  const enough =
    variant.boiler.output / (SMALL_SPREAD * volumetricHeat(water, PRIMARY_TEMPERATURE));
  const ampleFlows = {
    ...flows,
    coilAlone: Math.max(flows.coilAlone, enough),
    coilShared: Math.max(flows.coilShared, enough),
  };
  const has = (key: DelayKey) =>
    key === 'primaryFlow'
      ? flows.coilAlone < enough || (sharesCoil(variant) && flows.coilShared < enough)
      : (delays[key].present?.(variant) ?? true);
  const all = delayKeys.filter(has);
  const scaleWithCoil = all.length > MOST;
  return {
    variant,
    flows,
    ampleFlows,
    present: scaleWithCoil ? all.filter((key) => key !== 'scale') : all,
    absent: delayKeys.filter((key) => !all.includes(key)),
    scaleWithCoil,
  };
}

/** Whether water goes through coil and radiators at once. */
function sharesCoil({ heating }: Variant): boolean {
  const { both } = arrangementOf(heating.arrangement);
  return both.coilRuns && both.radiatorsRun;
}

/** The plant that is left without some of its causes. */
export function plantWithout(from: Removable, removed: readonly DelayKey[]): Plant {
  const isGone = (key: DelayKey) => removed.includes(key);
  const variant = removed.reduce((left, key) => withouts[key]?.(left) ?? left, from.variant);
  const clean = from.scaleWithCoil && isGone('coil') ? withoutScale(variant) : variant;
  const altered: Altered = {
    flows: isGone('primaryFlow') ? from.ampleFlows : from.flows,
    coil: isGone('coil') ? 'unlimited' : 1,
    sensesMean: isGone('sensor'),
  };
  return makePlant(clean, altered);
}

/** What is set otherwise without a cause; coil, primary flow and place of the sensor are no settings. */
const withouts: { readonly [K in DelayKey]?: (variant: Variant) => Variant } = {
  sensor: (variant) => ({
    ...variant,
    stat: {
      ...variant.stat,
      mounting: 'asTyped',
      lag: 0,
      airShare: 0,
      differential: CALLS_AT_ONCE,
    },
    sensor: { ...variant.sensor, element: 'true', fault: 'none' },
  }),
  times: (variant) => ({
    ...variant,
    programme: { ...variant.programme, hotWater: 'always' },
    primary: { ...variant.primary, valveTravel: 0 },
  }),
  // the rooms wait, and have left the boiler as warm as before
  heating: (variant) => ({
    ...variant,
    heating: { ...variant.heating, arrangement: 'priority' },
  }),
  boiler: (variant) => ({ ...variant, boiler: { ...variant.boiler, model: 'ideal' } }),
  flowLimit: (variant) => {
    const { boiler } = variant;
    const target = boiler.targets === 'shared' ? boiler.heatingFlow : boiler.hotWaterFlow;
    return {
      ...variant,
      boiler: {
        ...boiler,
        targets: 'separate',
        hotWaterFlow: HOTTEST_FLOW,
        // counted with only: as far above the target as it was, or it would trip at once
        highLimit: boiler.highLimit + HOTTEST_FLOW - target,
      },
    };
  },
  pipes: (variant) => ({ ...variant, primary: { ...variant.primary, length: 0 } }),
  scale: withoutScale,
};

function withoutScale(variant: Variant): Variant {
  return {
    ...variant,
    coil: { ...variant.coil, scaleThickness: 0 },
    secondCoil: { ...variant.secondCoil, scaleThickness: 0 },
  };
}

const MOST = 8; // causes: 256 sets of them
/**
 * The hottest that a domestic boiler could be asked for. Common practice, no source: its limiter trips at 95 to 110 °C. With the
 * hottest set-point of 80 °C and the spread below, full output is never held back. Tables of water go to 110 °C and stay at
 * their ends beyond.
 */
const HOTTEST_FLOW: Celsius = 95;
// engineering guess, no source: a quarter of the 20 K that are usual; nothing is gained by less
const SMALL_SPREAD: Kelvins = 5;
const CALLS_AT_ONCE: Kelvins = 0.1; // a store as near as this to its set-point counts as hot
