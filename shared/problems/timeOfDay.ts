import { plainText } from '../format.ts';
import type { Seconds } from '../units.ts';
import { type AskedNumber, clipped, type NumberText, readNumberText } from './numberText.ts';

/**
 * Reads a time of day as people type it: `7:30`, `07:30:15`, or hours, `7.5`, `7,25 h`. Limits are not looked at.
 * @param text       what was typed
 * @param isInHours  the unit is said elsewhere, so that 7.30 can only be hours
 * @returns s after midnight
 */
export function readTimeOfDay(text: string, asked: AskedNumber, isInHours: boolean): NumberText {
  const tidy = text.trim();
  const clock = /^(\d{1,2}):([0-5]\d)(?::([0-5]\d))?$/.exec(tidy);
  if (clock) {
    const [hours, minutes, seconds] = clock.slice(1).map((part) => Number(part ?? 0));
    return { value: 3600 * hours + 60 * minutes + seconds };
  }
  const twoWays = /^(\d{1,2})[.,]([0-5]\d)$/.exec(tidy);
  if (twoWays && !isInHours) {
    const [, hours, minutes] = twoWays;
    const message = `${asked.label} can be read two ways in “${tidy}”: write ${hours}:${minutes} or ${plainText(Number(`${hours}.${minutes}`), 'hour')}.`;
    return { code: 'comma', message };
  }
  const read = readNumberText(text, asked);
  if ('value' in read) return { value: wholeMilliseconds(read.value) };
  if (read.code !== 'number' && !tidy.includes(':')) return read;
  const got = tidy === '' ? '' : `; “${clipped(tidy)}” is not one`;
  return { code: 'number', message: `${asked.label} needs a time of day, such as 07:30${got}.` };
}

/** A time to the millisecond, so that a third of an hour comes back from a file as it went. */
export function wholeMilliseconds(time: Seconds): Seconds {
  return Math.round(time * 1000) / 1000;
}
