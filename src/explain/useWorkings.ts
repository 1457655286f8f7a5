import { incomingCold, ofMonth } from '../../shared/coldWater.ts';
import { figure, litres, shown } from '../../shared/format.ts';
import { bathingFactors, otherUseFactors } from '../../shared/monthlyUse.ts';
import type { Variant } from '../../shared/variant.ts';
import {
  bathsPerDay,
  DELIVERED,
  householdUseRecords,
  otherUse,
  showersPerDay,
} from '../../sim/closures/householdUse.ts';
import { occupancy, occupancyRecord } from '../../sim/closures/occupancy.ts';
import type { PartKey, Working } from './working.ts';
import { worked } from './working.ts';

/** A number of the usual household. */
export type UseKey = Extract<PartKey, `use.${string}`>;

/** What a household of this many takes in the mean, and the people reckoned for the house. */
export function useWorking(key: UseKey, { day, draw, house }: Variant): Working {
  const { people } = day;
  const cold = incomingCold(draw);
  const bathing = ofMonth(bathingFactors, draw.month);
  const others = ofMonth(otherUseFactors, draw.month);
  const [bathsIn, showersIn, bathUse, showerUse, otherUses] = householdUseRecords;
  const note = `Litres are of hot water at ${shown(DELIVERED, 'celsius', 0)}, as these counts take it; the day draws what was typed, mixed at the tap.`;
  switch (key) {
    case 'use.people':
      return {
        title: `${figure(occupancy(house.floorArea), 1)} people are reckoned for this floor area`,
        steps: [worked(occupancyRecord, { floorArea: house.floorArea })],
        note: '',
        further: [
          { label: 'baths', key: 'use.baths' },
          { label: 'showers', key: 'use.showers' },
          { label: 'sinks and basins', key: 'use.others' },
        ],
      };
    case 'use.baths': {
      const baths = bathsPerDay(people, both);
      return {
        title: `${figure(baths, 2)} baths a day in the mean`,
        steps: [worked(bathsIn, { people }), worked(bathUse, { baths, cold, factor: bathing })],
        note,
        further: [{ label: 'showers', key: 'use.showers' }],
      };
    }
    case 'use.showers': {
      const showers = showersPerDay(people, both);
      const flow = day.showerFlow;
      return {
        title: `${figure(showers, 2)} showers a day in the mean`,
        steps: [
          worked(showersIn, { people }),
          worked(showerUse, { showers, flow, cold, factor: bathing }),
        ],
        note,
        further: [{ label: 'baths', key: 'use.baths' }],
      };
    }
    case 'use.others':
      return {
        title: `${litres(otherUse(people, others))} a day at sinks and basins in the mean`,
        steps: [worked(otherUses, { people, factor: others })],
        note,
        further: [{ label: 'people by floor area', key: 'use.people' }],
      };
  }
}

const both = { bath: true, shower: true };
