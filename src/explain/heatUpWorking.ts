import { shown } from '../../shared/format.ts';
import type { Result } from '../../shared/result.ts';
import {
  heatUpTimeRecord,
  storedHeatRecord,
  tradeHeatUpTimeRecord,
} from '../../sim/closures/storedHeat.ts';
import { volumetricHeat } from '../../sim/closures/water.ts';
import { readingAt, waterOf } from './reading.ts';
import { type Working, worked } from './working.ts';

/** Litres, kelvins and kilowatts of a reheat: the heat the water took, and the two times that follow from a steady power. */
export function heatUpWorking(result: Result): Working {
  const { variant, measures } = result;
  const { volume } = variant.cylinder;
  const rise = riseOf(result);
  const heatCapacity = volumetricHeat(waterOf(result), MIDDLE);
  const power = measures.meanCoilHeat ?? Number.NaN;
  return {
    title: `${shown(volume, 'litre', 0)} by ${shown(rise, 'kelvin', 1)} in the mean`,
    steps: [
      worked(storedHeatRecord, { volume, heatCapacity, rise }),
      worked(heatUpTimeRecord, { volume, heatCapacity, rise, power }),
      worked(tradeHeatUpTimeRecord, { volume, rise, power }),
    ],
    note: 'With the mean coil output of this run both times come near its own; with the boiler’s output the trade’s is as much too short as the coil is slower than the boiler.',
    further: [
      { label: 'the same heat at full boiler output', key: 'measure.ruleTime' },
      { label: 'mean coil output', key: 'measure.meanCoilHeat' },
    ],
  };
}

/** How far the store has warmed in the mean when the stat is satisfied, or when the run ends, K. */
export function riseOf(result: Result): number {
  const until = result.measures.recovery ?? result.outcome.at;
  return readingAt(result, until).mean - readingAt(result, 0).mean;
}

/** Where the heat held by the store is reckoned, °C, as the model has it. */
export const MIDDLE = 35;
