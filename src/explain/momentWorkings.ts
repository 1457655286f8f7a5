import { celsius, litres, quantityText } from '../../shared/format.ts';
import { type Quantity, quantities, type Result } from '../../shared/result.ts';
import { WALL_METALS, conductionRecord } from '../../sim/closures/conduction.ts';
import { MIXED } from '../../sim/closures/mixedLitres.ts';
import { pipeEndRecord } from '../../sim/closures/pipeLoss.ts';
import { radiatorRecord } from '../../sim/closures/radiator.ts';
import {
  lossConductance,
  standingLossRecord,
  TEST_DIFFERENCE,
} from '../../sim/closures/standingLoss.ts';
import { type Reading, waterOf } from './reading.ts';
import { houseLoses, sensorFollows } from './relations/control.ts';
import { cylinderLoss, risePerMinute, usableLitres } from './relations/store.ts';
import { coilPasses, flowNeeded, returnLeft, streamHeat } from './relations/stream.ts';
import { type Step, type Working, type WorkingKey, worked } from './working.ts';

/** The working of a quantity at one moment. @param when  e.g. `at 30 min` */
export function momentWorking(
  quantity: Quantity,
  result: Result,
  reading: Reading,
  when: string,
): Working {
  const text = quantityText(quantity, reading.of(quantity));
  return {
    title: `${when}, ${quantities[quantity].label} ${text}`,
    steps: stepsOf(quantity, result, reading),
    note: noteOf(quantity, reading),
    further: furtherOf(quantity),
  };
}

function stepsOf(quantity: Quantity, result: Result, reading: Reading): Step[] {
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
      return [
        worked(streamHeat, {
          mc: boilerRate(reading),
          flow: of('flow'),
          back: of('returnTemperature'),
        }),
      ];
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
      return [
        worked(pipeEndRecord, {
          inlet: of('flow'),
          around: variant.cylinder.surroundings,
          loss: variant.primary.heatLoss,
          length: variant.primary.length,
          mc,
        }),
      ];
    case 'sensor':
      return [
        worked(sensorFollows, {
          water: reading.atSensor,
          reading: of('sensor'),
          lag: variant.stat.lag,
        }),
      ];
    case 'top':
    case 'coilWater':
      return [
        worked(risePerMinute, {
          power: of('coilHeat'),
          volume: reading.topVolume,
          capacity: capacityAt(result, of('top')),
        }),
      ];
    case 'bottom':
      return [columnStep(result, reading)];
    case 'usable':
    case 'drawFlow':
      return [usableStep(result, reading)];
    case 'radiatorHeat':
    case 'radiator':
      return [
        worked(radiatorRecord, {
          rated: variant.heating.radiatorOutput,
          excess: of('radiator') - of('air'),
          exponent: variant.heating.radiatorExponent,
        }),
      ];
    case 'standingLoss':
      return [
        worked(cylinderLoss, {
          UA: lossConductance(variant.cylinder.standingLoss * DAY),
          store: reading.surfaceMean,
          air: variant.cylinder.surroundings,
        }),
        worked(standingLossRecord, {
          loss: variant.cylinder.standingLoss * DAY,
          difference: TEST_DIFFERENCE,
        }),
      ];
    case 'air':
    case 'fabric':
      return [
        worked(houseLoses, {
          loss: variant.house.heatLoss,
          air: of('air'),
          outside: variant.house.outside,
        }),
      ];
  }
}

/** The litres of a reading, with the incoming cold of the variant. */
export function usableStep({ variant }: Result, reading: Reading): Step {
  return worked(usableLitres, {
    hotVolume: reading.hotVolume,
    hot: reading.hotVolume > 0 ? reading.hotMean : MIXED,
    cold: variant.draw.incomingCold,
    mixed: MIXED,
  });
}

/** Conduction down the water and the wall of the cylinder, at the mean of the store. */
export function columnStep(result: Result, reading: Reading): Step {
  const { cylinder } = result.variant;
  const metal = { copper: 'copper', stainless: 'stainlessSteel', steel: 'carbonSteel' } as const;
  return worked(conductionRecord, {
    water: waterOf(result).conductivity(reading.mean) * cylinder.stirring,
    wall: WALL_METALS[metal[cylinder.wallMaterial]],
    thickness: cylinder.wallThickness,
    diameter: Math.sqrt((4 * cylinder.volume) / (Math.PI * cylinder.height)),
  });
}

function noteOf(quantity: Quantity, reading: Reading): string {
  switch (quantity) {
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
    case 'air':
    case 'fabric':
      return 'The air falls until radiators and fabric make up for what the house loses.';
    default:
      return '';
  }
}

function furtherOf(quantity: Quantity): { label: string; key: WorkingKey }[] {
  switch (quantity) {
    case 'coilHeat':
    case 'coilOutlet':
      return [
        { label: 'UA, what the coil conducts', key: 'coil.overall' },
        { label: 'the share given up', key: 'coil.share' },
        { label: 'flow at the coil', key: 'moment.coilInlet' },
      ];
    case 'boilerHeat':
      return [
        { label: 'the flow this needs', key: 'boiler.flowNeeded' },
        { label: 'what the coil passes', key: 'moment.coilHeat' },
      ];
    case 'flow':
    case 'returnTemperature':
    case 'top':
      return [{ label: 'what the coil passes', key: 'moment.coilHeat' }];
    case 'sensor':
      return [{ label: 'where the stat calls again', key: 'stat.callsAt' }];
    default:
      return [];
  }
}

/** Flow times specific heat at the boiler, W/K. */
const boilerRate = ({ of }: Reading): number =>
  of('boilerHeat') / (of('flow') - of('returnTemperature'));

function capacityAt(result: Result, temperature: number): number {
  const water = waterOf(result);
  return water.density(temperature) * water.specificHeat(temperature);
}

const DAY = 86_400; // s
