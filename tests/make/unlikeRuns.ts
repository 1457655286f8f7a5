import type { DayRun } from '../../shared/day.ts';
import type { Delivered } from '../../shared/delivery.ts';
import { defaultVariant } from '../../shared/fields.ts';
import type { Result } from '../../shared/result.ts';
import { type FieldPath, type Variant, withSetting } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { dayToEnd, deliveredToEnd } from './dayToEnd.ts';

/** A run that is unlike the others, and what was found besides. */
export interface UnlikeRun {
  readonly name: string;
  readonly result: Result;
  readonly day: DayRun | null;
  readonly delivered: Delivered | null;
}

type Sets = readonly (readonly [FieldPath, number | string])[];

/** The first example with a few settings changed. */
export const withSets = (sets: Sets, base: Variant = defaultVariant('unlike')): Variant =>
  sets.reduce((variant, [path, value]) => withSetting(variant, path, value), base);

const reheats: Readonly<Record<string, Sets>> = {
  'a coil known by its geometry, as built': [],
  'an ideal boiler': [['boiler.model', 'ideal']],
  'a coil known by its area, scaled, in a slow flow': [
    ['coil.given', 'area'],
    ['coil.area', 0.8],
    ['coil.scaleThickness', 0.001],
    ['primary.flowFrom', 'given'],
    ['primary.flow', 3 / 60_000],
  ],
  'a fast flow through a wide coil': [
    ['coil.tubeOutside', 0.028],
    ['primary.flowFrom', 'given'],
    ['primary.flow', 40 / 60_000],
  ],
  'a coil known by its rating, bare pipes': [
    ['coil.given', 'rating'],
    ['primary.lagging', 0],
  ],
  'a coil known by its UA': [['coil.given', 'conductance']],
  'a thermistor with a damp joint, strapped on': [
    ['sensor.element', 'thermistor'],
    ['sensor.dampResistance', 20_000],
    ['stat.mounting', 'strappedBare'],
  ],
  'a thermistor by three constants': [['sensor.element', 'steinhartHart']],
  'platinum, and a declared loss at 55 K': [
    ['sensor.element', 'platinum'],
    ['sensor.expects', 'same'],
    ['cylinder.declaredAt', '55'],
  ],
  'weather compensation, rooms and cylinder at once': [
    ['heating.control', 'weatherCompensation'],
    ['boiler.targets', 'shared'],
    ['heating.arrangement', 'simultaneous'],
    ['cylinder.lossFrom', 'declaredPower'],
  ],
  'load compensation, a jacket': [
    ['heating.control', 'loadCompensation'],
    ['boiler.targets', 'shared'],
    ['cylinder.lossFrom', 'insulation'],
    ['cylinder.insulation', 'jacket'],
  ],
  'an immersion heater beside the boiler, foam': [
    ['immersion.used', 'withBoiler'],
    ['cylinder.lossFrom', 'insulation'],
  ],
  'a loss by class, a plain inlet': [
    ['cylinder.lossFrom', 'class'],
    ['draw.inlet', 'plain'],
  ],
  'a large boiler on a small coil, declared at 55 K as power': [
    ['coil.length', 4],
    ['boiler.output', 30_000],
    ['boiler.minimumOutput', 12_000],
    ['cylinder.lossFrom', 'declaredPower'],
    ['cylinder.declaredAt', '55'],
  ],
};

/** Unlike reheats, and two days: of a household, and by a load profile in a small store. */
export function unlikeRuns(): UnlikeRun[] {
  const runs = Object.entries(reheats).map(([name, sets]) => ({
    name,
    result: simulateToEnd(withSets(sets)),
    day: null,
    delivered: null,
  }));
  const days: Readonly<Record<string, Sets>> = {
    'a day of a household': [],
    'a day by load profile in a small store': [
      ['cylinder.volume', 0.08],
      ['coil.coilDiameter', 0.2],
      ['day.pattern', 'XL'],
      ['draw.inlet', 'plain'],
      ['draw.pipeLength', 10],
    ],
  };
  const used = Object.entries(days).map(([name, sets]) => {
    // a day in 20 layers is as good a day for its formulas, and is run in a third of the time
    const variant = withSets([...sets, ['run.layers', 20]]);
    return {
      name,
      result: simulateToEnd(variant),
      day: dayToEnd(variant),
      delivered: sets.length === 0 ? deliveredToEnd(variant) : null,
    };
  });
  return [...runs, ...used];
}
