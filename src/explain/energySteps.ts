import { PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import { isLit, timeOf } from '../../shared/phaseTime.ts';
import type { Measures, Phase, Result } from '../../shared/result.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import { rootBetween } from '../../shared/rootBetween.ts';
import { condensingShareRecord, netFromGrossRecord } from '../../sim/closures/boilerEfficiency.ts';
import { copperTubes, tubeContent, tubeContentRecord } from '../../sim/closures/copperTube.ts';
import { dutyRecord } from '../../sim/closures/cycling.ts';
import { storedHeatRecord } from '../../sim/closures/storedHeat.ts';
import {
  heatingSpread,
  sufficientFlow,
  sufficientFlowRecord,
} from '../../sim/closures/sufficientFlow.ts';
import { volumetricHeat } from '../../sim/closures/water.ts';
import { efficiencyStep } from './boilerSteps.ts';
import { coilContent } from './coilContent.ts';
import { flowSteps, speedStep } from './networkSteps.ts';
import { waterOf } from './reading.ts';
import { bill, carbonOfRun, heaterEnergy } from './relations/bills.ts';
import {
  burnerLit,
  burnerStarted,
  fuelOfRun,
  meanEfficiency,
  partOfWhole,
  surplus,
} from './relations/burner.ts';
import { roomTooCold } from './relations/control.ts';
import { type Step, worked } from './working.ts';

/** Measures of fuel, money, flows and bursts. */
export type EnergyMeasure = Extract<
  keyof Measures,
  | 'minimumTime'
  | 'restingTime'
  | 'leftInPrimary'
  | 'coilFlow'
  | 'radiatorFlow'
  | 'primaryVelocity'
  | 'burnerStarts'
  | 'burnerTime'
  | 'fuel'
  | 'fuelForHeating'
  | 'efficiency'
  | 'condensingShare'
  | 'electricity'
  | 'cost'
  | 'carbon'
  | 'coldRoomTime'
  | 'sufficientFlow'
>;

/** The relations behind one of them. */
export function energySteps(key: EnergyMeasure, result: Result): Step[] {
  const { measures, variant, balance } = result;
  const heat = balance.fromBoiler;
  const fuel = measures.fuel ?? Number.NaN;
  const efficiency = measures.efficiency ?? Number.NaN;
  const { prices } = variant;
  const used = { fuel, electricity: measures.electricity };
  const burst = { burst: meanBurst(result) };
  switch (key) {
    case 'minimumTime':
      return [surplusStep(result), dutyStep(result)];
    case 'restingTime':
      return [dutyStep(result)];
    case 'leftInPrimary':
      return leftSteps(result);
    case 'coilFlow':
      return flowSteps(result, 'coil', alone(measures.coilFlow));
    case 'radiatorFlow':
      return flowSteps(result, 'radiators', alone(measures.radiatorFlow ?? Number.NaN));
    case 'primaryVelocity':
      return [speedStep(result, measures.coilFlow)];
    case 'burnerStarts':
      return [worked(burnerStarted, { lit: measures.burnerTime ?? Number.NaN, ...burst })];
    case 'burnerTime':
      return [worked(burnerLit, { starts: measures.burnerStarts ?? Number.NaN, ...burst })];
    case 'fuel':
      return [worked(fuelOfRun, { heat, efficiency })];
    case 'fuelForHeating':
      return [worked(partOfWhole, { part: measures.fuelForHeating ?? Number.NaN, whole: fuel })];
    case 'efficiency':
      return [
        worked(meanEfficiency, { heat, fuel: fuel > 0 ? fuel : Number.NaN }),
        worked(netFromGrossRecord, { gross: efficiency }),
        efficiencyStep(result, measures.meanReturn ?? Number.NaN, fuel / meanLit(measures)),
      ];
    case 'condensingShare':
      return [
        worked(partOfWhole, {
          part: (measures.condensingShare ?? Number.NaN) * heat,
          whole: heat > 0 ? heat : Number.NaN,
        }),
        // its polynomial holds about the dew point only, so no one return of the run stands in it
        { record: condensingShareRecord, values: {} },
      ];
    case 'electricity': {
      const power = variant.immersion.output;
      return [worked(heaterEnergy, { power, time: measures.electricity / power })];
    }
    case 'cost':
      return [worked(bill, { ...used, perFuel: prices.fuel, perElectricity: prices.electricity })];
    case 'carbon':
      return [
        worked(carbonOfRun, {
          ...used,
          perFuel: prices.fuelCarbon,
          perElectricity: prices.electricityCarbon,
        }),
      ];
    case 'coldRoomTime':
      return [
        worked(roomTooCold, {
          setPoint: variant.heating.roomSetPoint,
          differential: variant.heating.roomDifferential,
        }),
      ];
    case 'sufficientFlow':
      return [sufficientStep(result)];
  }
}

const alone = (flow: number) => ({ flow, whole: flow, isShared: false });

const meanLit = ({ burnerTime }: Measures): number =>
  burnerTime !== null && burnerTime > 0 ? burnerTime : Number.NaN;

function meanBurst({ measures }: Result): number {
  const { burnerTime, burnerStarts } = measures;
  return burnerTime !== null && burnerStarts ? burnerTime / burnerStarts : Number.NaN;
}

/** A moment at which the burner was at its least while the coil ran. */
function surplusStep({ variant, phases, trace }: Result): Step {
  const held = phases.find(({ coilRuns, limit }) => coilRuns && limit === 'minimum');
  const at = held ? (held.from + held.to) / 2 : Number.NaN;
  const taken = held ? valueAt(trace.time, trace.of.coilHeat, at) : Number.NaN;
  return worked(surplus, { least: variant.boiler.minimumOutput, taken });
}

/** Time lit and time resting in the mean, while the coil ran and until the stat was satisfied. */
function dutyStep({ phases, measures, outcome }: Result): Step {
  const until = measures.recovery ?? outcome.at;
  const here = phases.filter(({ coilRuns, from }) => coilRuns && from < until);
  const isResting = ({ limit }: Phase) => limit === 'resting';
  const rests = here.filter(isResting).length;
  const [on, off] = [timeOf(here, isLit, until), timeOf(here, isResting, until)];
  const none = rests === 0 ? Number.NaN : 1;
  return worked(dutyRecord, { on: (none * on) / rests, off: (none * off) / rests });
}

/** What stands in boiler, pipes and coil, and how warm it is in the mean. */
function leftSteps(result: Result): Step[] {
  const { variant, measures } = result;
  const { boiler, primary } = variant;
  const content = tubeContent(primary.size);
  const volume = boiler.waterContent + 2 * primary.length * content + coilContent(result);
  const water = waterOf(result);
  const heatCapacity = volumetricHeat(water, PRIMARY_TEMPERATURE);
  const rise = (measures.leftInPrimary ?? Number.NaN) / (volume * heatCapacity);
  return [
    worked(storedHeatRecord, { volume, heatCapacity, rise }),
    worked(tubeContentRecord, { bore: copperTubes[primary.size].bore }),
  ];
}

/** The heat the house needs is the one at which its own working gives the measure. */
function sufficientStep({ variant, measures }: Result): Step {
  const { heating, house } = variant;
  const room = heating.roomSetPoint;
  const rated = heating.radiatorOutput;
  const exponent = heating.radiatorExponent;
  const flow = measures.radiatorFlow ?? Number.NaN;
  const wanted = measures.sufficientFlow ?? Number.NaN;
  const spreadOf = (need: number) => heatingSpread(need, flow);
  if (!Number.isFinite(wanted + flow) || flow <= 0) {
    return worked(sufficientFlowRecord, { rated, room, exponent });
  }
  const most = 3 * house.heatLoss * Math.max(1, room - house.outside);
  const above = (need: number) =>
    sufficientFlow(need, rated, room, spreadOf(need), exponent) - wanted;
  const need = above(0) >= 0 ? 0 : rootBetween(above, 0, most, 1e-6 * most);
  return worked(sufficientFlowRecord, { need, rated, room, spread: spreadOf(need), exponent });
}
