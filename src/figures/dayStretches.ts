import type { DayRun } from '../../shared/day.ts';
import type { Mark } from '../../shared/result.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Stretch } from '../charts/LimitStrip.svelte';
import { burnerStretches, immersionStretches } from './plantStretches.ts';
import { shortMinutes } from './shortMinutes.ts';

/** A strip of a day and its name. */
export interface DayStrip {
  readonly name: string;
  readonly stretches: readonly Stretch[];
}

/** The strips of a day: calls for hot water, the burner, and the immersion heater where there is one. */
export function dayStrips(day: DayRun): DayStrip[] {
  return [
    { name: 'calls', stretches: callStretches(day) },
    { name: 'burner', stretches: burnerStretches(day) },
    ...(day.variant.immersion.used === 'no'
      ? []
      : [{ name: 'heater', stretches: immersionStretches(day) }]),
  ];
}

const turns: Partial<Record<Mark['kind'], boolean>> = {
  hotWaterCalled: true,
  statSatisfied: false,
  faultShown: false,
};

/** When the stat calls for hot water, without gaps. */
export function callStretches({ marks, outcome }: DayRun): Stretch[] {
  const stretches: Stretch[] = [];
  let [from, calls] = [0, false];
  const close = (to: Seconds) => {
    if (to > from) {
      stretches.push({
        pattern: calls ? 'called' : 'off',
        words: calls ? ['hot water called', 'called'] : [],
        minutes: calls ? shortMinutes({ from, to }) : '',
        from,
        to,
      });
    }
    from = to;
  };
  for (const { at, kind } of marks) {
    const turned = turns[kind];
    if (turned === undefined || turned === calls) continue;
    close(at);
    calls = turned;
  }
  close(outcome.at);
  // the same words over and over would only be noise
  const quiet = stretches.filter(({ pattern }) => pattern === 'off');
  const longest = Math.max(...quiet.map(({ from: start, to }) => to - start));
  const named = quiet.find(({ from: start, to }) => to - start === longest);
  return stretches.map((stretch) =>
    stretch === named ? { ...stretch, words: ['no call'] } : stretch,
  );
}

/**
 * Stretches as they can be drawn: two and more in a row that are each too narrow become one in which they come by turns.
 * @param least  of what can be told apart, s
 */
export function drawnStretches(stretches: readonly Stretch[], least: Seconds): Stretch[] {
  const drawn: Stretch[] = [];
  let narrow: Stretch[] = [];
  const close = () => {
    if (narrow.length > 1) {
      drawn.push({
        pattern: 'cycling',
        words: ['on and off'],
        minutes: '',
        from: narrow[0].from,
        to: narrow[narrow.length - 1].to,
      });
    } else drawn.push(...narrow);
    narrow = [];
  };
  for (const stretch of stretches) {
    if (stretch.to - stretch.from < least) narrow.push(stretch);
    else {
      close();
      drawn.push(stretch);
    }
  }
  close();
  return drawn;
}
