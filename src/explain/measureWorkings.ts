import { measureWords } from '../../shared/format.ts';
import { type Measures, measureRows, type Result } from '../../shared/result.ts';
import { volumetricHeat } from '../../sim/closures/water.ts';
import { columnStep } from './columnStep.ts';
import { usableSteps } from './momentWorkings.ts';
import { energySteps } from './energySteps.ts';
import { flowNote } from './networkSteps.ts';
import { type Reading, readingAt, waterOf } from './reading.ts';
import { callsAt, houseLoses } from './relations/control.ts';
import { coldLeft, risePerMinute } from './relations/store.ts';
import { coilPasses, flowNeeded, returnLeft } from './relations/stream.ts';
import { heatThrough, meanOutput, recoveryTime, ruleTime } from './relations/timing.ts';
import { coolingSteps } from './coolingSteps.ts';
import { furtherOfMeasure } from './furtherOf.ts';
import { type Step, type Working, worked } from './working.ts';

/** The working of a measure of the whole run. */
export function measureWorking(key: keyof Measures, result: Result): Working {
  const value = result.measures[key];
  return {
    title: `${measureRows[key].label}: ${measureWords(key, value)}`,
    steps: stepsOf(key, result),
    note:
      value === null
        ? 'It was not reached during this run, so the numbers are left open.'
        : noteOf(key, result),
    further: furtherOfMeasure[key] ?? [],
  };
}

function stepsOf(key: keyof Measures, result: Result): Step[] {
  const { measures, variant } = result;
  const { recovery, coilHeat: heat } = measures;
  const mean = measures.meanCoilHeat ?? Number.NaN;
  const ran = heat / mean;
  const settings = { setPoint: variant.stat.setPoint, differential: variant.stat.differential };
  const read = () => readingAt(result, momentOf(key, result));
  switch (key) {
    case 'recovery':
      return [worked(recoveryTime, { waiting: (recovery ?? Number.NaN) - ran, heat, mean })];
    case 'ruleTime':
      return [worked(ruleTime, { heat, power: variant.boiler.output })];
    case 'coilHeat':
      return [worked(heatThrough, { mean, time: ran })];
    case 'meanCoilHeat':
      return [worked(meanOutput, { heat, time: ran })];
    case 'peakCoilHeat':
      return [exchangeStep(read())];
    case 'meanReturn': {
      const { of, heatRate } = read();
      return [worked(returnLeft, { flow: of('flow'), power: of('boilerHeat'), mc: heatRate })];
    }
    case 'outputLimitTime':
    case 'flowLimitTime': {
      const { of, heatRate } = read();
      const power = variant.boiler.output;
      return [worked(flowNeeded, { back: of('returnTemperature'), power, mc: heatRate })];
    }
    case 'waitingTime':
    case 'hotWaterCalls':
      return [worked(callsAt, settings)];
    case 'usableAtStart':
    case 'usableAtSatisfied':
    case 'usableAtCall':
      return usableSteps(result, read());
    case 'coldAtSatisfied':
      return [
        worked(coldLeft, { volume: variant.cylinder.volume, hotVolume: read().hotVolume }),
        columnStep(result, read()),
      ];
    case 'bottomAtSatisfied':
      return [columnStep(result, read())];
    case 'topAtSatisfied':
    case 'hottest': {
      const reading = read();
      const top = reading.of('top');
      return [
        worked(risePerMinute, {
          power: reading.of('coilHeat'),
          volume: reading.topVolume,
          capacity: volumetricHeat(waterOf(result), top),
        }),
      ];
    }
    case 'lowestRoom':
    case 'lowestRoomAt':
      return [
        worked(houseLoses, {
          loss: variant.house.heatLoss,
          air: measures.lowestRoom ?? Number.NaN,
          outside: read().of('outside'),
        }),
        ...coolingSteps(result),
      ];
    default:
      return energySteps(key, result);
  }
}

/** The moment of the run at which a measure is explained, s. */
function momentOf(key: keyof Measures, result: Result): number {
  const { measures, marks, phases, trace, outcome } = result;
  const satisfied = measures.recovery ?? outcome.at;
  switch (key) {
    case 'usableAtStart':
      return 0;
    case 'usableAtCall':
      return (
        marks.find(({ kind, at }) => kind === 'hotWaterCalled' && at >= satisfied)?.at ?? outcome.at
      );
    case 'peakCoilHeat':
      return trace.time[largest(trace.of.coilHeat)];
    case 'hottest':
      return trace.time[largest(trace.of.top)];
    case 'meanReturn':
      return satisfied / 2;
    case 'lowestRoom':
    case 'lowestRoomAt':
      return measures.lowestRoomAt ?? 0;
    case 'outputLimitTime':
    case 'flowLimitTime': {
      const held = phases.find(({ coilRuns, limit }) => coilRuns && limit === 'flowLimit');
      return held ? held.from : satisfied - 1;
    }
    default:
      // a moment before the stat is satisfied the coil still runs
      return Math.max(0, satisfied - 1);
  }
}

function exchangeStep({ of, heatRate, conductance }: Reading): Step {
  const given = { mc: heatRate, UA: conductance, inlet: of('coilInlet'), water: of('coilWater') };
  return worked(coilPasses, given);
}

function largest(values: Float64Array): number {
  let best = 0;
  for (let i = 1; i < values.length; i++) if (values[i] > values[best]) best = i;
  return best;
}

function noteOf(key: keyof Measures, result: Result): string {
  return key === 'coilFlow' || key === 'radiatorFlow' ? flowNote(result) : (notes[key] ?? '');
}

const notes: Partial<Record<keyof Measures, string>> = {
  recovery:
    'The mean coil output is a result of the run, not an input: the settings beside it show what would raise it.',
  meanReturn: 'Shown for the middle of the reheat; the measure is the mean over all of it.',
  outputLimitTime:
    'Shown for the moment at which full output would first need a flow above its limit.',
  flowLimitTime:
    'Shown for the moment at which full output would first need a flow above its limit.',
  topAtSatisfied: 'Shown for the last second before the stat was satisfied.',
  hottest: 'Shown for the moment at which the top is hottest.',
  peakCoilHeat: 'Shown for the moment at which it was highest.',
  minimumTime:
    'Shown for the first time the burner was at its least, and for the mean of its bursts.',
  restingTime: 'The mean burst and the mean rest; waits for a valve are counted with the rests.',
  leftInPrimary:
    'The rise is the mean of the run above the air around, with the metal counted as water.',
  efficiency: 'The lower line is for the mean return of the reheat and the mean load while lit.',
  condensingShare: 'Summed over the run; the lower line says how each moment is weighed.',
  fuelForHeating: 'Fuel is shared out by the heat that goes to radiators and coil at each moment.',
  coldRoomTime: 'The minutes of the run below this are counted.',
  sufficientFlow:
    'On the mean outside temperature, with the flow the radiators have to themselves.',
};
