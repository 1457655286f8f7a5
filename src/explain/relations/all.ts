import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { callsAt, houseLoses, sensorFollows } from './control.ts';
import { coldLeft, cylinderLoss, risePerMinute, usableLitres } from './store.ts';
import { coilPasses, flowNeeded, returnLeft, streamHeat } from './stream.ts';
import { heatThrough, meanOutput, recoveryTime, ruleTime } from './timing.ts';

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
];
