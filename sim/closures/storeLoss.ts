import type { LossStanding } from '../../shared/lossStanding.ts';
import type { Joules, Watts, WattsPerKelvin } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { insulationLoss } from './insulationLoss.ts';
import {
  CLASSES,
  classBound,
  type EnergyClass,
  energyClassOf,
  guideLimit,
  lossConductance,
  powerConductance,
  TEST_DIFFERENCE,
  TEST_DIFFERENCES,
} from './standingLoss.ts';

type Cylinder = Variant['cylinder'];

/**
 * What a store loses for each kelvin above its surroundings. Insulation gives a loss in 24 h that
 * stands where a declared one would (see `insulationLoss`), so both it and a class are taken at 45 K.
 */
export function lossPerKelvin(cylinder: Cylinder): WattsPerKelvin {
  const { lossFrom, standingLoss, declaredPower, declaredAt, volume } = cylinder;
  switch (lossFrom) {
    case 'declared':
      return powerConductance(standingLoss, TEST_DIFFERENCES[declaredAt]);
    case 'declaredPower':
      return powerConductance(declaredPower, TEST_DIFFERENCES[declaredAt]);
    case 'insulation':
      return lossConductance(insulationLossOf(cylinder));
    case 'class':
      return powerConductance(classBound(cylinder.lossClass, volume), TEST_DIFFERENCE);
  }
}

/** What a store loses 45 K above its surroundings. */
export function lossAtTest(cylinder: Cylinder): Watts {
  return lossPerKelvin(cylinder) * TEST_DIFFERENCE;
}

/** By the insulation of a store, in 24 h. */
export function insulationLossOf(cylinder: Cylinder): Joules {
  return insulationLoss(cylinder.insulation, cylinder.insulationThickness, cylinder.volume);
}

/** Where a store stands by its class and its limits. */
export function lossStanding(cylinder: Cylinder): LossStanding {
  const { volume } = cylinder;
  const loss = lossAtTest(cylinder);
  const limit = classBound('C', volume);
  const isLabelled = volume <= LARGEST_LABELLED;
  const energyClass = isLabelled ? classOf(cylinder, loss) : null;
  const better = energyClass === null ? undefined : betterThan(energyClass);
  return {
    loss,
    perKelvin: lossPerKelvin(cylinder),
    energyClass,
    better:
      better === undefined ? null : { energyClass: better, bound: classBound(better, volume) },
    limit,
    isAboveLimit: loss > limit * (1 + ROUNDING),
    guide: isLabelled ? guideLimit(volume) : null,
  };
}

/** A store that loses the most its class allows stands on the bound, and is in that class. */
function classOf({ lossFrom, lossClass, volume }: Cylinder, loss: Watts): EnergyClass | 'G' {
  return lossFrom === 'class' ? lossClass : energyClassOf(loss, volume);
}

function betterThan(energyClass: EnergyClass | 'G'): EnergyClass | undefined {
  return energyClass === 'G' ? CLASSES.at(-1) : CLASSES[CLASSES.indexOf(energyClass) - 1];
}

// source: labelTanks, Article 1: tanks of 500 l or less; from memory. The guides end there too
const LARGEST_LABELLED = 0.5; // m³
const ROUNDING = 1e-12; // of a loss divided by 45 K and multiplied again
