import type { PatternDraw } from '../../shared/drawPattern.ts';
import { plainVariant } from '../make/plainVariant.ts';
import { defaultVariant } from '../../shared/fields.ts';
import type { Result } from '../../shared/result.ts';
import type { Variant } from '../../shared/variant.ts';
import { dayPattern } from '../../shared/drawPattern.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { makePlant } from '../../sim/plant/plant.ts';
import { reheatTime } from '../../sim/run/reheatTime.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { dormandPrince } from './dormandPrince.ts';
import { handStepped } from './handStepped.ts';
import { median } from './quantile.ts';
import { workerTimes } from './workerTimes.ts';

// What a run costs. Prints medians; asserts nothing, for a timing is a fact about one machine.

// an ideal boiler and a given flow; once satisfied it heats rooms, which call every twenty minutes
const cold = plainVariant('ideal boiler');
/** Coil, cylinder and output limit only. */
const coilOnly: Variant = {
  ...cold,
  heating: { ...cold.heating, arrangement: 'hotWaterOnly' },
};
const hour = 3600;
const WARMING = 100; // runs until the engine has compiled what is used most

/** Every part on: boiler as built, network, thermistor chain, compensated heating, daily wave, programme, immersion heater. */
const wholePlant: Variant = (() => {
  const base = defaultVariant('whole plant');
  return {
    ...base,
    stat: { ...base.stat, mounting: 'dryPocket' },
    sensor: { ...base.sensor, element: 'thermistor' },
    immersion: { ...base.immersion, used: 'withBoiler', height: 0.9, setPoint: 50 },
    heating: { ...base.heating, control: 'weatherCompensation' },
    house: { ...base.house, outsideSwing: 4 },
    programme: { ...base.programme, heating: 'timed' },
  };
})();

/** The default with the upper 40 % hot and a smooth boundary a third of a metre thick. */
const thermocline: Variant = {
  ...cold,
  start: { hotShare: 0.4, hotTemperature: 60, boundary: 0.33 },
};

function longer(variant: Variant, hours: number, layers = 48): Variant {
  return { ...variant, run: { ...variant.run, duration: hours * hour, layers } };
}

/** Median milliseconds of many runs after warming up, and what the last one found. */
function timed(variant: Variant, draws?: readonly PatternDraw[]): { ms: number; run: Result } {
  const options = draws ? { draws } : {};
  const times: number[] = [];
  let run = simulateToEnd(variant, options);
  for (let i = 0; i < WARMING; i++) run = simulateToEnd(variant, options);
  for (let i = 0; i < 61; i++) {
    const before = performance.now();
    run = simulateToEnd(variant, options);
    times.push(performance.now() - before);
  }
  times.sort((a, b) => a - b);
  return { ms: times[30], run };
}

function row(name: string, ms: number, calls: number | string, note = ''): void {
  console.log(
    `${name.padEnd(46)}${ms.toFixed(2).padStart(9)} ms${String(calls).padStart(9)}  ${note}`,
  );
}

console.log(`\nReheat: median of 61 runs, after ${WARMING}${' '.repeat(10)}      time    calls`);
timed(longer(coilOnly, 2)); // what all runs share is compiled first
const only = timed(longer(coilOnly, 2));
row(
  'coil, cylinder and output limit only, 2 h',
  only.ms,
  only.run.cost.derivativeCalls,
  'bar 2 ms',
);
const bars = { cold: '', thermocline: 'bar 10 ms' };
for (const [name, variant] of Object.entries({ cold, thermocline })) {
  const base = timed(longer(variant, 2));
  row(`${name}, 2 h, 48 layers`, base.ms, base.run.cost.derivativeCalls, bars[name as 'cold']);
  const layers = timed(longer(variant, 2, 96));
  const ratio = (other: number) => `${(other / base.ms).toFixed(2)} times, bar 2.3`;
  row(`${name}, 2 h, 96 layers`, layers.ms, layers.run.cost.derivativeCalls, ratio(layers.ms));
  const hours = timed(longer(variant, 4));
  row(`${name}, 4 h, 48 layers`, hours.ms, hours.run.cost.derivativeCalls, ratio(hours.ms));
}
const day = timed(longer(cold, 24), dayPattern);
row('cold, 24 h with 8 draws, 48 layers', day.ms, day.run.cost.derivativeCalls);

const plant = timed(longer(wholePlant, 2));
row('whole plant, 2 h, 48 layers', plant.ms, plant.run.cost.derivativeCalls, 'bar 5 ms');
for (const [layers, hours] of [
  [96, 2],
  [48, 4],
] as const) {
  const { ms, run } = timed(longer(wholePlant, hours, layers));
  const note = `${(ms / plant.ms).toFixed(2)} times, bar 2.3`;
  row(`whole plant, ${hours} h, ${layers} layers`, ms, run.cost.derivativeCalls, note);
}
const plantDay = timed(longer(wholePlant, 24), dayPattern);
row('whole plant, 24 h with 8 draws', plantDay.ms, plantDay.run.cost.derivativeCalls, 'bar 120 ms');
const built = timed(longer(defaultVariant('as built'), 2));
row('boiler as built, defaults, 2 h', built.ms, built.run.cost.derivativeCalls);

// The same equations by hand: classical Runge-Kutta in equal steps, mixed after each step
const exact = simulateToEnd(longer(cold, 2), { tolerance: 1e-8 }).measures.recovery ?? Number.NaN;
const ours = timed(longer(cold, 2));
const miss = Math.abs((ours.run.measures.recovery ?? Number.NaN) - exact);
console.log(
  `\nequal steps, Runge-Kutta, the same equations; recovery ours within ${miss.toFixed(3)} s`,
);
for (const step of [30, 10, 3, 1]) {
  const times: number[] = [];
  let found = handStepped(longer(cold, 2), step);
  for (let i = 0; i < 5; i++) {
    const before = performance.now();
    found = handStepped(longer(cold, 2), step);
    times.push(performance.now() - before);
  }
  times.sort((a, b) => a - b);
  const note = `${Math.abs(found.recovery - exact).toFixed(3)} s off, ${(times[2] / ours.ms).toFixed(1)} times our time`;
  row(`step ${step} s`, times[2], found.calls, note);
}

// Another general-purpose method on the same equations, pools and events, no less accurate than ours
console.log(
  '\nDormand and Prince 5(4), the same equations and events, at the loosest tolerance as accurate as ours',
);
for (const [name, variant] of Object.entries({ cold, wholePlant })) {
  const run = longer(variant, 2);
  const truth = simulateToEnd(run, { tolerance: 1e-8 }).measures.recovery ?? Number.NaN;
  const plant = makePlant(run);
  const bare = medianOf(() => toEnd(reheatTime(plant, 7200)));
  const own = toEnd(reheatTime(plant, 7200));
  const off = Math.abs((own.time ?? Number.NaN) - truth);
  row(
    `${name}, recovery time only`,
    bare,
    own.marched?.cost.derivativeCalls ?? 0,
    `${off.toExponential(1)} s off`,
  );
  const whole = timed(run);
  for (const tolerance of [1e-2, 3e-3, 1e-3, 3e-4, 1e-4, 3e-5, 1e-5, 1e-6, 1e-7]) {
    const found = dormandPrince(run, tolerance);
    const miss = Math.abs(found.recovery - truth);
    if (miss > off && tolerance > 1e-7) continue;
    const ms = medianOf(() => dormandPrince(run, tolerance));
    const calls = (found.calls / whole.run.cost.derivativeCalls).toFixed(2);
    const note = `${miss.toExponential(1)} s off; ${(ms / whole.ms).toFixed(2)} times our time with its trace, ${calls} times the calls`;
    row(`${name}, 2 h at ${tolerance} K`, ms, found.calls, note);
    break;
  }
}

const [inWorker, plantInWorker] = await workerTimes([longer(cold, 2), longer(wholePlant, 2)]);
console.log('\nIn a worker of Chromium, from the question to the whole result');
row('cold, 2 h, 48 layers', inWorker, '');
row('whole plant, 2 h, 48 layers', plantInWorker, '', 'bar 8 ms');

function medianOf(work: () => unknown): number {
  for (let i = 0; i < 10; i++) work();
  return median(
    Array.from({ length: 31 }, () => {
      const before = performance.now();
      work();
      return performance.now() - before;
    }),
  );
}
