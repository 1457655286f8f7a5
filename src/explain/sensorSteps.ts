import { mountingOf } from '../../shared/mounting.ts';
import {
  LEAD_SECTIONS,
  leadResistance,
  leadResistanceRecord,
} from '../../sim/closures/leadResistance.ts';
import { platinumRecord, platinumResistance } from '../../sim/closures/platinum.ts';
import { steinhartHartRecord, steinhartHartResistance } from '../../sim/closures/steinhartHart.ts';
import {
  thermistorResistance,
  thermistorResistanceRecord,
  thermistorTemperatureRecord,
} from '../../sim/closures/thermistor.ts';
import type { Reading, Sampled } from './reading.ts';
import { sensorFollows } from './relations/control.ts';
import { ohmsInSeries, ohmsWithDamp, readsTrue, sensorSettles } from './relations/wiring.ts';
import { type Step, worked } from './working.ts';

/** Where the sensor is between water and air, and how fast it follows. */
export function beadSteps({ variant }: Sampled, reading: Reading): Step[] {
  const { lag, airShare } = mountingOf(variant.stat);
  const follows = worked(sensorFollows, {
    water: reading.atSensor,
    reading: reading.of('bead'),
    lag,
  });
  if (airShare === 0) return [follows];
  const settles = worked(sensorSettles, {
    water: reading.atSensor,
    share: airShare,
    air: variant.cylinder.surroundings,
  });
  return [settles, follows];
}

/** From the sensor to what the controller reads, along the wires. */
export function readingSteps(result: Sampled, reading: Reading): Step[] {
  const { sensor } = result.variant;
  const bead = reading.of('bead');
  const read = worked(readsTrue, { bead, fault: reading.of('sensor') - bead });
  if (sensor.element === 'true') return [read, ...beadSteps(result, reading)];
  const { ohms, step } = element(result, bead);
  const lead = leadResistance(sensor.leadLength, LEAD_SECTIONS[sensor.leadSection]);
  const seen = ohms + lead + sensor.jointResistance;
  const steps = [
    step,
    worked(leadResistanceRecord, {
      length: sensor.leadLength,
      perLength: LEAD_SECTIONS[sensor.leadSection],
    }),
    worked(ohmsInSeries, { element: ohms, lead, joint: sensor.jointResistance }),
  ];
  const damp = sensor.dampResistance;
  if (damp > 0) steps.push(worked(ohmsWithDamp, { seen, damp }));
  const atController = damp > 0 ? (seen * damp) / (seen + damp) : seen;
  return [...steps, ...taken(result, atController), read];
}

/** Said beside the formulas. */
export function sensorNote({ variant }: Sampled, reading: Reading): string {
  if (Number.isNaN(reading.of('sensor'))) {
    return 'The controller shows a fault: it reads no temperature.';
  }
  if (variant.stat.mounting === 'asTyped') return '';
  return 'The lag and the offset are the usual ones of this fixing: engineering guesses, no source.';
}

function element({ variant }: Sampled, bead: number): { ohms: number; step: Step } {
  const { sensor } = variant;
  switch (sensor.element) {
    case 'platinum': {
      const r0 = sensor.platinumOhms;
      const step = worked(platinumRecord, { r0, temperature: bead });
      return { ohms: platinumResistance(bead, r0), step };
    }
    case 'steinhartHart': {
      const curve = { A: sensor.steinhartA, B: sensor.steinhartB, C: sensor.steinhartC };
      const ohms = steinhartHartResistance(bead, curve) ?? Number.NaN;
      return { ohms, step: worked(steinhartHartRecord, { ...curve, resistance: ohms }) };
    }
    default: {
      const { r25, beta } = sensor;
      const step = worked(thermistorResistanceRecord, { temperature: bead, r25, beta });
      return { ohms: thermistorResistance(bead, r25, beta), step };
    }
  }
}

/** What the controller makes of the ohms, where it takes them for a thermistor. */
function taken({ variant }: Sampled, resistance: number): Step[] {
  const { sensor } = variant;
  const isThermistor =
    sensor.expects === 'thermistor' ||
    (sensor.expects === 'same' && sensor.element === 'thermistor');
  if (!isThermistor) return [];
  const own = sensor.expects === 'same';
  return [
    worked(thermistorTemperatureRecord, {
      resistance,
      r25: own ? sensor.r25 : sensor.expectedR25,
      beta: own ? sensor.beta : sensor.expectedBeta,
    }),
  ];
}
