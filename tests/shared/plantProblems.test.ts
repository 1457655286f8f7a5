import { describe, expect, test } from 'vitest';
import type { Setting } from '../../shared/causes.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { withSettings } from '../../shared/presets.ts';
import { problemsOf } from '../../shared/problems.ts';

// what was set, then the setting and the beginning of the sentence
const refused: readonly (readonly [
  name: string,
  sets: readonly Setting[],
  path: string,
  says: string,
])[] = [
  [
    'a minimum output of 30 kW on a boiler of 24 kW',
    [['boiler.minimumOutput', 30]],
    'boiler.minimumOutput',
    'Least boiler output must be at most 24 kW, the boiler output; it is 30 kW.',
  ],
  [
    'a hot-water flow of 90 °C under a safety limit of 94 °C',
    [
      ['boiler.hotWaterFlow', 90],
      ['boiler.highLimit', 94],
    ],
    'boiler.hotWaterFlow',
    'Flow target for hot water must be below 89.0 °C',
  ],
  [
    'a heating flow of 85 °C under a safety limit of 88 °C',
    [
      ['boiler.heatingFlow', 85],
      ['boiler.hotWaterFlow', 75],
      ['boiler.highLimit', 88],
    ],
    'boiler.heatingFlow',
    'Flow target for heating must be below 83.0 °C',
  ],
  [
    'a network of zero length through a coil and valve without resistance',
    [
      ['coil.given', 'conductance'],
      ['primary.length', 0],
      ['primary.bends', 0],
      ['primary.valveDrop', 0],
    ],
    'primary.length',
    'Primary run, one way is 0 m, there are no bends',
  ],
  [
    'hot-water times of 0 min: all valves to the coil shut',
    [
      ['programme.hotWater', 'timed'],
      ['programme.hotWaterFor', 0],
      ['programme.hotWaterAgainFor', 0],
    ],
    'programme.hotWaterFor',
    'Hot water for and hot water again for are both 0 min',
  ],
  [
    'Steinhart–Hart coefficients with B of the wrong sign',
    [
      ['sensor.element', 'steinhartHart'],
      ['sensor.steinhartB', -0.234125],
    ],
    'sensor.steinhartB',
    'Coefficient A, B and C give no thermistor',
  ],
  [
    'a lowest flow of 50 °C above a heating target of 45 °C',
    [
      ['heating.control', 'loadCompensation'],
      ['heating.lowestFlow', 50],
      ['boiler.heatingFlow', 45],
    ],
    'heating.lowestFlow',
    'Lowest heating flow must be at most 45 °C',
  ],
  [
    'weather compensation from 8 °C outside to rooms at 10 °C',
    [
      ['heating.control', 'weatherCompensation'],
      ['heating.designOutside', 8],
      ['heating.roomSetPoint', 10],
    ],
    'heating.designOutside',
    'Design outside temperature must be at least 5 K below the room set-point',
  ],
];

/** Whether more ohms mean colder all the way from 120 to −20 °C: 400 steps from 1 Ω to 100 MΩ. */
function fallsAllTheWay(A: number, B: number, C: number): boolean {
  const most = Math.log(1e8);
  let isPastHot = false;
  let before = Number.NaN;
  for (let L = 0; L <= most; L += most / 400) {
    const inverse = A + L * (B + C * L * L);
    const rises = !(inverse <= before);
    if (!rises) isPastHot = false;
    if (inverse <= 1 / 393.15) isPastHot = true;
    if (isPastHot && rises && inverse >= 1 / 253.15) return true;
    before = inverse;
  }
  return false;
}

describe('settings that do not fit each other', () => {
  test.each(refused)('%s is 1 problem, at its field', (_name, sets, path, says) => {
    const found = problemsOf(withSettings(defaultVariant('refused'), sets));
    expect(found.map((problem) => problem.path)).toEqual([path]);
    expect(found[0].message.replaceAll('\u00a0', ' ')).toContain(says);
  });

  test('the same settings have 0 problems where they have no say: an ideal boiler, a given flow, a stat alone', () => {
    const ideal: Setting[] = [
      ['boiler.model', 'ideal'],
      ['primary.flowFrom', 'given'],
      ['boiler.minimumOutput', 30],
      ['boiler.highLimit', 60],
      ['coil.given', 'conductance'],
      ['primary.length', 0],
      ['primary.bends', 0],
      ['primary.valveDrop', 0],
      ['programme.hotWaterFor', 0],
      ['programme.hotWaterAgainFor', 0],
      ['sensor.steinhartB', -0.234125],
      ['heating.lowestFlow', 60],
      ['heating.designOutside', 10],
    ];
    expect(problemsOf(withSettings(defaultVariant('fine'), ideal))).toEqual([]);
  });

  test('of 2000 Steinhart–Hart coefficients the same are refused as a walk along their ohms refuses', () => {
    let refusals = 0;
    for (let i = 0; i < 2000; i++) {
      // spread over signs and sizes, the usual ones among them
      const part = (step: number) => ((i * step) % 2000) / 2000;
      const A = -1 + 3 * part(7);
      const B = -0.2 + 0.8 * part(11);
      const C = -3 + 8 * part(13);
      const sets: Setting[] = [
        ['sensor.element', 'steinhartHart'],
        ['sensor.steinhartA', A],
        ['sensor.steinhartB', B],
        ['sensor.steinhartC', C],
      ];
      const isRefused = problemsOf(withSettings(defaultVariant('any'), sets)).length > 0;
      expect([A, B, C, isRefused]).toEqual([
        A,
        B,
        C,
        !fallsAllTheWay(A * 1e-3, B * 1e-3, C * 1e-7),
      ]);
      if (isRefused) refusals++;
    }
    expect(refusals).toBeGreaterThan(100);
    expect(refusals).toBeLessThan(1900);
  });
});
