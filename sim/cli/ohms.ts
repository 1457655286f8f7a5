import { plainText } from '../../shared/format.ts';
import { ohmsAsked, type OhmsKey, readOhms } from '../../shared/ohmsAsked.ts';
import {
  degreesSentence,
  measuringHint,
  ohmsSentence,
  wiringCaution,
  withinWords,
} from '../../shared/sentences/ohms.ts';
import { fromSI } from '../../shared/units.ts';
import { degreesBand, type Element, ohmsBand } from '../closures/ohmsBand.ts';
import { paragraph } from './layout.ts';

/** What was typed after each option; null for one that was not given. */
export type OhmsTyped = Readonly<Record<OhmsKey, string | null>>;

/** Ohms of a thermistor as degrees, degrees as ohms, or what is wrong with the options. */
export function ohmsReport(
  typed: OhmsTyped,
): { readonly out: string } | { readonly problems: readonly string[] } {
  const { values, problems } = readOhms(typed);
  const wrong = Object.entries(problems).map(([key, problem]) => `--${key}: ${problem}`);
  if (wrong.length > 0) return { problems: wrong };
  const {
    r25 = ohmsAsked.r25.default,
    beta = ohmsAsked.beta.default,
    tolerance = ohmsAsked.tolerance.default / 100,
    ohms,
    degrees,
  } = values;
  const element: Element = {
    kind: 'thermistor',
    r25,
    beta,
    r25Tolerance: tolerance,
    betaTolerance: tolerance,
  };
  const within = withinWords(tolerance);
  const lines = [
    ohms === undefined ? null : degreesSentence(ohms, degreesBand(element, ohms), within),
    degrees === undefined ? null : ohmsSentence(degrees, ohmsBand(element, degrees), within),
  ].filter((line) => line !== null);
  const sections = [
    `Thermistor of ${plainText(fromSI(r25, 'ohm'), 'ohm')} at 25\u00a0°C, beta ${plainText(beta, 'kelvin')}`,
    lines.map((line) => paragraph(line, '  ')).join('\n'),
    `Cautions\n${[wiringCaution(), measuringHint].map((text) => paragraph(text, '  - ')).join('\n')}`,
  ];
  return { out: `${sections.join('\n\n')}\n` };
}
