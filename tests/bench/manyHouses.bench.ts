import fc from 'fast-check';
import { withSetting } from '../../shared/variant.ts';
import { minutesByCause } from '../../sim/run/minutes.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { anyHouse } from '../make/anyHouse.ts';

// Shares the minutes of 200 random houses out to the end, and prints how far the worst sum is off. Takes minutes: the tests
// hold the same for fewer (`tests/sim/run/minutesAny.test.ts`).

const houses = fc.sample(anyHouse, { numRuns: 200, seed: 21 });
const began = performance.now();
let shared = 0;
let runs = 0;
let worst = 0;
let absentWithTime = 0;
for (const house of houses) {
  const found = toEnd(minutesByCause(withSetting(house, 'run.layers', 10)));
  runs += found.runs;
  if (found.whole === null || found.ideal === null) continue;
  shared += 1;
  const sum = found.shares.reduce((all, { time }) => all + time, 0);
  worst = Math.max(worst, Math.abs(sum - (found.whole - found.ideal)) / 60);
  const absent = new Set(found.absent);
  absentWithTime += found.shares.filter(({ key, time }) => absent.has(key) && time !== 0).length;
}
const seconds = ((performance.now() - began) / 1000).toFixed(0);
console.log(
  `minutes of ${houses.length} random houses to the end: ${shared} get there and are shared out, worst sum ` +
    `${worst.toExponential(1)} min off (bar 0.01), ${absentWithTime} absent causes with minutes; ${runs} runs in ${seconds} s`,
);
