import { incomingCold } from '../../shared/coldWater.ts';
import { fittedCoils } from '../../shared/fittedCoils.ts';
import { shown } from '../../shared/format.ts';
import { exponential } from '../../shared/portableMaths.ts';
import type { Variant } from '../../shared/variant.ts';
import { coolDownRecord } from '../../sim/closures/coolDown.ts';
import { dutyRecord, offTimeRecord, onTimeRecord } from '../../sim/closures/cycling.ts';
import { metals } from '../../sim/closures/metals.ts';
import { mixingRecord } from '../../sim/closures/mixing.ts';
import { lossPerKelvin } from '../../sim/closures/storeLoss.ts';
import { volumetricHeat } from '../../sim/closures/water.ts';
import { MIDDLE } from './heatUpWorking.ts';
import { inletSteps, othersSteps } from './inletSteps.ts';
import { type Reading, type Sampled, waterOf } from './reading.ts';
import { type Working, worked } from './working.ts';

/** What a minute of the coil does where it lies, and what is left of it once it has mixed with the water above. */
export function mixingWorking(run: Sampled, reading: Reading, when: string): Working {
  const { cylinder } = run.variant;
  const lowest = fittedCoils(run.variant).reduce((a, b) => (b.bottom < a.bottom ? b : a));
  const perMetre = (cylinder.volume / cylinder.height) * volumetricHeat(waterOf(run), MIDDLE);
  const C1 = (lowest.top - lowest.bottom) * perMetre;
  const C2 = (cylinder.height - lowest.top) * perMetre;
  const heat = reading.of('coilHeat');
  const given = {
    C1: C1 > 0 ? C1 : Number.NaN,
    T1: heat > 0 ? reading.of('coilWater') + (heat * MINUTE) / C1 : Number.NaN,
    C2: C2 > 0 ? C2 : Number.NaN,
    T2: meanAbove(run.variant, reading, lowest.top),
  };
  // the right way up nothing mixes, and the formula has no result
  const rises = given.T1 > given.T2;
  return {
    title: `${when} ${rises ? 'what the coil warms rises and mixes' : 'what stands above the coil stays there'}`,
    steps: [worked(mixingRecord, rises ? given : { ...given, C1: Number.NaN })],
    note: 'Lower layer: the water beside the coil with a minute of its heat held there. Layer above: the mean of all that stands higher; it stays apart where it is warmer. The run does this without a pause, layer by layer.',
    further: [
      { label: 'how fast that body warms', key: 'moment.top' },
      { label: 'what crosses downwards', key: 'store.conduction' },
    ],
  };
}

/** How long the stat rests and heats in turn while nothing is drawn, with the store as one body. */
export function restsWorking(run: Sampled, power: number): Working {
  const { stat, cylinder } = run.variant;
  const lump = {
    capacity: storeCapacity(run),
    conductance: lossPerKelvin(cylinder),
    around: cylinder.surroundings,
    cutIn: stat.setPoint - stat.differential,
    cutOut: stat.setPoint,
  };
  const off = worked(offTimeRecord, lump);
  const on = worked(onTimeRecord, { ...lump, power });
  const times = { on: on.values.result ?? Number.NaN, off: off.values.result ?? Number.NaN };
  return {
    title: `with nothing drawn the stat would rest for about ${shown(times.off, 'hour', 1)}`,
    steps: [off, on, worked(dutyRecord, times)],
    note: 'An estimate with all of the store at one temperature. The run has layers: the sensor cools with the water at its own height, and what heats it is not the same at both ends.',
    further: [
      { label: 'where the stat calls again', key: 'stat.callsAt' },
      { label: 'the loss per kelvin', key: 'store.lossPerKelvin' },
    ],
  };
}

/** A store that cools as one body for a day, and the loss that a cool-down test reads from that. */
export function coolDownWorking(run: Sampled): Working {
  const { stat, cylinder } = run.variant;
  const air = cylinder.surroundings;
  const start = stat.setPoint;
  const capacity = storeCapacity(run);
  const end = air + (start - air) * exponential((-lossPerKelvin(cylinder) * DAY) / capacity);
  const cools = start > air;
  return {
    title: `left alone for 24 h it goes from ${shown(start, 'celsius', 0)} to about ${shown(end, 'celsius', 1)}`,
    steps: [
      worked(coolDownRecord, { capacity, time: DAY, start: cools ? start : Number.NaN, end, air }),
    ],
    note: 'Reckoned as one body, so that the test gives back the loss that was put in; the figure of the store left alone has layers and comes near it.',
    further: [{ label: 'the loss per kelvin', key: 'store.lossPerKelvin' }],
  };
}

/** The jet of the cold water at the flow of the settings, against the water at the top. */
export function inletWorking(run: Sampled, reading: Reading): Working {
  const { flow, inlet } = run.variant.draw;
  return {
    title: `cold water at ${shown(incomingCold(run.variant.draw), 'celsius', 0)} enters at ${shown(flow, 'litrePerMinute', 1)}`,
    steps: inletSteps(run, flow, reading.of('top')),
    note:
      inlet === 'asTyped'
        ? 'The settings spread the cold over a typed height, so the run uses none of this.'
        : 'Against the water at the top; the run does it layer by layer, and only as far as the flow is turbulent.',
    further: [{ label: 'other inlets', key: 'store.inletOthers' }],
  };
}

/** What other inlets would do in the same draw; none of them is used. */
export function othersWorking(run: Sampled, reading: Reading): Working {
  return {
    title: 'other inlets at the same flow',
    steps: othersSteps(run, run.variant.draw.flow, reading.of('top')),
    note: 'For comparison: the run uses the inlet of the settings.',
    further: [{ label: 'the inlet of the settings', key: 'store.inlet' }],
  };
}

/** Heat held by water and wall for each kelvin, J/K. */
function storeCapacity(run: Sampled): number {
  const { volume, height, wallMaterial, wallThickness } = run.variant.cylinder;
  const side = Math.sqrt((4 * Math.PI * volume) / height) * height;
  return (
    volume * volumetricHeat(waterOf(run), MIDDLE) +
    metals[wallMaterial].volumetricHeat * side * wallThickness
  );
}

/** Mean of the layers whose middle is above a height, °C; NaN when there are none. */
function meanAbove({ cylinder }: Variant, { layers }: Reading, height: number): number {
  const above = layers.filter(
    (_, layer) => ((layer + 0.5) * cylinder.height) / layers.length > height,
  );
  return above.reduce((sum, T) => sum + T, 0) / above.length;
}

const MINUTE = 60; // s
const DAY = 86_400; // s
