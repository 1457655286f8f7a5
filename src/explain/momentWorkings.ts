import { hotShareRecord } from '../../sim/closures/outletBlend.ts';
import { incomingCold } from '../../shared/coldWater.ts';
import { PIPE_TEMPERATURE, WARMEST } from '../../shared/conventions.ts';
import { celsius, litres, quantityText } from '../../shared/format.ts';
import { type Quantity, quantities } from '../../shared/result.ts';
import { copperTubes } from '../../sim/closures/copperTube.ts';
import { MIXED } from '../../sim/closures/mixedLitres.ts';
import { mixedShareRecord } from '../../sim/closures/mixedShare.ts';
import {
  pipeHeatLossRecord,
  pipeSurfaceCoefficient,
  usualPipe,
} from '../../sim/closures/pipeHeatLoss.ts';
import { pipeEndRecord } from '../../sim/closures/pipeLoss.ts';
import { radiatorRecord } from '../../sim/closures/radiator.ts';
import { lossPerKelvin } from '../../sim/closures/storeLoss.ts';
import { volumetricHeat } from '../../sim/closures/water.ts';
import { burnerSteps, efficiencyNote, fuelSteps, targetSteps } from './boilerSteps.ts';
import { columnStep } from './columnStep.ts';
import { type CircuitFlow, flowNote, flowSteps } from './networkSteps.ts';
import { lossNote, lossSteps } from './lossSteps.ts';
import { type Reading, type Sampled, waterOf } from './reading.ts';
import { callsAt, houseLoses, outsideWave } from './relations/control.ts';
import { cylinderLoss, risePerMinute, usableLitres } from './relations/store.ts';
import { coilPasses, flowNeeded, returnLeft, streamHeat } from './relations/stream.ts';
import { beadSteps, readingSteps, sensorNote } from './sensorSteps.ts';
import { type Step, type Working, worked } from './working.ts';
import { furtherOfMoment } from './furtherOf.ts';

/** The working of a quantity at one moment. @param when  e.g. `at 30 min` */
export function momentWorking(
  quantity: Quantity,
  result: Sampled,
  reading: Reading,
  when: string,
): Working {
  const text = quantityText(quantity, reading.of(quantity));
  return {
    title: `${when}, ${quantities[quantity].label} ${text}`,
    steps: stepsOf(quantity, result, reading),
    note: noteOf(quantity, result, reading),
    further: furtherOfMoment[quantity] ?? [],
  };
}

function stepsOf(quantity: Quantity, result: Sampled, reading: Reading): Step[] {
  const { variant } = result;
  const { of, heatRate: mc } = reading;
  switch (quantity) {
    case 'coilHeat':
    case 'coilOutlet':
      return [
        worked(coilPasses, {
          mc,
          UA: reading.conductance,
          inlet: of('coilInlet'),
          water: of('coilWater'),
        }),
      ];
    case 'boilerHeat':
      if (variant.boiler.model === 'asBuilt') return burnerSteps(result, reading);
      return [
        worked(streamHeat, {
          mc: boilerRate(reading),
          flow: of('flow'),
          back: of('returnTemperature'),
        }),
      ];
    case 'fuel':
      return fuelSteps(result, reading);
    case 'flowTarget':
      return targetSteps(result, reading);
    case 'coilFlow':
      return flowSteps(result, 'coil', circuitFlow(reading, 'coilFlow'));
    case 'radiatorFlow':
      return flowSteps(result, 'radiators', circuitFlow(reading, 'radiatorFlow'));
    case 'immersionHeat':
      return [
        worked(callsAt, {
          setPoint: variant.immersion.setPoint,
          differential: variant.immersion.differential,
        }),
      ];
    case 'outside':
      return [worked(outsideWave, outsideAt(result, reading))];
    case 'flow':
      return [
        worked(flowNeeded, {
          back: of('returnTemperature'),
          power: of('boilerHeat'),
          mc: boilerRate(reading),
        }),
      ];
    case 'returnTemperature':
      return [
        worked(returnLeft, { flow: of('flow'), power: of('boilerHeat'), mc: boilerRate(reading) }),
      ];
    case 'coilInlet':
    case 'pipeLoss':
      return pipeSteps(result, reading);
    case 'bead':
      return beadSteps(result, reading);
    case 'sensor':
      return readingSteps(result, reading);
    case 'top':
    case 'coilWater':
      return [
        worked(risePerMinute, {
          power: of('coilHeat'),
          volume: reading.topVolume,
          capacity: volumetricHeat(waterOf(result), of('top')),
        }),
      ];
    case 'bottom':
      return [columnStep(result, reading)];
    case 'arriving':
    case 'outlet':
      return [
        worked(hotShareRecord, {
          hot: of('arriving'),
          cold: incomingCold(variant.draw),
          wanted: variant.draw.taken === 'mixed' ? variant.draw.mixedTo : Number.NaN,
        }),
      ];
    case 'usable':
    case 'drawFlow':
      return usableSteps(result, reading);
    case 'radiatorHeat':
    case 'radiator':
      return [
        worked(radiatorRecord, {
          rated: variant.heating.radiatorOutput,
          excess: radiatorMean(reading) - of('air'),
          exponent: variant.heating.radiatorExponent,
        }),
      ];
    case 'standingLoss':
      return [
        worked(cylinderLoss, {
          UA: lossPerKelvin(variant.cylinder),
          store: reading.surfaceMean,
          air: variant.cylinder.surroundings,
        }),
        ...lossSteps(variant.cylinder),
      ];
    case 'air':
    case 'fabric':
      return [
        worked(houseLoses, {
          loss: variant.house.heatLoss,
          air: of('air'),
          outside: of('outside'),
        }),
      ];
  }
}

/** Flow in one circuit, and all the water through the boiler. */
function circuitFlow({ of }: Reading, key: 'coilFlow' | 'radiatorFlow'): CircuitFlow {
  const [coil, radiators] = [of('coilFlow'), of('radiatorFlow')];
  return { flow: of(key), whole: coil + radiators, isShared: coil > 0 && radiators > 0 };
}

/** Mean of the water in the radiators, as the model has it: half way from flow to return while it runs. */
function radiatorMean({ of }: Reading): number {
  return of('radiatorFlow') > 0 ? (of('flow') + of('radiator')) / 2 : of('radiator');
}

/** The pipe between boiler and coil. */
function pipeSteps({ variant }: Sampled, { of, heatRate: mc }: Reading): Step[] {
  const { lossFrom, heatLoss, length, lagging, size } = variant.primary;
  const around = variant.cylinder.surroundings;
  const pipe = usualPipe(copperTubes[size].outside, lagging);
  const lost = worked(pipeHeatLossRecord, {
    outside: pipe.outside,
    lagging,
    k: pipe.laggingConductivity,
    h: pipeSurfaceCoefficient(pipe, PIPE_TEMPERATURE, around),
  });
  const loss = lossFrom === 'given' ? heatLoss : lost.values.result;
  const end = worked(pipeEndRecord, { inlet: of('flow'), around, loss, length, mc });
  return lossFrom === 'given' ? [end] : [end, lost];
}

/** Terms of the daily wave at a moment. */
function outsideAt({ variant }: Sampled, { at }: Reading) {
  const { outside: mean, outsideSwing: swing } = variant.house;
  return { mean, swing, hours: variant.programme.startsAt + at - WARMEST };
}

/** The litres of a reading, with the incoming cold of the variant, and what each of its hot litres makes. */
export function usableSteps({ variant }: Sampled, reading: Reading): Step[] {
  const hot = reading.hotVolume > 0 ? reading.hotMean : MIXED;
  const given = { hot, cold: incomingCold(variant.draw), mixed: MIXED };
  return [
    worked(usableLitres, { ...given, hotVolume: reading.hotVolume }),
    worked(mixedShareRecord, given),
  ];
}

function noteOf(quantity: Quantity, result: Sampled, reading: Reading): string {
  switch (quantity) {
    case 'boilerHeat':
      return result.variant.boiler.model === 'asBuilt' ? efficiencyNote(result) : '';
    case 'fuel':
      return efficiencyNote(result);
    case 'flow':
    case 'returnTemperature':
      return result.variant.boiler.model === 'asBuilt'
        ? 'Boiler, pipes and coil hold heat, so the flow follows what is burnt and taken with a delay that this line leaves out.'
        : '';
    case 'flowTarget':
      return 'The target is a setting, or follows rooms or weather where heating is compensated.';
    case 'coilFlow':
    case 'radiatorFlow':
      return flowNote(result);
    case 'coilInlet':
    case 'pipeLoss':
      return result.variant.boiler.model === 'asBuilt'
        ? 'The pipe holds water and metal of its own, so its end follows its start with a delay; the loss counts the case of the boiler too.'
        : '';
    case 'sensor':
    case 'bead':
      return sensorNote(result, reading);
    case 'immersionHeat':
      return 'It gives its full power or nothing: its own stat, at its own height, decides.';
    case 'outside':
      return result.variant.house.outsideSwing === 0 ? 'Constant all day here.' : '';
    case 'coilHeat':
    case 'coilOutlet':
      return Number.isFinite(reading.conductance)
        ? ''
        : 'The coil does not run at this moment, so the numbers are left open.';
    case 'top':
    case 'coilWater':
      return `${litres(reading.topVolume)} stand within 0.5 K of the top at ${celsius(reading.of('top'))}; the integrator adds the rise up from the start.`;
    case 'bottom':
      return 'Below the coil only conduction down the water and the wall brings heat, and it is slow.';
    case 'usable':
      return reading.hotVolume > 0 ? '' : 'No water is at 40 °C yet, so nothing counts.';
    case 'standingLoss':
      return lossNote(result.variant.cylinder);
    case 'air':
    case 'fabric':
      return 'The air falls until radiators and fabric make up for what the house loses.';
    default:
      return '';
  }
}

/** Flow times specific heat at the boiler, W/K. */
const boilerRate = ({ of }: Reading): number =>
  of('boilerHeat') / (of('flow') - of('returnTemperature'));
