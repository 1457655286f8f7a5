import type { Result } from '../../shared/result.ts';
import {
  houseCoolingRecord,
  houseTimeConstant,
  houseTimeConstantRecord,
  MASS_PARAMETERS,
} from '../../sim/closures/houseCooling.ts';
import { type Step, worked } from './working.ts';

/**
 * How far one node would cool in the pause that ends where the rooms are coldest, beside what the model’s two nodes find: the
 * air alone falls faster, and the radiators go on giving.
 */
export function coolingSteps({ variant, phases, measures, trace }: Result): Step[] {
  const coldest = measures.lowestRoomAt;
  if (coldest === null) return [];
  const before = phases.filter(({ from }) => from < coldest);
  const lastHeated = before.filter(({ radiatorsRun }) => radiatorsRun).at(-1);
  const pause = coldest - Math.min(lastHeated?.to ?? 0, coldest);
  if (pause <= 0) return [];
  const { mass, heatLoss, floorArea } = variant.house;
  const given = { mass: MASS_PARAMETERS[mass], loss: heatLoss / floorArea };
  const difference = trace.of.air[0] - trace.of.outside[0];
  return [
    worked(houseTimeConstantRecord, given),
    worked(houseCoolingRecord, {
      difference,
      pause,
      timeConstant: houseTimeConstant(given.mass, given.loss),
    }),
  ];
}
