import { defaultVariant } from '../../shared/fields.ts';
import { type FieldPath, type Variant, withSetting } from '../../shared/variant.ts';
import { dayRun } from '../../sim/run/day.ts';
import { delivered } from '../../sim/run/delivery.ts';
import { toEnd } from '../../sim/run/toEnd.ts';

// Prints what a day of the load profile XL takes with the whole plant, and seven of them; and usable litres by draws.

const settings: readonly (readonly [FieldPath, number | string])[] = [
  ['day.pattern', 'XL'],
  ['day.repeat', 'stated'],
  ['heating.control', 'weatherCompensation'],
  ['house.outsideSwing', 5],
  ['primary.length', 10],
  ['draw.pipeLength', 8],
];
const plant = settings.reduce<Variant>(
  (variant, [path, value]) => withSetting(variant, path, value),
  defaultVariant('day'),
);

/** Median milliseconds of runs after warming up, and what the last one found. */
function timed<T>(work: () => T, runs: number): { ms: number; found: T } {
  let found = work();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const before = performance.now();
    found = work();
    times.push(performance.now() - before);
  }
  return { ms: times.sort((a, b) => a - b)[runs >> 1], found };
}

const days = (count: number) => () => toEnd(dayRun(withSetting(plant, 'day.days', count)));
timed(days(1), 8); // until it is compiled
const one = timed(days(1), 21);
const seven = timed(days(7), 7);
const calls = one.found.cost.derivativeCalls;
console.log(
  `\nday of profile XL, whole plant: ${one.ms.toFixed(0)} ms, ${calls} calls, bar 200 ms`,
);
console.log(
  `seven days: ${seven.ms.toFixed(0)} ms, ${(seven.ms / one.ms).toFixed(2)} times a day, bar 7.5`,
);
const steady = timed(() => toEnd(dayRun(withSetting(plant, 'day.repeat', 'untilSteady'))), 5);
console.log(
  `until a day repeats itself: ${steady.ms.toFixed(0)} ms, ${steady.found.simulatedDays} days`,
);
const litres = timed(() => toEnd(delivered(plant)), 11);
console.log(`usable litres by draws, and the first hour: ${litres.ms.toFixed(0)} ms`);
