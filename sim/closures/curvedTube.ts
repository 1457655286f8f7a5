import type { ClosureRecord, Term } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, root, row, sub } from '../../shared/mathml.ts';
import { coilFriction } from './coilFriction.ts';
import { criticalReynolds } from './criticalReynolds.ts';
import { cubeRoot } from '../../shared/portableMaths.ts';
import { powerFromZero } from './power.ts';

/**
 * Nusselt number in a helical coil, pure number: laminar below the critical Reynolds number,
 * turbulent above 22 000, a straight line in between, so it has no jump anywhere. Chosen over the
 * formula of Schmidt, which jumps at both borders. The correction for water thicker at the cooler
 * wall is left out (below 5 %). Turbulent values lie above those of Schmidt (by up to 31 %) and of
 * Mori and Nakayama (11 to 24 %); for a 20 mm bore wound at 350 mm and fed at 80 °C that is 6 to 16 %,
 * which moves the whole coil by 1 to 3 %, since its outside decides.
 * Range Re up to 1.5e5, Pr above 0.7, curvature 0.01 to 0.2; extended outside.
 * @param Re         Reynolds number on the bore
 * @param Pr         Prandtl number
 * @param curvature  bore / coil diameter
 */
export function curvedTube(Re: number, Pr: number, curvature: number): number {
  const critical = criticalReynolds(curvature);
  if (Re <= critical) return curvedLaminar(Re, Pr, curvature);
  if (Re >= TURBULENT) return curvedTurbulent(Re, Pr, curvature);
  // source: vdiCoil, transition: linear in Re between the two borders
  const share = (TURBULENT - Re) / (TURBULENT - critical);
  return (
    share * curvedLaminar(critical, Pr, curvature) +
    (1 - share) * curvedTurbulent(TURBULENT, Pr, curvature)
  );
}

/** Which of the three formulas of `curvedTube` holds: 0 laminar, 1 between, 2 turbulent. */
export function flowRegime(Re: number, curvature: number): number {
  if (Re >= TURBULENT) return 2;
  return Re <= criticalReynolds(curvature) ? 0 : 1;
}

const TURBULENT = 2.2e4; // source: vdiCoil, upper border of the transition; from memory

function curvedLaminar(Re: number, Pr: number, curvature: number): number {
  // source: vdiCoil, laminar; from memory. 3.66 is the limit without flow
  const m = 0.5 + 0.2903 * powerFromZero(curvature, 0.194);
  const swirl = 0.08 * (1 + 0.8 * powerFromZero(curvature, 0.9));
  return 3.66 + swirl * powerFromZero(Re, m) * cubeRoot(Pr);
}

function curvedTurbulent(Re: number, Pr: number, curvature: number): number {
  return turbulentNusselt(Re, Pr, coilFriction(Re, curvature));
}

function turbulentNusselt(Re: number, Pr: number, f: number): number {
  // source: vdiCoil, turbulent, after gnielinski; from memory. f is the Darcy friction factor of
  // the coil
  const cube = cubeRoot(Pr);
  const thinning = cube * cube - 1;
  return ((f / 8) * Re * Pr) / (1 + 12.7 * Math.sqrt(f / 8) * thinning);
}

const REYNOLDS: Term = {
  key: 'Re',
  symbol: mi('Re'),
  name: 'Reynolds number in the bore',
  unit: '',
};
const PRANDTL: Term = {
  key: 'Pr',
  symbol: mi('Pr'),
  name: 'Prandtl number of the primary',
  unit: '',
};
const CURVATURE: Term = {
  key: 'curvature',
  symbol: row(mi('d'), mo('/'), mi('D')),
  name: 'bore over coil diameter',
  unit: '',
};
const FRICTION: Term = { key: 'f', symbol: mi('f'), name: 'friction factor of the coil', unit: '' };

export const curvedTurbulentRecord: ClosureRecord = {
  key: 'curvedTurbulent',
  title: 'Convection inside the coil, turbulent',
  result: { key: 'result', symbol: sub('Nu', 'i'), name: 'Nusselt number inside', unit: '' },
  terms: [REYNOLDS, PRANDTL, FRICTION],
  formula: equals(
    '{result}',
    frac(
      row(paren('{f}', mo('/'), mn(8)), mo('·'), '{Re}', mo('·'), '{Pr}'),
      row(
        mn(1),
        mo('+'),
        mn(12.7),
        mo('·'),
        root(row('{f}', mo('/'), mn(8))),
        mo('·'),
        paren(raised('{Pr}', row(mn(2), mo('/'), mn(3))), mo('−'), mn(1)),
      ),
    ),
  ),
  sentence:
    'The faster the primary runs through the bore, the thinner the layer at the wall that the heat must cross.',
  source: 'vdiCoil',
  where: 'turbulent flow, without the correction for the wall temperature; from memory',
  range: '22 000 < Re < 150 000',
  outside:
    'extended above; between the critical Reynolds number and 22 000 a straight line joins it to the laminar value',
  changes:
    'More flow or a smaller bore; against the outside of the coil this is seldom what limits.',
  example: {
    given: { Re: 25_000, Pr: 8, f: 0.0288 },
    gives: 219.11,
    digits: 2,
    note: 'Worked by hand with round roots: 0.0036 × 25 000 × 8 / (1 + 12.7 × 0.06 × 3) = 720 / 3.286.',
  },
  compute: ({ Re, Pr, f }) => turbulentNusselt(Re, Pr, f),
};

export const curvedLaminarRecord: ClosureRecord = {
  key: 'curvedLaminar',
  title: 'Convection inside the coil, laminar',
  result: { key: 'result', symbol: sub('Nu', 'i'), name: 'Nusselt number inside', unit: '' },
  terms: [REYNOLDS, PRANDTL, CURVATURE],
  formula: row(
    equals(
      '{result}',
      mn(3.66),
      mo('+'),
      mn(0.08),
      mo('·'),
      paren(mn(1), mo('+'), mn(0.8), mo('·'), raised(paren('{curvature}'), mn(0.9))),
      mo('·'),
      raised('{Re}', mi('m')),
      mo('·'),
      raised('{Pr}', row(mn(1), mo('/'), mn(3))),
    ),
    mo(','),
    equals(mi('m'), mn(0.5), mo('+'), mn(0.2903), mo('·'), raised(paren('{curvature}'), mn(0.194))),
  ),
  sentence:
    'Even slow flow is stirred by the turns of the coil, far better than in a straight tube.',
  source: 'vdiCoil',
  where: 'laminar flow; from memory',
  range: 'Re below the critical Reynolds number of the coil',
  outside: 'above it a straight line in Re leads to the turbulent value at 22 000',
  changes: 'More flow: a coil in laminar flow is starved.',
  example: {
    given: { Re: 1000, Pr: 1, curvature: 1 },
    gives: 37.48692,
    digits: 5,
    note: 'Worked by hand at curvature 1 and Pr 1, where every power but that of Re is 1: 3.66 + 0.144 × 1000^0.7903.',
  },
  compute: ({ Re, Pr, curvature }) => curvedTube(Re, Pr, curvature),
};
