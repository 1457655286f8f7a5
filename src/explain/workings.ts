import { duration, shown } from '../../shared/format.ts';
import type { Measures, Quantity, Result } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import { coilWorking } from './coilWorkings.ts';
import { measureWorking } from './measureWorkings.ts';
import { columnStep } from './columnStep.ts';
import { lossWorking } from './lossWorkings.ts';
import { momentWorking } from './momentWorkings.ts';
import { readingAt } from './reading.ts';
import { callsAt } from './relations/control.ts';
import { flowNeeded } from './relations/stream.ts';
import { beadSteps, sensorNote } from './sensorSteps.ts';
import { type Working, type WorkingKey, worked } from './working.ts';

/** How a number of a result came about, at the moment in hand. */
export function workingOf(key: WorkingKey, result: Result, at: Seconds): Working {
  const dot = key.indexOf('.');
  const name = key.slice(dot + 1);
  if (key.startsWith('measure.')) return measureWorking(name as keyof Measures, result);
  const reading = readingAt(result, at);
  const when = `at ${duration(at, at % 60 < 0.5 || at % 60 > 59.5 ? 0 : 1)}`;
  if (key.startsWith('moment.')) return momentWorking(name as Quantity, result, reading, when);
  const { stat, cylinder, boiler } = result.variant;
  switch (key) {
    case 'stat.callsAt':
      return {
        title: `the stat calls again at ${shown(stat.setPoint - stat.differential, 'celsius', 1)}`,
        steps: [worked(callsAt, { setPoint: stat.setPoint, differential: stat.differential })],
        note: '',
        further: [{ label: 'usable at the next call', key: 'measure.usableAtCall' }],
      };
    case 'stat.follows':
      return {
        title: `${when} the sensor runs behind the water`,
        steps: beadSteps(result, reading),
        note: sensorNote(result, reading),
        further: [{ label: 'where the stat calls again', key: 'stat.callsAt' }],
      };
    case 'store.conduction':
      return {
        title: 'only conduction crosses the layers downwards',
        steps: [columnStep(result, reading)],
        note: '',
        further: [],
      };
    case 'store.lossPerKelvin':
    case 'store.energyClass':
    case 'store.lossLimit':
    case 'store.lossGuide':
      return lossWorking(key, cylinder);
    case 'boiler.flowNeeded':
      return {
        title: `${when} full output would need this flow`,
        steps: [
          worked(flowNeeded, {
            back: reading.of('returnTemperature'),
            power: boiler.output,
            mc: reading.heatRate,
          }),
        ],
        note: `The flow limit is ${shown(boiler.targets === 'separate' ? boiler.hotWaterFlow : boiler.heatingFlow, 'celsius', 0)}: above it the boiler gives less than its full output.`,
        further: [{ label: 'what the coil passes', key: 'moment.coilHeat' }],
      };
    default:
      return coilWorking(key as Extract<WorkingKey, `coil.${string}`>, result, reading, when);
  }
}
