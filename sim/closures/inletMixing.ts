import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, row, sub } from '../../shared/mathml.ts';
import type { Celsius, Metres, MetresPerSecond } from '../../shared/units.ts';
import { powerFromZero } from './power.ts';
import { smoothStep } from './smoothStep.ts';
import type { Water } from './water.ts';

/**
 * Inlet Richardson number: what holds the layers apart against the swing of the jet, pure number.
 * Above 0 when the water that enters at the bottom is the heavier, below 0 when it is lighter and
 * would rise; infinite without flow.
 *
 * Here on the height of the store and the mean velocity in the inlet. On the bore of the inlet it is
 * some fifty times smaller, and a household cylinder would be stirred through in seconds; on the
 * velocity of the water that rises in the store it is some hundred thousand times larger, and nothing
 * would stir. Only in between does it agree with a measured store (`measuredDraw`), if the bore of its
 * inlet, which was not seen, was 17 to 20 mm.
 * @param entering  temperature of the water that enters
 * @param store     of the water that it meets
 * @param length    height of the store
 * @param velocity  mean in the inlet
 */
export function inletRichardson(
  water: Water,
  entering: Celsius,
  store: Celsius,
  length: Metres,
  velocity: MetresPerSecond,
): number {
  return richardson(water.density(entering), water.density(store), length, velocity);
}

/** Reynolds number of the inlet, on its bore and mean velocity, pure number. @param length  bore */
export function inletReynolds(
  water: Water,
  entering: Celsius,
  length: Metres,
  velocity: MetresPerSecond,
): number {
  return (water.density(entering) * velocity * length) / water.viscosity(entering);
}

function richardson(entering: number, store: number, length: Metres, velocity: MetresPerSecond) {
  if (entering === store) return 0;
  return (GRAVITY * ((entering - store) / store) * length) / (velocity * velocity);
}

const GRAVITY = 9.80665; // m/s², source: practice, standard gravity by definition

/** How the cold water enters. */
export type Inlet = keyof typeof EDDY;

/**
 * How many times faster than by conduction alone heat spreads just at the inlet, pure number, never
 * below 1. Infinite where nothing holds the layers apart: the water there is mixed.
 * @param richardson  above 0 for the published fits
 */
export function inletEddyFactor(inlet: Inlet, reynolds: number, richardson: number): number {
  if (reynolds <= 0) return 1;
  if (richardson <= 0) return Number.POSITIVE_INFINITY;
  const [factor, exponent] = EDDY[inlet];
  return Math.max(1, factor * powerFromZero(reynolds / richardson, exponent));
}

/**
 * How much of the stirring of a turbulent jet there is, 0 to 1: none while it is laminar, all of it
 * once it is fully turbulent.
 */
export function turbulentShare(reynolds: number): number {
  // source: flowEddies, the eddy factor grows between Re 2100 and 10 000
  return smoothStep((reynolds - 2100) / (10_000 - 2100));
}

/**
 * The factor at a distance from the inlet: a hyperbola from the value at the inlet to 1 at the far
 * end of the store. Published with the number of the layer in place of the distance, so that it
 * changed with the layers; `reach` stands for the layer they had.
 * @param atInlet   pure number, 1 or more
 * @param distance  from the inlet
 * @param reach     thickness of the layer that the jet enters, above 0
 * @param height    of the store, more than `reach`
 */
export function eddyFactorAt(
  atInlet: number,
  distance: Metres,
  reach: Metres,
  height: Metres,
): number {
  if (distance >= height) return 1;
  // source: inletEddies, hyperbolic decay A/n + B; that it ends at 1 is from memory
  const slope = (atInlet - 1) / (1 - reach / height);
  return 1 + slope * (reach / Math.max(distance, reach) - reach / height);
}

// source: inletEddies, factor and exponent of Re/Ri, from memory
const EDDY = {
  /** Plain, from the side. */
  side: [0.344, 0.894],
  /** Through a perforated plate or pipe. */
  perforated: [3.54, 0.586],
  /** Against a plate that turns it. */
  impingement: [4.75, 0.522],
} as const;

export const inletRichardsonRecord: ClosureRecord = {
  key: 'inletRichardson',
  title: 'Inlet Richardson number of the cold water',
  result: { key: 'result', symbol: mi('Ri'), name: 'inlet Richardson number', unit: '' },
  terms: [
    {
      key: 'entering',
      symbol: sub('ρ', 'c'),
      name: 'density of the water that enters',
      unit: 'kg/m³',
      digits: 4,
    },
    {
      key: 'store',
      symbol: sub('ρ', 's'),
      name: 'density of the water that it meets',
      unit: 'kg/m³',
      digits: 4,
    },
    { key: 'length', symbol: mi('H'), name: 'height of the store', unit: 'm' },
    { key: 'velocity', symbol: mi('u'), name: 'mean velocity in the inlet', unit: 'm/s' },
  ],
  formula: equals(
    '{result}',
    frac(
      row(mi('g'), mo('·'), paren('{entering}', mo('−'), '{store}'), mo('·'), '{length}'),
      row('{store}', mo('·'), raised('{velocity}', mn(2))),
    ),
  ),
  sentence:
    'Cold water is heavier and stays below unless the jet is fast: a high number keeps the layers, a low one stirs them.',
  source: 'inletReview',
  where:
    'definition on the height of the store and the velocity in the inlet, g = 9.80665 m/s²; the review says that authors take different ones',
  range:
    'one definition of several: critical values from below 0.25 to 100 are reported, because lengths and velocities differ; compare none of them with this number before converting it',
  outside: 'below 0 the entering water is lighter and rises; infinite without flow',
  changes: 'A wider or deflected inlet and a slower draw; the velocity counts squared.',
  example: {
    given: { entering: 999.7, store: 983.2, length: 1.2, velocity: 0.5 },
    gives: 0.79,
    digits: 4,
    note: 'Worked by hand, 10 °C into 60 °C: 9.80665 × 16.5 / 983.2 × 1.2 / 0.25 = 0.7900.',
  },
  compute: ({ entering, store, length, velocity }) => richardson(entering, store, length, velocity),
};

const eddyRecord = (inlet: Inlet, named: string): Omit<ClosureRecord, 'example'> => ({
  key: `${inlet}InletEddies`,
  title: `Mixing at ${named}`,
  result: { key: 'result', symbol: mi('ε'), name: 'eddy factor at the inlet', unit: '' },
  terms: [
    { key: 'reynolds', symbol: mi('Re'), name: 'Reynolds number of the inlet', unit: '' },
    { key: 'richardson', symbol: mi('Ri'), name: 'inlet Richardson number', unit: '' },
  ],
  formula: equals(
    '{result}',
    mn(EDDY[inlet][0]),
    mo('·'),
    raised(paren(frac('{reynolds}', '{richardson}')), mn(EDDY[inlet][1])),
  ),
  sentence:
    'The faster the draw and the smaller the difference in temperature, the deeper the cold jet stirs.',
  source: 'inletEddies',
  where:
    'fits to measured stores, factor and exponent from memory; the lengths behind Re and Ri were not seen',
  // source: layeringEddies for the 5, flowEddies for the two Reynolds numbers
  range:
    'an estimate within several times: at Re/Ri 100 the plain inlet comes out gentler than the other two and above 2000 rougher, another work has 5 throughout, and another lets the factor grow only between Re 2100 and 10 000',
  outside: 'never below 1; infinite when the entering water is not the heavier',
  changes: 'A slower draw, a wider inlet, a plate that turns the jet.',
  compute: ({ reynolds, richardson: holding }) => inletEddyFactor(inlet, reynolds, holding),
});

export const inletEddyRecords: readonly ClosureRecord[] = [
  {
    ...eddyRecord('side', 'a plain inlet from the side'),
    example: {
      given: { reynolds: 10_000, richardson: 100 },
      gives: 21.11,
      digits: 2,
      note: 'Worked by hand: 0.344 × 100^0.894 = 0.344 × 61.38.',
    },
  },
  {
    ...eddyRecord('perforated', 'a perforated inlet'),
    example: {
      given: { reynolds: 10_000, richardson: 100 },
      gives: 52.6,
      digits: 1,
      note: 'Worked by hand: 3.54 × 100^0.586 = 3.54 × 14.86.',
    },
  },
  {
    ...eddyRecord('impingement', 'an inlet against a plate'),
    example: {
      given: { reynolds: 10_000, richardson: 100 },
      gives: 52.56,
      digits: 2,
      note: 'Worked by hand: 4.75 × 100^0.522 = 4.75 × 11.066.',
    },
  },
];
