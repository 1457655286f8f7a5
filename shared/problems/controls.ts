import { arrangementOf } from '../arrangements.ts';
import { fieldAt } from '../fields.ts';
import { settingText } from '../format.ts';
import { isSolvable } from '../steinhartHart.ts';
import type { Variant } from '../variant.ts';
import { type Problem, problemAt } from './problem.ts';

/** A programme that never allows hot water shuts every valve for good. */
export function programmeProblems({ programme }: Variant): Problem[] {
  const never =
    programme.hotWater === 'timed' &&
    programme.hotWaterFor === 0 &&
    programme.hotWaterAgainFor === 0;
  if (!never) return [];
  return [
    problemAt(
      'programme.hotWaterFor',
      'neverAllowed',
      `${fieldAt('programme.hotWaterFor').label} and ${fieldAt('programme.hotWaterAgainFor').label.toLowerCase()} are both 0 min: every valve to the coil would stay shut. Give one of them a length, or allow hot water always.`,
    ),
  ];
}

/** Whether a compensated heating flow can be computed. */
export function compensationProblems({ heating, boiler }: Variant): Problem[] {
  if (!arrangementOf(heating.arrangement).heated || heating.control === 'stat') return [];
  const found: Problem[] = [];
  if (heating.lowestFlow > boiler.heatingFlow) {
    found.push(
      problemAt(
        'heating.lowestFlow',
        'lowestAboveTarget',
        `${fieldAt('heating.lowestFlow').label} must be at most ${settingText('boiler.heatingFlow', boiler.heatingFlow)}, the flow target for heating; it is ${settingText('heating.lowestFlow', heating.lowestFlow)}.`,
      ),
    );
  }
  if (
    heating.control === 'weatherCompensation' &&
    heating.designOutside > heating.roomSetPoint - leastDesignDifference
  ) {
    found.push(
      problemAt(
        'heating.designOutside',
        'designTooWarm',
        `${fieldAt('heating.designOutside').label} must be at least ${leastDesignDifference} K below the room set-point of ${settingText('heating.roomSetPoint', heating.roomSetPoint)}; it is ${settingText('heating.designOutside', heating.designOutside)}.`,
      ),
    );
  }
  return found;
}

/** Whether three coefficients describe a thermistor: more ohms, colder, all the way from −20 to 120 °C. */
export function characteristicProblems({ sensor }: Variant): Problem[] {
  if (sensor.element !== 'steinhartHart') return [];
  const { steinhartA: A, steinhartB: B, steinhartC: C } = sensor;
  if (isSolvable({ A, B, C })) return [];
  return [
    problemAt(
      'sensor.steinhartB',
      'noSolution',
      `${fieldAt('sensor.steinhartA').label}, B and C give no thermistor whose resistance falls all the way from −20 °C to 120 °C: check their signs and powers of ten.`,
    ),
  ];
}

const leastDesignDifference = 5; // K, engineering guess, no source
