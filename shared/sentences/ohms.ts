import { cautionsOf } from '../cautions.ts';
import { defaultVariant } from '../fields.ts';
import { celsius, plainText, shown } from '../format.ts';
import { ohmsAsked } from '../ohmsAsked.ts';
import type { Celsius, Ohms, Share } from '../units.ts';

/** A value and how far the tolerance of the element lets it be, either way. */
interface Band {
  readonly low: number;
  readonly nominal: number;
  readonly high: number;
}

/** What a resistance says about the temperature. @param band  °C */
export function degreesSentence(ohms: Ohms, band: Band, within: string): string {
  const { least, most } = ohmsAsked.degrees;
  const isWithin = band.nominal > least - UNSEEN && band.nominal < most + UNSEEN;
  if (!isWithin) {
    return `${plainText(ohms, 'ohm')} is no temperature from ${plainText(least, 'celsius')} to ${plainText(most, 'celsius')} for this element; check the element and its leads.`;
  }
  return `${plainText(ohms, 'ohm')} is ${bandText(band, celsius)}${within}.`;
}

/** The resistance to expect at a temperature. @param band  ohm */
export function ohmsSentence(temperature: Celsius, band: Band, within: string): string {
  return `${plainText(temperature, 'celsius')} is ${bandText(band, ohmsText)}${within}.`;
}

/** What a band rests on, to stand behind it in a sentence; null for platinum of class B. */
export function withinWords(tolerance: Share | null): string {
  if (tolerance === null) return ' for class B of IEC 60751';
  return tolerance === 0
    ? ' if R25 and beta are exact'
    : ` with R25 and beta each within ${shown(tolerance, 'percent')}`;
}

/** The caution of every bench that speaks of wiring boxes. */
export function wiringCaution(): string {
  const caution = cautionsOf(defaultVariant(''), null).find(({ key }) => key === 'electricity');
  if (!caution) throw new Error('no caution about electricity; expected one in every bench');
  return caution.text;
}

/** How to get ohms that mean something. */
// common practice, no source: a controller left connected is measured with the sensor
export const measuringHint =
  'Measure with both wires of the sensor off the controller, which would be measured with it.';

/** Ohms as a meter shows them: whole from 2000 up, then a tenth, below 200 a hundredth. */
function ohmsText(ohms: Ohms): string {
  return shown(ohms, 'ohm', ohms >= 2000 ? 0 : ohms >= 200 ? 1 : 2);
}

function bandText({ low, nominal, high }: Band, text: (value: number) => string): string {
  return low === high ? text(nominal) : `${text(nominal)}; ${text(low)} to ${text(high)}`;
}

const UNSEEN = 0.05; // K, half of the last figure shown
