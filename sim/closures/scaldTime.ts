import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, mi, mo, paren, row, sub } from '../../shared/mathml.ts';
import { exponential, logarithm } from '../../shared/portableMaths.ts';
import type { Celsius, Seconds } from '../../shared/units.ts';
import { logLinear, type Point } from './logLinear.ts';

/**
 * Times in which water at a temperature burns adult skin: from the sooner of the tabled partial
 * burn and the fitted curve to the later of the tabled full-thickness burn and the curve. Infinite
 * below 44 °C, where no time is printed; that does not make it harmless. Held above 71 °C.
 */
export function scaldTimeBand(temperature: Celsius): {
  readonly shortest: Seconds;
  readonly longest: Seconds;
} {
  if (temperature < LEAST) {
    return { shortest: Number.POSITIVE_INFINITY, longest: Number.POSITIVE_INFINITY };
  }
  const fit = fittedScaldTime(temperature);
  // Where the pieces of the curve meet it jumps up: the shorter edge may not follow, and the longer
  // one takes the top of the jump beforehand, so that hotter water never takes longer
  const before = Math.min(fit, ...JOINTS.filter((j) => j.at <= temperature).map((j) => j.before));
  const ahead = Math.max(fit, ...JOINTS.filter((j) => j.at > temperature).map((j) => j.after));
  return {
    shortest: Math.min(logLinear(PARTIAL, temperature), before),
    longest: Math.max(logLinear(FULL, temperature), ahead),
  };
}

/**
 * The curve fitted to the burns of adults, full thickness, s. 44 to 71 °C; its last piece is least at
 * 69.9 °C and is held from there.
 */
export function fittedScaldTime(temperature: Celsius): Seconds {
  // source: scaldTimes, the curve
  if (temperature < JOINT_1) return coolest(temperature);
  if (temperature < JOINT_2) return 2675 - 50 * temperature;
  if (temperature < JOINT_3) return warm(temperature);
  return hottest(Math.min(temperature, 7.437 / (2 * 0.05322)));
}

function coolest(temperature: Celsius): Seconds {
  const log = logarithm(temperature);
  return exponential(34.58 * log * log - 294.8 * log + 629.2);
}

function warm(temperature: Celsius): Seconds {
  return 1.441 * temperature * temperature - 168.2 * temperature + 4917;
}

function hottest(temperature: Celsius): Seconds {
  return 0.05322 * temperature * temperature - 7.437 * temperature + 262.4;
}

const LEAST = 44; // °C; source: scaldTimes, lowest temperature of the curve
const JOINT_1 = 51.3; // °C; source: scaldTimes, as the next two
const JOINT_2 = 52.1;
const JOINT_3 = 58.3;

/** Where two pieces meet and the second starts higher, s. */
const JOINTS = [
  { at: JOINT_1, before: coolest(JOINT_1), after: 2675 - 50 * JOINT_1 },
  { at: JOINT_3, before: warm(JOINT_3), after: hottest(JOINT_3) },
] as const;

// source: scaldTable, from memory; taken for both depths, as no shorter time is known
const ABOVE_60: readonly Point[] = [
  [64.4, 2],
  [68.3, 1],
  [71.1, 0.5],
];

/** Tabled times for a burn through the whole skin. source: scaldTimes, the table */
export const FULL: readonly Point[] = [
  [44, 6 * 3600], // source: scaldTimes, from memory
  [45, 3 * 3600],
  [47, 45 * 60],
  [48, 20 * 60],
  [49, 10 * 60],
  [51, 4.2 * 60],
  [55, 30],
  [60, 5],
  ...ABOVE_60,
];

/** Tabled times for a burn through a part of the skin. source: scaldTimes, the table */
export const PARTIAL: readonly Point[] = [
  [45, 2 * 3600],
  [47, 20 * 60],
  [48, 15 * 60],
  [49, 8 * 60],
  [51, 2 * 60],
  [55, 17],
  [60, 3],
  ...ABOVE_60,
];

const edge = (
  which: 'shortest' | 'longest',
): Omit<ClosureRecord, 'key' | 'title' | 'formula' | 'where' | 'example'> => ({
  result: { key: 'result', symbol: mi('t'), name: `${which} time to a burn`, unit: 's' },
  terms: [{ key: 'temperature', symbol: mi('T'), name: 'water on the skin', unit: '°C' }],
  sentence:
    'Caution: these are times of adult skin, as a band; children, old people and thin or numb skin burn sooner, and nobody should be in such water for any part of them.',
  source: 'scaldTimes',
  range:
    '44 to 71 °C, adults; table and curve of the same tests differ by two times and more below 52 °C. Above 60 °C the table is from memory: reckon with a burn at once',
  outside:
    'below 44 °C infinite, as no time is printed: long contact may still harm; above 71 °C held, where it is shorter still',
  changes:
    'The temperature at the outlet: a thermostatic mixing valve lowers it while the store stays hot enough against Legionella.',
  compute: ({ temperature }) => scaldTimeBand(temperature)[which],
});

const of = (index: string): string => row(sub('t', index), paren('{temperature}'));

export const shortestScaldRecord: ClosureRecord = {
  ...edge('shortest'),
  key: 'shortestScald',
  title: 'Shortest published time in which hot water burns',
  formula: equals('{result}', mi('min'), paren(of('partial'), mo(','), of('curve'))),
  where:
    'the sooner of the tabled burn through a part of the skin (straight on a logarithmic scale between its temperatures) and the curve, which below 51.3 °C is ln t = 34.58 (ln T)² − 294.8 ln T + 629.2',
  example: {
    given: { temperature: 49 },
    gives: 284,
    digits: 0,
    note: 'The curve at 49 °C by hand: 284 s; the table has 8 min.',
  },
};

export const longestScaldRecord: ClosureRecord = {
  ...edge('longest'),
  key: 'longestScald',
  title: 'Longest published time in which hot water burns',
  formula: equals('{result}', mi('max'), paren(of('full'), mo(','), of('curve'))),
  where:
    'the later of the tabled burn through the whole skin (straight on a logarithmic scale between its temperatures) and the curve, which above 58.3 °C is t = 0.05322 T² − 7.437 T + 262.4',
  example: {
    given: { temperature: 60 },
    gives: 7.772,
    digits: 3,
    note: 'The curve at 60 °C by hand: 191.592 − 446.22 + 262.4; the table has 5 s.',
  },
};
