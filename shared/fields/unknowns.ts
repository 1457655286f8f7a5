import { fittedCoils } from '../fittedCoils.ts';
import type { Coil, Variant } from '../variant.ts';
import type { Field, NumberField } from './row.ts';

const guess = 'engineering guess, no source';
const isRated = ({ given }: Coil) => given === 'rating' || given === 'conductance';

function row(
  key: keyof Variant['unknowns'],
  label: string,
  help: string,
  [unit, most, step, usual]: readonly [NumberField['unit'], number, number, number],
  matters: (variant: Variant) => boolean,
  source = guess,
): Field {
  const path = `unknowns.${key}` as const;
  return {
    kind: 'number',
    path,
    label,
    help,
    unit,
    least: 0,
    most,
    step,
    default: usual,
    source,
    matters,
  };
}

/** How far the settings may be off; only the spread of the recovery time looks at it. */
export const unknownFields: readonly Field[] = [
  row(
    'coil',
    'Coil by tube or area',
    'Heat passed for each kelvin, either way; 0 where it is known.',
    ['percent', 80, 5, 25],
    (variant) => !isRated(variant.coil),
    `${guess}: two formulas and an unknown stirring leave ±25 %`,
  ),
  row(
    'ratedCoil',
    'Coil by rating or UA',
    'Heat passed for each kelvin, either way; 0 where it is known.',
    ['percent', 80, 5, 10],
    (variant) => isRated(variant.coil),
    `${guess}: a test is nearer than a formula, but not the coil in use`,
  ),
  row(
    'scale',
    'Scale',
    'Thicker or thinner: 100 % is between half of what is set and twice it.',
    ['percent', 300, 25, 100],
    (variant) =>
      fittedCoils(variant).some((coil) => coil.given !== 'conductance' && coil.scaleThickness > 0),
  ),
  row(
    'hiddenScale',
    'Scale on a clean coil',
    'The most that may sit on a coil set as clean.',
    ['millimetre', 2, 0.1, 0.2],
    (variant) =>
      fittedCoils(variant).some(
        (coil) => coil.given !== 'conductance' && coil.scaleThickness === 0,
      ),
  ),
  row(
    'primaryFlow',
    'Primary flow',
    'Of what is set or follows from the network, either way.',
    ['percent', 80, 5, 20],
    () => true,
  ),
  row(
    'cold',
    'Incoming cold',
    'Of what is typed or goes by the month, either way.',
    ['kelvin', 10, 0.5, 3],
    () => true,
  ),
  row(
    'lag',
    'Sensor lag',
    'Longer or shorter: 100 % is between half of what is set and twice it.',
    ['percent', 300, 25, 100],
    ({ stat }) => stat.mounting !== 'asTyped' || stat.lag > 0,
  ),
];
