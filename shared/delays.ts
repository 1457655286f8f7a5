import { arrangementOf } from './arrangements.ts';
import { fittedCoils } from './fittedCoils.ts';
import type { DelayKey } from './minutes.ts';
import type { Variant } from './variant.ts';

/** How one cause of waiting is told. */
interface DelayRow {
  /** With its article, in the middle of a sentence: `the coil`. */
  readonly label: string;
  /** Beside a bar. */
  readonly word: string;
  /** Whether the label takes a verb in the plural. */
  readonly plural?: true;
  /** What removed means, one sentence. */
  readonly removed: string;
  /** Whether an installation has it at all; left out: always. */
  readonly present?: (variant: Variant) => boolean;
}

/** What can keep a cylinder waiting, in the order the heat travels after what decides when it may. */
export const delays: Readonly<Record<DelayKey, DelayRow>> = {
  sensor: {
    label: 'the sensor',
    word: 'sensor',
    removed:
      'An ideal one calls at once, follows at once and reads the true mean of all the water the coil can heat.',
  },
  times: {
    label: 'the hot-water times and the valve',
    word: 'times and valve',
    plural: true,
    removed: 'Without them hot water is always allowed and the valve opens at once.',
    present: ({ programme, primary }) => programme.hotWater === 'timed' || primary.valveTravel > 0,
  },
  heating: {
    label: 'the heating',
    word: 'heating',
    removed: 'Without it the cylinder has the boiler to itself for as long as it calls.',
    present: ({ heating }) =>
      arrangementOf(heating.arrangement).heated && heating.arrangement !== 'priority',
  },
  boiler: {
    label: 'the boiler itself',
    word: 'boiler itself',
    removed:
      'An ideal boiler of the same output gives it at once, turns down to nothing, never rests or locks out, and has no water to warm in itself, pipes or coil.',
    present: ({ boiler }) => boiler.model === 'asBuilt',
  },
  flowLimit: {
    label: 'the flow limit',
    word: 'flow limit',
    removed:
      'Without it the flow may reach 95 °C, as hot as a domestic boiler could go: that is only for counting, never to be set.',
  },
  primaryFlow: {
    label: 'the primary flow',
    word: 'primary flow',
    removed:
      'Without its limit so much water goes round that at full output it comes back only 5 K cooler.',
    // how much flows is found by the run, not by the settings
  },
  pipes: {
    label: 'the pipes',
    word: 'pipes',
    plural: true,
    removed:
      'Without them the boiler stands at the cylinder: no pipe has to be warmed or loses heat, and as much water flows as before.',
    present: ({ primary }) => primary.length > 0,
  },
  coil: {
    label: 'the coil',
    word: 'coil',
    removed:
      'Without its limit neither tube nor films resist and all the heat goes in at its lowest turn; scale still resists where there is any, and as much water flows as before.',
  },
  scale: {
    label: 'the scale on the coil',
    word: 'scale',
    removed: 'Without it the coil is clean.',
    present: (variant) =>
      fittedCoils(variant).some(
        ({ given, scaleThickness }) => given !== 'conductance' && scaleThickness > 0,
      ),
  },
};

/** All of them, in order. */
export const delayKeys = Object.keys(delays) as readonly DelayKey[];
