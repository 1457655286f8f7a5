import { type Cause, causes } from './causes.ts';
import { defaultVariant } from './fields.ts';
import { type Preset, withSettings, workedExample } from './preset.ts';
import type { Variant } from './variant.ts';

export { type Preset, presetVariant, withSettings } from './preset.ts';

/** Installations to start from, after the worked example. */
const houses: readonly Omit<Preset, 'group'>[] = [
  {
    key: 'healthy-house',
    title: 'Healthy house',
    description: 'Invented: 210 l, 24 kW, a clean coil; every setting at its default.',
    sets: [],
  },
  {
    key: 'small-vented',
    title: 'Small vented cylinder, old coil',
    description: 'Invented: 117 l copper under a loose jacket, half a square metre of coil, 15 kW.',
    sets: [
      ['boiler.output', 15],
      ['boiler.hotWaterFlow', 75],
      ['primary.flowFrom', 'given'],
      ['primary.flow', 10],
      ['primary.lagging', 0],
      ['coil.given', 'area'],
      ['coil.area', 0.5],
      ['coil.bottom', 0.06],
      ['coil.top', 0.32],
      ['coil.coilDiameter', 0.3],
      ['coil.scaleThickness', 0.5],
      ['cylinder.supply', 'vented'],
      ['cylinder.volume', 117],
      ['cylinder.height', 0.9],
      ['cylinder.wallMaterial', 'copper'],
      ['cylinder.wallThickness', 0.7],
      ['cylinder.standingLoss', 3.5],
      ['stat.sensorHeight', 0.3],
      ['stat.lag', 120],
      ['house.heatLoss', 220],
    ],
  },
  {
    key: 'rapid-coil',
    title: 'Modern unvented, rapid coil',
    description: 'Invented: 200 l stainless, a coil declared at 32 kW, 30 kW boiler.',
    sets: [
      ['boiler.output', 30],
      ['primary.flowFrom', 'given'],
      ['primary.flow', 20],
      ['coil.given', 'rating'],
      ['coil.ratedOutput', 32],
      ['coil.tubeOutside', 25],
      ['coil.tubeMaterial', 'stainless'],
      ['coil.top', 0.6],
      ['cylinder.volume', 200],
      ['cylinder.standingLoss', 1.4],
      ['stat.lag', 30],
    ],
  },
  {
    key: 'large-family',
    title: 'Large family cylinder',
    description: 'Invented: 300 l, 18 m of 28 mm coil, 30 kW, the sensor a third of the way up.',
    sets: [
      ['boiler.output', 30],
      ['primary.size', '28'],
      ['coil.length', 18],
      ['coil.tubeOutside', 28],
      ['coil.tubeWall', 0.9],
      ['coil.top', 0.64],
      ['cylinder.volume', 300],
      ['cylinder.height', 1.7],
      ['cylinder.standingLoss', 2.2],
      ['stat.sensorHeight', 0.56],
      ['heating.radiatorOutput', 18],
      ['house.heatLoss', 350],
      ['house.floorArea', 150],
    ],
  },
  {
    key: 'far-away',
    title: 'Far-away cylinder',
    description: 'Invented: 25 m of poorly lagged 15 mm primary each way, with twenty bends.',
    sets: [
      ['primary.size', '15'],
      ['primary.length', 25],
      ['primary.bends', 20],
      ['primary.lagging', 3],
      ['cylinder.surroundings', 15],
      ['run.duration', 3],
    ],
  },
  {
    key: 'low-temperature',
    title: 'Low-temperature boiler',
    description:
      'Invented: flow held at 55 °C and the stat at 50 °C; read the caution on Legionella.',
    sets: [
      ['boiler.output', 18],
      ['boiler.hotWaterFlow', 55],
      ['boiler.heatingFlow', 45],
      ['primary.size', '28'],
      ['coil.length', 20],
      ['coil.tubeOutside', 28],
      ['coil.tubeWall', 0.9],
      ['coil.top', 0.7],
      ['stat.setPoint', 50],
      ['stat.differential', 5],
      ['run.duration', 3],
    ],
  },
  {
    key: 'both-at-once',
    title: 'Small boiler, both at once',
    description: 'Invented: 15 kW shared with the radiators on a cold day through two zone valves.',
    sets: [
      ['boiler.output', 15],
      ['boiler.hotWaterFlow', 75],
      ['heating.arrangement', 'simultaneous'],
      ['heating.radiatorOutput', 14],
      ['house.heatLoss', 300],
      ['house.outside', -2],
      ['run.duration', 4],
    ],
  },
  {
    key: 'partly-used',
    title: 'After the morning showers',
    description: 'Invented: the top 40 % of the store is still hot when the reheat starts.',
    sets: [['start.hotShare', 40]],
  },
];

/** Everything to start from: the worked example, installations, then causes. */
export const presets: readonly Preset[] = [
  workedExample,
  ...houses.map((house) => ({ ...house, group: 'house' as const })),
  ...causes.map(asPreset),
];

function asPreset({ key, title, description, reason, day, wrong }: Cause): Preset {
  return { key, title, description, reason, group: 'cause', sets: [...day, ...wrong] };
}

/** The preset of a name, if there is one. */
export function presetNamed(key: string): Preset | undefined {
  return presets.find((preset) => preset.key === key);
}

/** The healthy house on the day of a cause: the same but for what is wrong. */
export function healthyVariant({ day }: Cause): Variant {
  return withSettings(defaultVariant('Healthy house'), day);
}
