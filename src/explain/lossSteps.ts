import type { Variant } from '../../shared/variant.ts';
import {
  dailyLossRecords,
  lossPowerRecords,
  tableLossRecord,
} from '../../sim/closures/declaredLoss.ts';
import { insulationRecords } from '../../sim/closures/insulationLoss.ts';
import {
  boundTerms,
  classBound,
  classBoundRecord,
  type EnergyClass,
  TEST_DIFFERENCE,
  TEST_DIFFERENCES,
} from '../../sim/closures/standingLoss.ts';
import { insulationLossOf } from '../../sim/closures/storeLoss.ts';
import { type Step, worked } from './working.ts';

type Cylinder = Variant['cylinder'];

/** How the loss per kelvin of a store follows from its settings. */
export function lossSteps(cylinder: Cylinder): Step[] {
  const { declaredAt, standingLoss, declaredPower, insulation, lossClass, volume } = cylinder;
  const difference = TEST_DIFFERENCES[declaredAt];
  switch (cylinder.lossFrom) {
    case 'declared':
      return [worked(dailyLossRecords[declaredAt], { loss: standingLoss * DAY, difference })];
    case 'declaredPower':
      return [worked(lossPowerRecords[declaredAt], { power: declaredPower, difference })];
    case 'insulation':
      return [
        worked(tableLossRecord, {
          loss: insulationLossOf(cylinder),
          difference: TEST_DIFFERENCE,
        }),
        worked(insulationRecords[insulation], { volume, thickness: cylinder.insulationThickness }),
      ];
    case 'class':
      return [
        worked(lossPowerRecords['45'], {
          power: classBound(lossClass, volume),
          difference: TEST_DIFFERENCE,
        }),
        classStep(lossClass, volume),
      ];
  }
}

/** The bound of a class. */
export function classStep(energyClass: EnergyClass, volume: number): Step {
  const [constant, factor] = boundTerms(energyClass);
  return worked(classBoundRecord, { constant, factor, volume });
}

/** What the formulas leave open, in one sentence; empty when nothing. */
export function lossNote({ lossFrom, lossClass }: Cylinder): string {
  switch (lossFrom) {
    case 'insulation':
      return 'The tables name no test: their loss stands where a declared one would, so it is taken as one at 45 K.';
    case 'class':
      return `A store of class ${lossClass} loses less than this; the most its class allows is taken.`;
    default:
      return '';
  }
}

const DAY = 86_400; // s
