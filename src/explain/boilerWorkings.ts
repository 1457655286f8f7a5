import { PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import { shown } from '../../shared/format.ts';
import {
  boilerEfficiencyRecord,
  condensingShareRecord,
  DEW_POINT,
  netFromGrossRecord,
} from '../../sim/closures/boilerEfficiency.ts';
import { tubeContent, tubeMetalHeat } from '../../sim/closures/copperTube.ts';
import { dutyRecord, offTimeRecord, onTimeRecord } from '../../sim/closures/cycling.ts';
import { volumetricHeat } from '../../sim/closures/water.ts';
import { efficiencyNote, efficiencyStep } from './boilerSteps.ts';
import { coilContent } from './coilContent.ts';
import { type Reading, type Sampled, waterOf } from './reading.ts';
import { flowNeeded } from './relations/stream.ts';
import { type PartKey, type Working, worked } from './working.ts';

/** How a number of the boiler came about. @param when  e.g. `at 30 min` */
export function boilerWorking(
  key: Extract<PartKey, `boiler.${string}`>,
  run: Sampled,
  reading: Reading,
  when: string,
): Working {
  switch (key) {
    case 'boiler.flowNeeded':
      return flowNeededWorking(run, reading, when);
    case 'boiler.condensing':
      return condensingWorking(run, reading, when);
    case 'boiler.bursts':
      return burstsWorking(run, reading, when);
  }
}

/** The flow at which the coil could pass the boiler’s full output. */
function flowNeededWorking({ variant }: Sampled, reading: Reading, when: string): Working {
  const { boiler } = variant;
  const limit = boiler.targets === 'separate' ? boiler.hotWaterFlow : boiler.heatingFlow;
  return {
    title: `${when} full output would need this flow`,
    steps: [
      worked(flowNeeded, {
        back: reading.of('returnTemperature'),
        power: boiler.output,
        mc: reading.heatRate,
      }),
    ],
    note: `The flow limit is ${shown(limit, 'celsius', 0)}: above it the boiler gives less than its full output.`,
    further: [{ label: 'what the coil passes', key: 'moment.coilHeat' }],
  };
}

/** How well the burner burns at a moment, and how much of that is steam that condenses. */
function condensingWorking(run: Sampled, { of }: Reading, when: string): Working {
  const back = of('returnTemperature');
  const [fuel, heat] = [of('fuel'), of('boilerHeat')];
  const within = Math.min(Math.max(back, DEW_POINT - EDGE), DEW_POINT + EDGE);
  const isBuilt = run.variant.boiler.model === 'asBuilt';
  return {
    title: `${when} the water comes back at ${shown(back, 'celsius', 1)}`,
    steps: isBuilt
      ? [
          worked(condensingShareRecord, { returnTemperature: within }),
          efficiencyStep(run, back, fuel),
          worked(netFromGrossRecord, { gross: fuel > 0 ? heat / fuel : Number.NaN }),
        ]
      : [{ record: boilerEfficiencyRecord, values: {} }],
    note: [
      isBuilt && within !== back && Number.isFinite(back)
        ? `The first line holds from ${shown(DEW_POINT - EDGE, 'celsius', 0)} to ${shown(DEW_POINT + EDGE, 'celsius', 0)}, and is shown at its nearer end.`
        : '',
      efficiencyNote(run),
    ]
      .filter((one) => one !== '')
      .join(' '),
    further: [{ label: 'efficiency of the run', key: 'measure.efficiency' }],
  };
}

/** Bursts of a burner at its least, with all the primary water as one body between its two switching points. */
function burstsWorking(run: Sampled, reading: Reading, when: string): Working {
  const { boiler, primary } = run.variant;
  const { of } = reading;
  const pipes = 2 * primary.length;
  const water = boiler.waterContent + pipes * tubeContent(primary.size) + coilContent(run);
  const lump = {
    capacity:
      water * volumetricHeat(waterOf(run), PRIMARY_TEMPERATURE) +
      pipes * tubeMetalHeat(primary.size),
    // what the coil takes for each kelvin between flow and store
    conductance: of('coilHeat') / (of('coilInlet') - of('coilWater')),
    around: of('coilWater'),
    cutIn: of('flowTarget') - boiler.restartBelow,
    cutOut: of('flowTarget') + boiler.offMargin,
  };
  const isBuilt = boiler.model === 'asBuilt';
  const on = worked(onTimeRecord, isBuilt ? { ...lump, power: boiler.minimumOutput } : {});
  const off = worked(offTimeRecord, isBuilt ? lump : {});
  const times = { on: on.values.result ?? Number.NaN, off: off.values.result ?? Number.NaN };
  const isWhole = Number.isFinite(times.on + times.off);
  return {
    title: isWhole
      ? `${when} a burner at its least would burn for about ${shown(times.on, 'minute', 1)} and rest for ${shown(times.off, 'minute', 1)}`
      : `${when} a burner at its least need not rest`,
    steps: [on, off, worked(dutyRecord, times)],
    note: isBuilt
      ? `An estimate with all the primary water as one body: ${isWhole ? '' : 'what the coil takes holds it below its cut-out, or it does not run; '}in the run boiler, pipes and coil follow one another, and the burner rests ${shown(boiler.minimumOff, 'minute', 1)} at least.`
      : 'An ideal boiler turns down to nothing and has no bursts.',
    further: [
      { label: 'burner starts', key: 'measure.burnerStarts' },
      { label: 'what the coil passes', key: 'moment.coilHeat' },
    ],
  };
}

const EDGE = 1; // K on either side of the dew point, as the record has it
