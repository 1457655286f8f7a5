import type { PatternDraw } from '../../shared/drawPattern.ts';
import { plainVariant } from '../make/plainVariant.ts';
import { defaultVariant } from '../../shared/fields.ts';
import type { Result } from '../../shared/result.ts';
import type { Variant } from '../../shared/variant.ts';
import { dayPattern } from '../../shared/drawPattern.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { handStepped } from './handStepped.ts';

// What a run costs. Prints medians; asserts nothing, for a timing is a fact about one machine.

// an ideal boiler and a given flow: coil, cylinder and output limit only
const cold = plainVariant('ideal boiler');
const hour = 3600;

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
  for (let i = 0; i < 20; i++) run = simulateToEnd(variant, options);
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

console.log(`\nReheat: median of 61 runs${' '.repeat(21)}      time    calls`);
const bars = { cold: 'bar 4 ms', thermocline: 'bar 10 ms' };
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
row('whole plant, 2 h, 48 layers', plant.ms, plant.run.cost.derivativeCalls, 'bar 10 ms');
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
