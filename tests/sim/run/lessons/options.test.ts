import { expect, test, vi } from 'vitest';
import type { Setting } from '../../../../shared/causes.ts';
import { lessonNamed, lessons, moveVariants } from '../../../../shared/lessons.ts';
import { withSettings } from '../../../../shared/presets.ts';
import { simulateToEnd } from '../../../../sim/run/simulate.ts';
import { played } from '../../../make/lessonMoves.ts';

// runs of up to three days, several to a test, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

type Other = readonly [
  lesson: string,
  move: string,
  option: string,
  after: readonly Setting[],
  before?: readonly Setting[],
];

// For every option that does not come true: other settings, over those before the move, that make it true. What is found
// follows from the numbers of the runs, whichever they are.
const never: readonly Setting[] = [
  ['programme.hotWater', 'timed'],
  ['programme.hotWaterFor', 0],
  ['programme.hotWaterAgainFor', 0],
];
const hot: readonly Setting[] = [
  ['start.hotShare', 100],
  ['run.duration', 12],
];
const lossy: readonly Setting[] = [...never, ['cylinder.standingLoss', 15], ['run.duration', 72]];
const small: readonly Setting[] = [
  ['cylinder.volume', 30],
  ['cylinder.standingLoss', 15],
];
const clean: Setting = ['coil.scaleThickness', 0];
const ideal: readonly Setting[] = [
  ['boiler.model', 'ideal'],
  ['coil.given', 'conductance'],
  ['coil.conductance', 5000],
];
const foam = (thickness: number): readonly Setting[] => [
  ['cylinder.insulationThickness', thickness],
];
const others: readonly Other[] = [
  ['layers', 'left-alone', 'mixed', hot], // warm all through from the start
  ['layers', 'left-alone', 'lost', lossy],
  [
    'layers',
    'heated-below',
    'hotter',
    [
      ['start.hotShare', 0],
      ['stat.sensorHeight', 0.44],
    ],
  ],
  ['layers', 'heated-below', 'cooler', small], // with its sensor in the hot half, so not heated
  ['layers', 'coil-higher', 'soonerSame', [['boiler.output', 35]]],
  ['layers', 'coil-higher', 'later', [['boiler.output', 12]]],
  // while the boiler sets the pace, output is all
  [
    'coil',
    'larger-boiler',
    'inProportion',
    [clean, ['boiler.output', 12]],
    [clean, ['boiler.output', 9]],
  ],
  ['coil', 'larger-boiler', 'none', []],
  ['coil', 'cooler-flow', 'none', []],
  ['coil', 'cooler-flow', 'tenth', [['boiler.hotWaterFlow', 78]]],
  ['coil', 'clean-coil', 'hardly', [['coil.scaleThickness', 0.9]]],
  ['coil', 'clean-coil', 'full', ideal],
  ['sensor', 'higher-from-cold', 'sooner', [['boiler.output', 35]]],
  ['sensor', 'higher-from-cold', 'later', [['boiler.output', 12]]],
  ['sensor', 'higher-in-a-draw', 'soonerMore', [['stat.sensorHeight', 0.2]]],
  ['sensor', 'higher-in-a-draw', 'same', []],
  ['sensor', 'below-the-coil', 'asSet', []],
  ['sensor', 'below-the-coil', 'cooler', [['run.duration', 0.25]]],
  ['differential', 'half-of-it', 'same', []],
  ['differential', 'half-of-it', 'twice', [['stat.differential', 12]]],
  ['differential', 'in-a-draw', 'twice', [['stat.sensorHeight', 0.6]]],
  ['differential', 'in-a-draw', 'never', [['stat.sensorHeight', 1.2]]],
  ['differential', 'cooled-first', 'same', []],
  ['differential', 'cooled-first', 'more', [], [['stat.differential', 20]]],
  ['who-goes-first', 'both-at-once', 'sameWarmer', [['house.heatLoss', 100]]],
  ['who-goes-first', 'both-at-once', 'laterSame', [['coil.scaleThickness', 1]]],
  ['who-goes-first', 'both-at-once', 'neither', []],
  ['who-goes-first', 'slow-coil', 'same', []],
  ['who-goes-first', 'slow-coil', 'warmer', [['house.heatLoss', 100]]],
  ['who-goes-first', 'rooms-first', 'same', []],
  ['who-goes-first', 'rooms-first', 'later', [['heating.arrangement', 'simultaneous']]],
  ['standing-loss', 'colder-place', 'none', []],
  ['standing-loss', 'colder-place', 'quarter', [['cylinder.surroundings', 10]]],
  ['standing-loss', 'twice-the-foam', 'half', foam(100), foam(10)],
  ['standing-loss', 'twice-the-foam', 'hardly', foam(55)],
  ['standing-loss', 'one-hour-a-day', 'more', [['cylinder.standingLoss', 4]]],
  ['standing-loss', 'one-hour-a-day', 'half', [['cylinder.standingLoss', 1.5]]],
];

test.each(
  others.map(
    ([key, name, option, after, before = []]) => [key, name, option, after, before] as const,
  ),
)('%s, %s: other settings make "%s" come true', (key, name, option, after, before) => {
  const lesson = lessonNamed(key);
  const move = lesson?.moves.find((one) => one.key === name);
  if (!lesson || !move) throw new Error(`no ${name} in ${key}`);
  const base = moveVariants(lesson, move).before;
  const [one, other] = [before, after].map((sets) => simulateToEnd(withSettings(base, sets)));
  expect(move.answer(one, other).option).toBe(option);
});

test('with the 18 options that come true, all 55 options of all moves are tried', () => {
  const tried = lessons.flatMap((lesson) =>
    lesson.moves.flatMap((move) => [
      `${move.key} ${played(lesson.key, move.key).answer.option}`,
      ...others.flatMap(([, name, option]) => (name === move.key ? [`${name} ${option}`] : [])),
    ]),
  );
  const all = lessons.flatMap(({ moves }) =>
    moves.flatMap(({ key, options }) => options.map((option) => `${key} ${option.key}`)),
  );
  expect(all).toHaveLength(55);
  expect([...tried].sort()).toEqual([...all].sort());
});
