import { incomingCold } from '../../shared/coldWater.ts';
import { type Delivered, DELIVERY_FLOW, FIRST_HOUR } from '../../shared/delivery.ts';
import { celsius, litres, shown } from '../../shared/format.ts';
import { MIXED } from '../../sim/closures/mixedLitres.ts';
import { mixedShareRecord } from '../../sim/closures/mixedShare.ts';
import { storedHeatRecord } from '../../sim/closures/storedHeat.ts';
import { volumetricHeat } from '../../sim/closures/water.ts';
import { MIDDLE } from './heatUpWorking.ts';
import { inletSteps } from './inletSteps.ts';
import { type Sampled, waterOf } from './reading.ts';
import { type DeliveryKey, type Working, worked } from './working.ts';

/** What a store gives by draws that are simulated: a litre of its water mixed down, and what the draw stirs. */
export function deliveryWorking(
  key: DeliveryKey,
  run: Sampled,
  delivered: Delivered | null,
): Working {
  const { stat, draw } = run.variant;
  const cold = incomingCold(draw);
  if (key === 'delivery.drawn') {
    const satisfied = delivered?.moments.find(({ when }) => when === 'satisfied');
    return {
      title: satisfied
        ? `drawn once the stat is satisfied: ${litres(satisfied.drawn)} at ${shown(MIXED, 'celsius', 0)}`
        : 'what a draw of usable water comes to',
      steps: [
        worked(mixedShareRecord, { hot: stat.setPoint, cold, mixed: MIXED }),
        ...inletSteps(run, DELIVERY_FLOW, stat.setPoint),
      ],
      note: `For water at the set-point and a draw of ${shown(DELIVERY_FLOW, 'litrePerMinute', 0)}: each litre makes this many, and the cold that comes in stirs some of the rest.`,
      further: [{ label: 'the estimate from the layers', key: 'measure.usableAtSatisfied' }],
    };
  }
  const hour = delivered?.firstHour ?? null;
  const volume = hour?.volume ?? Number.NaN;
  const rise = hour ? hour.mean - FIRST_HOUR.cold : Number.NaN;
  return {
    title: hour
      ? `in its first hour the store gives ${litres(volume)} at ${celsius(hour.mean)} in the mean`
      : 'no first hour was measured',
    steps: [
      worked(storedHeatRecord, {
        volume,
        heatCapacity: volumetricHeat(waterOf(run), MIDDLE),
        rise,
      }),
    ],
    note: `Heat above the incoming water of that test, ${celsius(FIRST_HOUR.cold)}: part of it stood in the store, the rest the coil has given since.`,
    further: [
      { label: 'what the store took in', key: 'store.heatUp' },
      { label: 'mean coil output', key: 'measure.meanCoilHeat' },
    ],
  };
}
