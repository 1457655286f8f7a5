import type { Measures, Quantity } from '../../shared/result.ts';
import type { Working } from './working.ts';

type Further = Working['further'];

const coilPasses = { label: 'what the coil passes', key: 'moment.coilHeat' } as const;
const coilPassesNow = { label: 'what the coil passes now', key: 'moment.coilHeat' } as const;
const bursts = { label: 'how long a burst lasts', key: 'boiler.bursts' } as const;
const heatUp = { label: 'litres by kelvins', key: 'store.heatUp' } as const;
const efficiency = { label: 'efficiency', key: 'measure.efficiency' } as const;
const condensing = { label: 'how far it condenses now', key: 'boiler.condensing' } as const;
const pipe = [{ label: 'what a metre of pipe loses', key: 'pipe.loss' }, coilPasses] as const;
const coilOutput = [
  { label: 'UA, what the coil conducts', key: 'coil.overall' },
  { label: 'the share given up', key: 'coil.share' },
  { label: 'flow at the coil', key: 'moment.coilInlet' },
] as const;
const standsOver = [
  { label: 'what rises and mixes', key: 'store.mixing' },
  { label: 'what crosses downwards', key: 'store.conduction' },
] as const;
const circuit = [
  { label: 'speed in the primary pipe', key: 'measure.primaryVelocity' },
  { label: 'friction of the pipes', key: 'pipe.friction' },
  { label: 'friction of the coil', key: 'coil.friction' },
] as const;
const drawn = [
  { label: 'what a draw stirs', key: 'delivery.drawn' },
  { label: 'the cold that comes in', key: 'store.inlet' },
] as const;

/** Numbers in the working of a moment that have workings of their own. */
export const furtherOfMoment: Partial<Record<Quantity, Further>> = {
  coilHeat: coilOutput,
  coilOutlet: coilOutput,
  boilerHeat: [
    { label: 'the flow this needs', key: 'boiler.flowNeeded' },
    { label: 'the fuel for it', key: 'moment.fuel' },
    condensing,
    coilPasses,
  ],
  flow: [{ label: 'the target', key: 'moment.flowTarget' }, coilPasses],
  air: [{ label: 'outside', key: 'moment.outside' }],
  fabric: [{ label: 'outside', key: 'moment.outside' }],
  returnTemperature: [condensing, coilPasses],
  coilInlet: pipe,
  pipeLoss: pipe,
  top: [...standsOver, coilPasses],
  coilWater: standsOver,
  bottom: [{ label: 'the cold that comes in', key: 'store.inlet' }],
  sensor: [
    { label: 'how the sensor follows the water', key: 'moment.bead' },
    { label: 'where the stat calls again', key: 'stat.callsAt' },
  ],
  fuel: [{ label: 'what the boiler gives', key: 'moment.boilerHeat' }, condensing],
  flowTarget: [{ label: 'flow', key: 'moment.flow' }, bursts],
  standingLoss: [
    { label: 'its class', key: 'store.energyClass' },
    { label: 'the limit for new cylinders', key: 'store.lossLimit' },
    { label: 'left alone for a day', key: 'store.coolDown' },
  ],
  coilFlow: circuit,
  usable: drawn,
  drawFlow: drawn,
};

/** Numbers in the working of a measure that have workings of their own. */
export const furtherOfMeasure: Partial<Record<keyof Measures, Further>> = {
  recovery: [
    { label: 'heat through the coil', key: 'measure.coilHeat' },
    { label: 'mean coil output', key: 'measure.meanCoilHeat' },
    { label: 'the trade’s rule', key: 'measure.ruleTime' },
  ],
  ruleTime: [heatUp, { label: 'heat through the coil', key: 'measure.coilHeat' }],
  meanCoilHeat: [coilPassesNow],
  coilHeat: [heatUp, { label: 'mean coil output', key: 'measure.meanCoilHeat' }],
  peakCoilHeat: [coilPassesNow],
  flowLimitTime: [{ label: 'the flow now', key: 'moment.flow' }, coilPassesNow],
  outputLimitTime: [{ label: 'what the boiler gives now', key: 'moment.boilerHeat' }],
  minimumTime: [bursts, coilPassesNow],
  restingTime: [bursts, { label: 'burner starts', key: 'measure.burnerStarts' }],
  burnerStarts: [bursts, { label: 'how long it was lit', key: 'measure.burnerTime' }],
  fuel: [efficiency],
  fuelForHeating: [{ label: 'all the fuel', key: 'measure.fuel' }],
  efficiency: [{ label: 'efficiency now', key: 'moment.boilerHeat' }, condensing],
  condensingShare: [condensing, efficiency],
  cost: [{ label: 'the fuel', key: 'measure.fuel' }],
  carbon: [{ label: 'the fuel', key: 'measure.fuel' }],
  coilFlow: [{ label: 'its speed', key: 'measure.primaryVelocity' }, ...circuit.slice(1)],
  sufficientFlow: [{ label: 'what the radiators give now', key: 'moment.radiatorHeat' }],
  usableAtStart: drawn,
  usableAtSatisfied: drawn,
  usableAtCall: drawn,
  lowestRoom: [{ label: 'the rooms now', key: 'moment.air' }],
  lowestRoomAt: [{ label: 'the rooms now', key: 'moment.air' }],
  coldRoomTime: [{ label: 'the rooms now', key: 'moment.air' }],
  coldAtSatisfied: [{ label: 'usable when satisfied', key: 'measure.usableAtSatisfied' }],
  hotWaterCalls: [{ label: 'how long the stat rests', key: 'stat.rests' }],
};
