import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, row, sub } from '../../shared/mathml.ts';
import { logarithm } from '../../shared/portableMaths.ts';
import type { CubicMetresPerSecond, Metres, MetresPerSecond, Pascals } from '../../shared/units.ts';
import { powerFromZero } from './power.ts';

/**
 * Pressure lost to friction along a straight round pipe, Pa. Continuous and rising with the flow,
 * also where the flow turns turbulent.
 * @param length      m
 * @param bore        m
 * @param roughness   height of the wall's unevenness, m
 * @param volumeFlow  m³/s, not negative
 * @param density     kg/m³
 * @param viscosity   Pa s
 */
export function pipePressureDrop(
  length: Metres,
  bore: Metres,
  roughness: Metres,
  volumeFlow: CubicMetresPerSecond,
  density: number,
  viscosity: number,
): Pascals {
  if (volumeFlow === 0) return 0;
  const velocity = boreVelocity(bore, volumeFlow);
  const f = pipeFriction((density * velocity * bore) / viscosity, roughness / bore);
  return darcyWeisbach(f, length, bore, density, velocity);
}

/** Mean velocity in a round bore, m/s. @param bore  m @param volumeFlow  m³/s */
export function boreVelocity(bore: Metres, volumeFlow: CubicMetresPerSecond): MetresPerSecond {
  return (4 * volumeFlow) / (Math.PI * bore * bore);
}

/**
 * Pressure lost to friction, Pa.
 * @param f         Darcy friction factor, four times that of Fanning
 * @param length    m
 * @param bore      m
 * @param density   kg/m³
 * @param velocity  m/s
 */
export function darcyWeisbach(
  f: number,
  length: Metres,
  bore: Metres,
  density: number,
  velocity: MetresPerSecond,
): Pascals {
  return (((f * length) / bore) * density * velocity * velocity) / 2;
}

/**
 * Darcy friction factor of a straight round pipe, pure number: laminar below Re 2300, turbulent above
 * 4000, a straight line in between, where nobody knows.
 * @param Re         Reynolds number in the bore, above 0
 * @param roughness  over bore, 0 for a smooth pipe
 */
export function pipeFriction(Re: number, roughness: number): number {
  if (Re <= LAMINAR) return laminarPipeFriction(Re);
  if (Re >= TURBULENT) return turbulentFriction(Re, roughness);
  const share = (Re - LAMINAR) / (TURBULENT - LAMINAR);
  return (
    (1 - share) * laminarPipeFriction(LAMINAR) + share * turbulentFriction(TURBULENT, roughness)
  );
}

/** Darcy friction factor of laminar flow in a straight round pipe, pure number. */
export function laminarPipeFriction(Re: number): number {
  return 64 / Re; // exact for developed laminar flow
}

function turbulentFriction(Re: number, roughness: number): number {
  // source: haaland, the equation with 1.11; from memory
  const log10 = logarithm(powerFromZero(roughness / 3.7, 1.11) + 6.9 / Re) / Math.LN10;
  return 1 / (1.8 * log10 * (1.8 * log10));
}

// Borders of the transition. source: whiteFluid, laminar to 2300; the chart starts at 4000; from memory
const LAMINAR = 2300;
const TURBULENT = 4000;

/** Height of the unevenness of drawn copper tube, m. */
export const COPPER_ROUGHNESS: Metres = 1.5e-6; // source: whiteFluid, drawn tubing; from memory

export const pipePressureDropRecord: ClosureRecord = {
  key: 'pipePressureDrop',
  title: 'Pressure lost along a pipe',
  result: { key: 'result', symbol: mi('Δp'), name: 'pressure lost', unit: 'kPa', factor: 1e-3 },
  terms: [
    { key: 'f', symbol: mi('f'), name: 'friction factor', unit: '' },
    { key: 'length', symbol: mi('L'), name: 'length', unit: 'm' },
    { key: 'bore', symbol: mi('d'), name: 'bore', unit: 'mm', factor: 1000 },
    { key: 'density', symbol: mi('ρ'), name: 'density of the water', unit: 'kg/m³' },
    { key: 'velocity', symbol: mi('v'), name: 'velocity', unit: 'm/s' },
  ],
  formula: equals(
    '{result}',
    '{f}',
    mo('·'),
    frac('{length}', '{bore}'),
    mo('·'),
    frac(row('{density}', mo('·'), raised(paren('{velocity}'), mn(2))), mn(2)),
  ),
  sentence:
    'Once it is turbulent, twice the flow through the same pipe costs more than three times the pressure.',
  source: 'whiteFluid',
  where: 'Darcy and Weisbach; straight pipe and coil alike; from memory',
  range: 'a full round bore in steady flow',
  outside: 'bends, valves and the boiler add theirs',
  changes: 'A larger bore, a shorter run, less flow.',
  example: {
    given: { f: 0.02, length: 10, bore: 0.02, density: 1000, velocity: 1 },
    gives: 5000,
    digits: 6,
    note: 'Worked by hand: 0.02 × 500 × 500 Pa.',
  },
  compute: ({ f, length, bore, density, velocity }) =>
    darcyWeisbach(f, length, bore, density, velocity),
};

export const pipeFrictionRecord: ClosureRecord = {
  key: 'pipeFriction',
  title: 'Friction factor of a straight pipe, turbulent',
  result: { key: 'result', symbol: mi('f'), name: 'Darcy friction factor', unit: '' },
  terms: [
    { key: 'Re', symbol: mi('Re'), name: 'Reynolds number in the bore', unit: '' },
    {
      key: 'roughness',
      symbol: row(mi('k'), mo('/'), mi('d')),
      name: 'roughness over bore',
      unit: '',
    },
  ],
  formula: equals(
    '{result}',
    raised(
      paren(
        mn(1.8),
        mo('·'),
        sub('log', '10'),
        paren(
          raised(paren('{roughness}', mo('/'), mn(3.7)), mn(1.11)),
          mo('+'),
          frac(mn(6.9), '{Re}'),
        ),
      ),
      row(mo('−'), mn(2)),
    ),
  ),
  sentence: 'The faster the water, the smaller the factor, down to what the roughness leaves.',
  source: 'haaland',
  where: 'explicit form of the equation of Colebrook, within 2 %; from memory',
  range: 'Re above 4000; roughness up to 0.05 of the bore',
  outside: '64 / Re below Re 2300, and a straight line from there to 4000',
  changes: 'Hardly anything in copper tube, which is smooth; scale in the pipe does.',
  example: {
    given: { Re: 69_000, roughness: 0 },
    gives: 0.0192901,
    digits: 7,
    note: 'Worked by hand where the logarithm is −4: 1 / 7.2².',
  },
  compute: ({ Re, roughness }) => pipeFriction(Re, roughness),
};
