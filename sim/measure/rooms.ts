import { arrangementOf } from '../../shared/arrangements.ts';
import type { Measures, Trace } from '../../shared/result.ts';
import { heatingSpread, sufficientFlow } from '../closures/sufficientFlow.ts';
import type { Plant } from '../plant/plant.ts';
import { fabricStart, houseLoss } from '../plant/house.ts';
import { indexOfLeast } from './least.ts';

type Rooms = Pick<Measures, 'lowestRoom' | 'lowestRoomAt' | 'coldRoomTime' | 'sufficientFlow'>;

/** What the run did to the rooms; nothing where there is no heating. */
export function roomMeasures(
  { variant, house, flows }: Plant,
  { time, samples, of }: Trace,
): Rooms {
  const { heating } = variant;
  if (!arrangementOf(heating.arrangement).heated) {
    return { lowestRoom: null, lowestRoomAt: null, coldRoomTime: null, sufficientFlow: null };
  }
  const coldest = indexOfLeast(of.air);
  const floor = heating.roomSetPoint - 2 * heating.roomDifferential;
  let cold = 0;
  for (let sample = 1; sample < samples; sample++) {
    const width = time[sample] - time[sample - 1];
    cold += width * shareBelow(of.air[sample - 1] - floor, of.air[sample] - floor);
  }
  const { outside } = variant.house;
  const fabric = fabricStart(house, heating.roomSetPoint, outside);
  const need = houseLoss(house, heating.roomSetPoint, fabric, outside);
  return {
    lowestRoom: of.air[coldest],
    lowestRoomAt: time[coldest],
    coldRoomTime: cold,
    sufficientFlow: sufficientFlow(
      need,
      heating.radiatorOutput,
      heating.roomSetPoint,
      heatingSpread(need, flows.radiatorsAlone),
      heating.radiatorExponent,
    ),
  };
}

/** Part of a straight line between two values that lies below zero. */
function shareBelow(from: number, to: number): number {
  if (from < 0 && to < 0) return 1;
  if (from >= 0 && to >= 0) return 0;
  const below = from < 0 ? -from : -to;
  return below / Math.abs(to - from);
}
