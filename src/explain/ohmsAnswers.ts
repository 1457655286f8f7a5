import { type OhmsKey, type OhmsRead, readOhms } from '../../shared/ohmsAsked.ts';
import { degreesSentence, ohmsSentence, withinWords } from '../../shared/sentences/ohms.ts';
import { degreesBand, type Element, ohmsBand } from '../../sim/closures/ohmsBand.ts';

/** What the element is: a thermistor, or platinum by its ohms at 0 °C. */
export type ElementChoice = 'thermistor' | 'platinum1000' | 'platinum100';

/** What stands in the boxes, as it was typed. */
export type OhmsTyped = Readonly<Record<OhmsKey, string>>;

/** Both ways, one sentence each; null while something it needs is missing or wrong. */
export interface OhmsAnswers {
  readonly problems: OhmsRead['problems'];
  readonly toDegrees: string | null;
  readonly toOhms: string | null;
}

/** Ohms as degrees and degrees as ohms, from what was typed; an empty box asks nothing. */
export function ohmsAnswers(choice: ElementChoice, typed: OhmsTyped): OhmsAnswers {
  const asked = {
    ohms: typed.ohms.trim() === '' ? null : typed.ohms,
    degrees: typed.degrees.trim() === '' ? null : typed.degrees,
  };
  const isThermistor = choice === 'thermistor';
  const { values, problems } = readOhms(isThermistor ? { ...typed, ...asked } : asked);
  const element = elementOf(choice, values);
  if (element === null) return { problems, toDegrees: null, toOhms: null };
  const { ohms, degrees } = values;
  const within = withinWords(element.kind === 'thermistor' ? element.r25Tolerance : null);
  return {
    problems,
    toDegrees:
      ohms === undefined ? null : degreesSentence(ohms, degreesBand(element, ohms), within),
    toOhms:
      degrees === undefined ? null : ohmsSentence(degrees, ohmsBand(element, degrees), within),
  };
}

function elementOf(choice: ElementChoice, values: OhmsRead['values']): Element | null {
  if (choice !== 'thermistor') {
    return { kind: 'platinum', r0: choice === 'platinum1000' ? 1000 : 100 };
  }
  const { r25, beta, tolerance } = values;
  if (r25 === undefined || beta === undefined || tolerance === undefined) return null;
  return { kind: 'thermistor', r25, beta, r25Tolerance: tolerance, betaTolerance: tolerance };
}
