import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { bill, carbonOfRun, heaterEnergy } from './bills.ts';
import {
  belowTarget,
  burnerGives,
  burnerLit,
  burnerStarted,
  fuelBurnt,
  fuelOfRun,
  meanEfficiency,
  partOfWhole,
  surplus,
} from './burner.ts';
import { callsAt, houseLoses, outsideWave, roomTooCold, sensorFollows } from './control.ts';
import { atTheTaps, costOfLoss, efficiencyOfDay, lostInTime, ranFor, stillMissing } from './day.ts';
import { boreSpeed } from './pipes.ts';
import { coldLeft, cylinderLoss, risePerMinute, usableLitres } from './store.ts';
import { coilPasses, flowNeeded, returnLeft, streamHeat } from './stream.ts';
import { heatThrough, meanOutput, recoveryTime, ruleTime } from './timing.ts';
import { ohmsInSeries, ohmsWithDamp, readsTrue, sensorSettles } from './wiring.ts';

/** Balances that tie the numbers of a run together, printed as the published relations are. */
export const relations: readonly ClosureRecord[] = [
  recoveryTime,
  ruleTime,
  meanOutput,
  heatThrough,
  coilPasses,
  streamHeat,
  flowNeeded,
  returnLeft,
  usableLitres,
  coldLeft,
  risePerMinute,
  cylinderLoss,
  sensorFollows,
  callsAt,
  houseLoses,
  burnerGives,
  fuelBurnt,
  fuelOfRun,
  meanEfficiency,
  partOfWhole,
  belowTarget,
  surplus,
  burnerStarted,
  burnerLit,
  boreSpeed,
  sensorSettles,
  readsTrue,
  ohmsInSeries,
  ohmsWithDamp,
  heaterEnergy,
  bill,
  carbonOfRun,
  outsideWave,
  roomTooCold,
  atTheTaps,
  ranFor,
  stillMissing,
  efficiencyOfDay,
  lostInTime,
  costOfLoss,
];
