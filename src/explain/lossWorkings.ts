import {
  betterText,
  classText,
  guideText,
  limitText,
  perKelvinText,
} from '../../shared/sentences/standingLoss.ts';
import type { Variant } from '../../shared/variant.ts';
import { classLimitRecord, guideLimitRecord } from '../../sim/closures/standingLoss.ts';
import { lossStanding } from '../../sim/closures/storeLoss.ts';
import { classStep, lossNote, lossSteps } from './lossSteps.ts';
import { type Step, type Working, type WorkingKey, worked } from './working.ts';

/** A number about the loss of a store. */
export type LossKey = Extract<
  WorkingKey,
  `store.${'lossPerKelvin' | 'energyClass' | 'lossLimit' | 'lossGuide'}`
>;

/** How the loss of a store, its class and its limits come about. */
export function lossWorking(key: LossKey, cylinder: Variant['cylinder']): Working {
  const standing = lossStanding(cylinder);
  const { volume } = cylinder;
  switch (key) {
    case 'store.lossPerKelvin':
      return {
        title: `the cylinder loses ${perKelvinText(standing)}`,
        steps: lossSteps(cylinder),
        note: lossNote(cylinder),
        further: [
          { label: 'its class', key: 'store.energyClass' },
          { label: 'left alone for a day', key: 'store.coolDown' },
        ],
      };
    case 'store.energyClass':
      return {
        title: `on the label, ${classText(standing)}${betterText(standing)}`,
        steps: classSteps(cylinder),
        note: classNote(cylinder),
        further: [{ label: 'the loss per kelvin', key: 'store.lossPerKelvin' }],
      };
    case 'store.lossLimit':
      return {
        title: `limit for new cylinders, European Union: ${limitText(standing)}`,
        steps: [worked(classLimitRecord, { volume })],
        note: 'It binds who sells a new cylinder; it says nothing of one that stands.',
        further: [{ label: 'the loss per kelvin', key: 'store.lossPerKelvin' }],
      };
    case 'store.lossGuide':
      return {
        title: `guide of the United Kingdom: ${guideText(standing)}`,
        steps: [worked(guideLimitRecord, { volume })],
        note: '',
        further: [{ label: 'the limit for new cylinders', key: 'store.lossLimit' }],
      };
  }
}

/** The bound the store is below, and the next one down that it is not below. */
function classSteps(cylinder: Variant['cylinder']): Step[] {
  const { energyClass, better } = lossStanding(cylinder);
  const { volume } = cylinder;
  if (energyClass === null) return [worked(classLimitRecord, { volume })];
  // class G has no bound of its own: what counts is that of F, which the store is not below
  const shown = energyClass === 'G' ? better?.energyClass : energyClass;
  return shown === undefined ? [] : [classStep(shown, volume)];
}

function classNote(cylinder: Variant['cylinder']): string {
  const { energyClass } = lossStanding(cylinder);
  if (energyClass === null) return 'The label ends at 500 l; the limit does not.';
  return energyClass === 'G' ? 'Class G has no bound: it is all that is not below that of F.' : '';
}
