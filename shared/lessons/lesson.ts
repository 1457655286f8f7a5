import { measureText, settingText } from '../format.ts';
import { fieldAt } from '../fields.ts';
import { type Setting, settingInside } from '../preset.ts';
import { type Measures, measureRows, type Result } from '../result.ts';
import { partsOf } from '../sentences/sentence.ts';
import type { Seconds } from '../units.ts';
import { type FieldPath, settingOf, type Variant } from '../variant.ts';

/** Which run a number of a lesson is of: the one on its bench, or the two of a move. */
export type RunOf = 'now' | 'before' | 'after';

/** A piece of a lesson: words, a number that opens its working, or a setting that may be adjusted where it stands. */
export type LessonPart =
  | string
  | { readonly text: string; readonly measure: keyof Measures; readonly of: RunOf }
  | { readonly adjusts: FieldPath };

/** One or more sentences of a lesson: a paragraph. */
export interface Passage {
  readonly parts: readonly LessonPart[];
}

/** A set-up, what is to be understood on it, and questions that the model answers. All data are invented. */
export interface Lesson {
  /** Its name in the address. */
  readonly key: string;
  readonly title: string;
  /** One sentence: what is understood at the end. */
  readonly aim: string;
  /** One line: what stands on the bench; the data are invented. */
  readonly description: string;
  /** Over the defaults, each setting in its shown unit. */
  readonly setUp: readonly Setting[];
  /** About the run of the set-up, or of whatever it has been adjusted to. */
  readonly text: (result: Result) => readonly Passage[];
  readonly moves: readonly Move[];
  /** What to take along, without numbers. */
  readonly closing: string;
  /** Whether the run is also played as water in the pipes. */
  readonly isPlayed?: true;
}

/** A question to be predicted first. Both runs are one `simulate` each; no move needs a study. */
export interface Move {
  readonly key: string;
  readonly question: string;
  readonly options: readonly Option[];
  /** What stands on the bench before, over the set-up of the lesson. */
  readonly from?: readonly Setting[];
  /** What the move changes. */
  readonly sets: readonly Setting[];
  /** What the two runs show. The option is found from their numbers, never written in. */
  readonly answer: (before: Result, after: Result) => Answer;
}

export interface Option {
  readonly key: string;
  readonly text: string;
}

export interface Answer {
  /** Key of the option that came true. */
  readonly option: string;
  readonly passages: readonly Passage[];
  /** What to look at in the picture, and when. */
  readonly look: { readonly at: Seconds; readonly passage: Passage };
}

/** Makes a passage of a template. */
export function tell(strings: TemplateStringsArray, ...values: readonly LessonPart[]): Passage {
  return { parts: partsOf(strings, values) };
}

/** A setting that may be adjusted in the prose. */
export const adjustable = (path: FieldPath): LessonPart => ({ adjusts: path });

/** A measure as part of a passage; words where it was not reached. */
export function live(result: Result, measure: keyof Measures, of: RunOf = 'now'): LessonPart {
  const value = result.measures[measure];
  if (value === null || !Number.isFinite(value)) {
    return measureRows[measure].unit === 'minute'
      ? 'a time beyond this run'
      : 'a value not reached';
  }
  return { text: measureText(measure, value), measure, of };
}

/** A passage as plain text. @param variant  of which the adjustable numbers are read */
export function plainPassage({ parts }: Passage, variant: Variant): string {
  return parts
    .map((part) => {
      if (typeof part === 'string') return part;
      return 'adjusts' in part
        ? settingText(part.adjusts, settingOf(variant, part.adjusts))
        : part.text;
    })
    .join('');
}

/** Settings as they are listed: `Sensor height 0.9 m`. */
export function settingWords(settings: readonly Setting[]): string[] {
  return settings.map(
    ([path, value]) => `${fieldAt(path).label}: ${settingText(path, settingInside([path, value]))}`,
  );
}
