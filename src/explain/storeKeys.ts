import type { Result } from '../../shared/result.ts';
import { columnStep } from './columnStep.ts';
import { heatUpWorking } from './heatUpWorking.ts';
import { lossWorking } from './lossWorkings.ts';
import type { Reading, Sampled } from './reading.ts';
import { coolDownWorking, inletWorking, mixingWorking, othersWorking } from './storeWorkings.ts';
import type { PartKey, Working } from './working.ts';

/** A number of the store. */
export type StoreKey = Extract<PartKey, `store.${string}`>;

/** How a number of the store came about. @param when  e.g. `at 30 min` */
export function storeWorking(
  key: StoreKey,
  result: Result,
  run: Sampled,
  reading: Reading,
  when: string,
): Working {
  switch (key) {
    case 'store.heatUp':
      return heatUpWorking(result);
    case 'store.conduction':
      return {
        title: 'only conduction crosses the layers downwards',
        steps: [columnStep(run, reading)],
        note: '',
        further: [{ label: 'what rises and mixes', key: 'store.mixing' }],
      };
    case 'store.mixing':
      return mixingWorking(run, reading, when);
    case 'store.inlet':
      return inletWorking(run, reading);
    case 'store.inletOthers':
      return othersWorking(run, reading);
    case 'store.coolDown':
      return coolDownWorking(run);
    default:
      return lossWorking(key, run.variant.cylinder);
  }
}
