import { type Celsius, type Ohms, ZERO_CELSIUS } from '../../shared/units.ts';
import type { Sensor } from '../../shared/variant.ts';
import { LEAD_SECTIONS, leadResistance } from '../closures/leadResistance.ts';
import { PLATINUM_TURN, platinumResistance, platinumTemperature } from '../closures/platinum.ts';
import { steinhartHartResistance, steinhartHartTemperature } from '../closures/steinhartHart.ts';
import { thermistorResistance, thermistorTemperature } from '../closures/thermistor.ts';

/** The element, its leads and joints, and what the controller takes it for. */
export type SensorWiring = Omit<Sensor, 'fault' | 'faultAt'>;

/** What the controller believes, and what makes it believe so. */
export interface SensorChain {
  /**
   * What the controller reads, °C; infinite when the ohms are beyond what it takes the element for.
   * @param bead  the element itself, °C
   */
  readonly reading: (bead: Celsius) => Celsius;
  /** The element temperature from −20 to 120 °C behind a reading, °C; null when there is none. */
  readonly beadAt: (reading: Celsius) => Celsius | null;
}

/**
 * The chain from the element to the reading: ohms of the element, lead and joint in series with it,
 * a damp path across both, and the controller's characteristic read backwards. Steinhart–Hart
 * coefficients have to be solvable.
 */
export function makeSensorChain(wiring: SensorWiring): SensorChain {
  if (wiring.element === 'true') return { reading: (bead) => bead, beadAt: withinSpan };
  const element = elementCurve(wiring);
  const expected = expectedCurve(wiring) ?? element;
  const { leadLength, leadSection, jointResistance, dampResistance } = wiring;
  const series = leadResistance(leadLength, LEAD_SECTIONS[leadSection]) + jointResistance;
  const leak = dampResistance > 0 ? 1 / dampResistance : 0; // of the damp path, 1/ohm

  return {
    reading(bead) {
      const ohms = element.resistance(bead);
      if (ohms === null) throw new Error(`the element has no ohms at ${bead} °C; expected some`);
      return expected.temperature(1 / (1 / (ohms + series) + leak));
    },
    beadAt(reading) {
      const seen = reading > -ZERO_CELSIUS ? expected.resistance(reading) : null;
      if (seen === null) return null;
      const ohms = 1 / (1 / seen - leak) - series;
      // no element makes more ohms than the damp path has, or fewer than lead and joint
      return ohms > 0 && Number.isFinite(ohms) ? withinSpan(element.temperature(ohms)) : null;
    },
  };
}

/** Ohms and °C of an element, either way. */
interface Curve {
  readonly resistance: (temperature: Celsius) => Ohms | null;
  readonly temperature: (resistance: Ohms) => Celsius;
}

const thermistor = (r25: Ohms, beta: number): Curve => ({
  resistance: (temperature) => thermistorResistance(temperature, r25, beta),
  temperature: (resistance) => thermistorTemperature(resistance, r25, beta),
});

const platinum = (r0: Ohms): Curve => ({
  resistance: (temperature) =>
    temperature <= PLATINUM_TURN ? platinumResistance(temperature, r0) : null,
  temperature: (resistance) => platinumTemperature(resistance, r0),
});

function elementCurve(wiring: SensorWiring): Curve {
  if (wiring.element === 'platinum') return platinum(wiring.platinumOhms);
  if (wiring.element === 'thermistor') return thermistor(wiring.r25, wiring.beta);
  const curve = { A: wiring.steinhartA, B: wiring.steinhartB, C: wiring.steinhartC };
  return {
    resistance: (temperature) => steinhartHartResistance(temperature, curve),
    temperature: (resistance) => steinhartHartTemperature(resistance, curve),
  };
}

/** What the controller takes the element for; null for what it is. */
function expectedCurve(wiring: SensorWiring): Curve | null {
  if (wiring.expects === 'thermistor') return thermistor(wiring.expectedR25, wiring.expectedBeta);
  return wiring.expects === 'platinum' ? platinum(wiring.platinumOhms) : null;
}

function withinSpan(bead: Celsius): Celsius | null {
  return bead >= COLDEST - ROUNDING && bead <= HOTTEST + ROUNDING ? bead : null;
}

const COLDEST = -20; // °C
const HOTTEST = 120; // °C
const ROUNDING = 1e-9; // K, so that the reading at either end leads back to it
