import type { Setting } from './preset.ts';

export type { Setting } from './preset.ts';

/** A usual cause of slow hot water: the healthy house, on some day, with one thing wrong. */
export interface Cause {
  /** Its name on the command line. */
  readonly key: string;
  readonly title: string;
  /** One line; the data are invented. */
  readonly description: string;
  /** Why it is slow, one sentence. */
  readonly reason: string;
  /** The day on which it shows, each setting in its shown unit; the healthy house is judged on the same day. */
  readonly day: readonly Setting[];
  /** What is wrong. */
  readonly wrong: readonly Setting[];
}

/** The causes, in the order the heat travels. */
export const causes: readonly Cause[] = [
  {
    key: 'undersized-boiler',
    title: 'Undersized boiler',
    description: 'Invented: the healthy house with a boiler of 9 kW.',
    reason: 'The boiler gives all it can for nearly the whole time, and it cannot give more.',
    day: [],
    wrong: [
      ['boiler.output', 9],
      ['boiler.minimumOutput', 3],
    ],
  },
  {
    key: 'flow-too-cool',
    title: 'Flow left at the heating setting',
    description: 'Invented: one target of 65 °C serves the rooms and the cylinder.',
    reason:
      'With the flow only a little above the set-point the coil passes less and less as the store warms.',
    day: [],
    wrong: [
      ['boiler.heatingFlow', 65],
      ['boiler.targets', 'shared'],
    ],
  },
  {
    key: 'short-cycling',
    title: 'Boiler too large for the coil',
    description: 'Invented: 35 kW that cannot go below 18 kW on a small coil.',
    reason:
      'The coil takes less than the boiler’s least, so the burner goes off at its target and has to rest.',
    day: [],
    wrong: [
      ['boiler.output', 35],
      ['boiler.minimumOutput', 18],
      ['coil.length', 6],
    ],
  },
  {
    key: 'long-rests',
    title: 'Long minimum off time',
    description:
      'Invented: least output 18 kW, and fifteen minutes of rest after the burner went off.',
    reason:
      'Each time the flow reaches its target the burner rests for the whole minimum off time, however cold the store is.',
    day: [],
    wrong: [
      ['boiler.minimumOutput', 18],
      ['boiler.minimumOff', 15],
    ],
  },
  {
    key: 'small-bore',
    title: 'Small bore, long run',
    description: 'Invented: 25 m of 12 mm pipe each way with twenty bends.',
    reason:
      'Friction in the narrow pipe lets so little water through that it comes back cold and brings little heat.',
    day: [],
    wrong: [
      ['primary.size', '12'],
      ['primary.length', 25],
      ['primary.bends', 20],
    ],
  },
  {
    key: 'weak-circulator',
    title: 'Weak circulator',
    description: 'Invented: a worn circulator of half a metre of head.',
    reason:
      'Too little water carries the heat: the flow is hot, the return cold, and the coil short of it.',
    day: [],
    wrong: [
      ['circulator.shutOffHead', 0.4],
      ['circulator.largestFlow', 20],
    ],
  },
  {
    key: 'half-shut-valve',
    title: 'Coil branch half shut or air-bound',
    description: 'Invented: a valve, air or dirt before the coil holds back most of the flow.',
    reason:
      'The resistance before the coil leaves a trickle, whatever boiler and circulator could do.',
    day: [],
    wrong: [['primary.coilBranchDrop', 800]],
  },
  {
    key: 'bare-primary',
    title: 'Long bare primary',
    description: 'Invented: 40 m of bare pipe each way through a cold space.',
    reason: 'The pipes have to be warmed before the coil gets anything, and lose heat all the way.',
    day: [],
    wrong: [
      ['primary.length', 40],
      ['primary.bends', 30],
      ['primary.lagging', 0],
    ],
  },
  {
    key: 'undersized-coil',
    title: 'Undersized coil',
    description: 'Invented: four metres of tube in place of twelve.',
    reason: 'The coil has too little surface to pass what the boiler could give.',
    day: [],
    wrong: [
      ['coil.length', 4],
      ['coil.top', 0.26],
    ],
  },
  {
    key: 'scaled-coil',
    title: 'Scaled coil in hard water',
    description: 'Invented: 2 mm of porous scale on the coil after years of hard water.',
    reason: 'The scale lies between tube and water and resists more than everything else together.',
    day: [],
    wrong: [
      ['coil.scaleThickness', 2],
      ['coil.scaleConductivity', 1.1],
    ],
  },
  {
    key: 'heating-shares',
    title: 'Heating takes its share',
    description: 'Invented: both at once through two zone valves on a cold day.',
    reason:
      'Whenever the rooms call, the radiators take part of the flow and of the boiler’s heat.',
    day: [
      ['heating.radiatorOutput', 18],
      ['house.heatLoss', 350],
      ['house.outside', -3],
      ['run.duration', 4],
    ],
    wrong: [['heating.arrangement', 'simultaneous']],
  },
  {
    key: 'turn-taken',
    title: 'Priority with a time limit',
    description: 'Invented: after twenty minutes the rooms get the boiler for half an hour.',
    reason:
      'The cylinder loses the boiler half-way and has to wait while the rooms have their turn.',
    day: [
      ['heating.radiatorOutput', 18],
      ['house.heatLoss', 350],
      ['house.outside', -3],
      ['run.duration', 4],
    ],
    wrong: [
      ['heating.arrangement', 'priorityWithLimit'],
      ['heating.priorityLimit', 20],
      ['heating.heatingTurn', 30],
    ],
  },
  {
    key: 'programme-too-short',
    title: 'Hot-water times too short',
    description:
      'Invented: hot water is allowed for twenty minutes at six and again at half past seven.',
    reason:
      'The programme shuts the valve before the stat is satisfied, and the rest waits for the next time.',
    day: [['run.duration', 4]],
    wrong: [
      ['programme.hotWater', 'timed'],
      ['programme.hotWaterFor', 20],
      ['programme.hotWaterAgainFrom', 7.5],
    ],
  },
  {
    key: 'sensor-too-high',
    title: 'Sensor too high',
    description: 'Invented: the sensor at 1 m, after the morning showers.',
    reason:
      'It sits in water that is still hot and does not call, though most of the store is cold.',
    day: [['start.hotShare', 40]],
    wrong: [['stat.sensorHeight', 1]],
  },
  {
    key: 'sensor-too-low',
    title: 'Sensor below the coil',
    description: 'Invented: the sensor at 0.06 m, under the coil.',
    reason:
      'The water there is hardly heated, so the stat goes on calling while the store above overheats.',
    day: [],
    wrong: [['stat.sensorHeight', 0.06]],
  },
  {
    key: 'badly-strapped',
    title: 'Sensor badly strapped on',
    description: 'Invented: a bare sensor strapped to the wall, drawn towards the air around it.',
    reason:
      'It follows late and settles between water and air: it reads low, and the store has to get hotter before it is satisfied.',
    day: [],
    wrong: [['stat.mounting', 'strappedBare']],
  },
  {
    key: 'wrong-characteristic',
    title: 'Sensor of the wrong characteristic',
    description: 'Invented: a thermistor of beta 3435 on a controller that expects 3977.',
    reason: 'The controller reads its ohms on the wrong curve, low by several kelvins at 60 °C.',
    day: [],
    wrong: [
      ['sensor.element', 'thermistor'],
      ['sensor.beta', 3435],
      ['sensor.expects', 'thermistor'],
    ],
  },
  {
    key: 'bad-joint',
    title: 'Bad joint in the sensor lead',
    description: 'Invented: a corroded joint adds 500 Ω to a 10 kΩ thermistor.',
    reason:
      'Resistance in series makes a thermistor look colder, so the stat is satisfied late or not at all.',
    day: [],
    wrong: [
      ['sensor.element', 'thermistor'],
      ['sensor.jointResistance', 500],
    ],
  },
  {
    key: 'wide-differential',
    title: 'Differential too wide',
    description: 'Invented: 20 K on a store that has cooled to 50 °C and is then drawn from.',
    reason:
      'The stat lets the store cool by the whole differential, and the household draws from what is left before it calls.',
    day: [
      ['start.hotShare', 100],
      ['start.hotTemperature', 50],
      ['draw.volume', 60],
    ],
    wrong: [['stat.differential', 20]],
  },
];
