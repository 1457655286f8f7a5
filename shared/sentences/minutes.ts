import { delays } from '../delays.ts';
import { duration, figure, minutes, plainText, settingText } from '../format.ts';
import type { DelayKey, MinutesByCause } from '../minutes.ts';
import type { Seconds } from '../units.ts';
import type { Variant } from '../variant.ts';
import { type FigureWords, type Sentence, say } from './sentence.ts';

/** What the minutes by cause say. @param variant  that they are of */
export function minutesFinding(found: MinutesByCause, variant: Variant): FigureWords {
  const { whole, ideal } = found;
  if (found.of === 0) return withoutBoiler(variant);
  if (ideal === null) return neverEvenSo(found, variant);
  if (whole === null) return never(found, ideal);
  return { heading: heading(found, whole, ideal), summary: summary(found, ideal) };
}

function heading(found: MinutesByCause, whole: Seconds, ideal: Seconds): Sentence {
  const [most] = [...found.shares].sort((a, b) => Math.abs(b.time) - Math.abs(a.time));
  const about = isEstimate(found) ? 'about ' : '';
  if (most === undefined || Math.abs(whole - ideal) + Math.abs(most.time) < SMALL * whole) {
    return say`The boiler sets the pace: at full output all the way it takes ${minutes(ideal)} of the ${minutes(whole)}.`;
  }
  const { label, plural } = delays[most.key];
  if (most.time < 0) {
    return say`${capital(label)} ${plural ? 'take' : 'takes'} ${about}${minutes(-most.time)} off, which leaves ${minutes(whole)}.`;
  }
  return say`${capital(label)} ${plural ? 'cost' : 'costs'} ${about}${ofWhole(most.time, whole)}.`;
}

/** `12.1 of the 41.0 min`. */
function ofWhole(part: Seconds, whole: Seconds): string {
  return whole < 2 * 3600
    ? `${figure(part / 60, 1)} of the ${minutes(whole)}`
    : `${minutes(part)} of the ${duration(whole)}`;
}

function summary(found: MinutesByCause, ideal: Seconds): Sentence[] {
  const sum = found.shares.reduce((all, { time }) => all + time, 0);
  const rest =
    sum >= 0
      ? say`Full boiler output all the way would take ${minutes(ideal)}; the causes add the other ${minutes(sum)}.`
      : say`Full boiler output all the way would take ${minutes(ideal)}; together the causes take ${minutes(-sum)} off.`;
  return isEstimate(found)
    ? [rest, say`This is an estimate from ${figure(found.runs, 0)} of ${figure(found.of, 0)} runs.`]
    : [
        rest,
        say`Each has its mean over all orders in which they could be removed, from ${figure(found.runs, 0)} runs.`,
      ];
}

/** It never gets there: what would have to go. */
function never(found: MinutesByCause, ideal: Seconds): FigureWords {
  const within = duration(found.horizon);
  if (ideal === 0) {
    return {
      heading: say`The store is hot as the run starts: 0 min are needed.`,
      summary: [
        say`The stat does not call and is not satisfied anew within ${within}, so there is nothing to share out.`,
      ],
    };
  }
  return {
    heading: say`The stat is not satisfied within ${within}, where full output would take ${minutes(ideal)}.`,
    summary: [wouldHelp(found)],
  };
}

function wouldHelp({ wouldHelp: sets, scaleWithCoil }: MinutesByCause): Sentence {
  if (sets.length === 0) return say`What would help has not been found yet.`;
  const told = sets.map((set) =>
    listed(
      set.map((key) => labelOf(key, scaleWithCoil)),
      'and',
    ),
  );
  if (sets[0].length > 1)
    return say`It would be only without several at once: ${told.join('; or ')}.`;
  return sets.length === 1
    ? say`It would be without one of the causes: ${told[0]}.`
    : say`It would be without any one of these: ${listed(told, 'or')}.`;
}

function neverEvenSo({ whole, horizon }: MinutesByCause, variant: Variant): FigureWords {
  const output = settingText('boiler.output', variant.boiler.output);
  const real =
    whole === null
      ? say`The stat is not satisfied in that time either, so there are no minutes to share out.`
      : say`The stat is satisfied after ${minutes(whole)}, long before the store is hot, so there are no minutes to share out.`;
  return {
    heading: say`Even ${output} all the way do not heat this store within ${duration(horizon)}.`,
    summary: [real],
  };
}

function withoutBoiler({ immersion }: Variant): FigureWords {
  const output = settingText('immersion.output', immersion.output);
  return {
    heading: say`The immersion heater of ${output} heats this store alone.`,
    summary: [
      say`The boiler has no part in it, so there are no minutes of boiler, pipes and coil to share out.`,
    ],
  };
}

/** What one cause costs here, and what removed means. */
export function delaySentence(
  { key, time }: MinutesByCause['shares'][number],
  found: MinutesByCause,
): string {
  const { plural, removed } = delays[key];
  const withScale = found.scaleWithCoil && key === 'coil';
  const many = plural || withScale;
  const about = isEstimate(found) ? 'about ' : '';
  const costs = many ? 'cost' : 'costs';
  const name = capital(labelOf(key, found.scaleWithCoil));
  const cost =
    Math.abs(time) < WORTH
      ? `${name} ${costs} less than ${plainText(WORTH, 'second')}.`
      : time > 0
        ? `${name} ${costs} ${about}${minutes(time)}.`
        : `${name} ${many ? 'take' : 'takes'} ${about}${minutes(-time)} off.`;
  const together = withScale
    ? ' The two are removed together, so that no more than 8 are shared.'
    : '';
  return `${cost} ${removed}${together}`;
}

/** What this installation has not, and what counted otherwise; empty where there is nothing to say. */
export function delayNotes({ absent, counted, shares }: MinutesByCause): readonly string[] {
  const notes: string[] = [];
  if (shares.length > 0 && absent.length > 0) {
    const names = absent.map((key) => delays[key].label);
    notes.push(`This installation has no minutes to lose to ${listed(names, 'or')}.`);
  }
  if (counted !== null) {
    notes.push(
      `Without some of the causes the stat would take longer than ${minutes(counted)}, or never be satisfied: that counted as ${minutes(counted)}.`,
    );
  }
  return notes;
}

/** Whether runs are still to be made. */
export function isEstimate({ runs, of }: MinutesByCause): boolean {
  return runs < of;
}

/** Short word of a cause beside its bar. */
export function delayWord(key: DelayKey, scaleWithCoil: boolean): string {
  return scaleWithCoil && key === 'coil' ? 'coil, scale' : delays[key].word;
}

function labelOf(key: DelayKey, scaleWithCoil: boolean): string {
  return scaleWithCoil && key === 'coil' ? 'the coil and its scale' : delays[key].label;
}

/** `a, b and c`. */
function listed(names: readonly string[], word: 'and' | 'or'): string {
  if (names.length < 2) return names.join('');
  return `${names.slice(0, -1).join(', ')} ${word} ${names[names.length - 1]}`;
}

function capital(text: string): string {
  return `${text[0].toUpperCase()}${text.slice(1)}`;
}

const SMALL = 0.1; // of the whole: less than this and the boiler's output is the story
const WORTH = 3; // s
