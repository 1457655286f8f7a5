import type { DayMeasures, DayRun } from '../../shared/day.ts';
import type { Working } from './working.ts';

type Further = Working['further'];

/** Said beside the formulas of a measure of a day. */
export const dayNotes: Partial<Record<keyof DayMeasures, string>> = {
  fromStore:
    'Temperatures are means over all draws; the lower lines are for the draw that took most from the store in its time, against the water at the top as it began.',
  heatDrawn:
    'The rise is the mean above the incoming cold, where the hot water leaves the pipe to the tap.',
  useful: 'What is not useful came while the tap ran cooler than wanted.',
  usefulAsked: 'What a draw got beyond what it asked counts for no other draw.',
  failedDraws:
    'Shown for the middle of the first draw that failed, or of the largest: a share of 1 means that hot alone comes, and is not warm enough.',
  coldTime: 'The lower line is for the middle of the first draw that failed, or of the largest.',
  coldVolume: 'The lower line is for the middle of the first draw that failed, or of the largest.',
  waitVolume:
    'Time and litres until each draw first came as warm as wanted; the pipe to the tap holds what has to run off.',
  leastUsable: 'Counted from the layers at the moment at which least is left.',
  leastUsableAt: 'Counted from the layers at the moment at which least is left.',
  hottestAtTap:
    'Caution: times for adults; lower the temperature at the outlet with a thermostatic mixing valve, not by storing cooler.',
  hotWaterCalls: 'Each time the sensor has fallen this far is one call.',
  fuelForHotWater: 'Fuel is shared out by the heat that goes to radiators and coil at each moment.',
  standingLoss:
    'The difference is the mean of the days shown, over the whole surface of the store.',
  lowestRoom: 'Shown for the moment at which the rooms are coldest.',
};

/** Numbers of a measure that have workings of their own. */
export function dayFurther(key: keyof DayMeasures, { variant }: DayRun): Further {
  const isHousehold = variant.day.pattern === 'household';
  return key === 'drawn' && isHousehold
    ? [...household, ...(further.drawn ?? [])]
    : (further[key] ?? []);
}

const household: Further = [
  { label: 'showers', key: 'use.showers' },
  { label: 'baths', key: 'use.baths' },
  { label: 'sinks and basins', key: 'use.others' },
];

const further: Partial<Record<keyof DayMeasures, Further>> = {
  drawn: [{ label: 'of it out of the store', key: 'day.fromStore' }],
  fromStore: [
    { label: 'the heat in it', key: 'day.heatDrawn' },
    { label: 'other inlets', key: 'store.inletOthers' },
  ],
  heatDrawn: [{ label: 'of it useful', key: 'day.useful' }],
  useful: [{ label: 'efficiency', key: 'day.efficiency' }],
  usefulAsked: [{ label: 'not got', key: 'day.shortfall' }],
  shortfall: [{ label: 'draws that fell short', key: 'day.failedDraws' }],
  failedDraws: [{ label: 'how long too cold', key: 'day.coldTime' }],
  coldTime: [{ label: 'least usable', key: 'day.leastUsable' }],
  coldVolume: [{ label: 'least usable', key: 'day.leastUsable' }],
  waitVolume: [{ label: 'at the tap after a minute', key: 'hygiene.afterMinute' }],
  leastUsable: [{ label: 'what a draw stirs', key: 'delivery.drawn' }],
  hottestAtTap: [{ label: 'how warm the store was kept', key: 'hygiene.top' }],
  hotWaterCalls: [{ label: 'how long the stat rests', key: 'stat.rests' }],
  burnerStarts: [{ label: 'bursts of the burner', key: 'boiler.bursts' }],
  fuelForHotWater: [{ label: 'efficiency', key: 'day.efficiency' }],
  efficiency: [
    { label: 'the fuel', key: 'day.fuelForHotWater' },
    { label: 'the loss', key: 'day.standingLoss' },
  ],
  standingLoss: [
    { label: 'what it costs', key: 'day.standingLossCost' },
    { label: 'its class', key: 'store.energyClass' },
  ],
  standingLossCost: [{ label: 'the loss', key: 'day.standingLoss' }],
  cost: [{ label: 'the fuel for hot water', key: 'day.fuelForHotWater' }],
};
