import type { ClosureRecord, Term } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, paren, raised, root, row } from '../../shared/mathml.ts';
import { criticalReynolds } from './criticalReynolds.ts';
import { laminarPipeFriction } from './pipeFriction.ts';
import { power } from './power.ts';

/**
 * Darcy friction factor of flow in a coil, for its pressure drop, pure number: laminar below the
 * critical Reynolds number, turbulent above 22 000, a straight line in between, as for the heat.
 * The turbulent formula of Mori and Nakayama is taken because it meets the laminar one: at the critical
 * Reynolds number it lies 2 to 9 % above it, for curvatures of 0.01 to 0.2, where that of Schmidt lies 41
 * to 45 % above and jumps once more at 22 000. Above 22 000 it is within 7 % of Schmidt and
 * of Ito for curvatures up to 0.1, and within a sixth up to 0.2.
 * Range curvature 0.01 to 0.2 in a smooth bore; extended outside.
 * @param Re         Reynolds number in the bore, above 0
 * @param curvature  bore / coil diameter, above 0
 */
export function curvedFriction(Re: number, curvature: number): number {
  const critical = criticalReynolds(curvature);
  if (Re <= critical) return laminarFriction(Re, curvature);
  if (Re >= TURBULENT) return turbulentFriction(Re, curvature);
  const share = (Re - critical) / (TURBULENT - critical);
  return (
    (1 - share) * laminarFriction(critical, curvature) +
    share * turbulentFriction(TURBULENT, curvature)
  );
}

// Where the coil counts as turbulent. source: vdiCoil, upper border of the transition; from memory
const TURBULENT = 2.2e4;

function laminarFriction(Re: number, curvature: number): number {
  const De = Re * Math.sqrt(curvature); // Dean number
  const straight = laminarPipeFriction(Re);
  if (De <= 11.6) return straight; // too slow for the turns to stir
  // source: whiteCoil, De up to 2000; read second-hand
  return straight / (1 - power(1 - power(11.6 / De, 0.45), 1 / 0.45));
}

function turbulentFriction(Re: number, curvature: number): number {
  // source: moriNakayama, turbulent; read second-hand
  const X = power(Re * curvature * curvature, -0.2);
  return 0.3 * Math.sqrt(curvature) * X * (1 + 0.112 * X);
}

const TERMS: readonly Term[] = [
  { key: 'Re', symbol: mi('Re'), name: 'Reynolds number in the bore', unit: '' },
  {
    key: 'curvature',
    symbol: row(mi('d'), mo('/'), mi('D')),
    name: 'bore over coil diameter',
    unit: '',
  },
];

export const curvedLaminarFrictionRecord: ClosureRecord = {
  key: 'curvedLaminarFriction',
  title: 'Friction that costs pressure in the coil, laminar',
  result: { key: 'result', symbol: mi('f'), name: 'Darcy friction factor', unit: '' },
  terms: TERMS,
  formula: row(
    equals(
      '{result}',
      frac(
        row(mn(64), mo('/'), '{Re}'),
        row(
          mn(1),
          mo('−'),
          raised(
            paren(mn(1), mo('−'), raised(paren(mn(11.6), mo('/'), mi('De')), mn(0.45))),
            row(mn(1), mo('/'), mn(0.45)),
          ),
        ),
      ),
    ),
    mo(','),
    equals(mi('De'), '{Re}', mo('·'), root('{curvature}')),
  ),
  sentence: 'The turns throw the faster water outwards, which costs pressure even in slow flow.',
  source: 'whiteCoil',
  where: 'Dean number 11.6 to 2000; read second-hand',
  range: 'Re below the critical Reynolds number of the coil',
  outside: '64 / Re below a Dean number of 11.6; extended above 2000',
  changes: 'Less pressure is lost with a larger bore or wider turns.',
  example: {
    given: { Re: 250, curvature: 0.2 },
    gives: 0.40632818,
    digits: 8,
    note: 'Printed check: Re 250, 0.02 m in 0.1 m.',
  },
  compute: ({ Re, curvature }) => curvedFriction(Re, curvature),
};

export const curvedTurbulentFrictionRecord: ClosureRecord = {
  key: 'curvedTurbulentFriction',
  title: 'Friction that costs pressure in the coil, turbulent',
  result: { key: 'result', symbol: mi('f'), name: 'Darcy friction factor', unit: '' },
  terms: TERMS,
  formula: row(
    equals(
      '{result}',
      mn(0.3),
      mo('·'),
      root('{curvature}'),
      mo('·'),
      mi('X'),
      mo('·'),
      paren(mn(1), mo('+'), mn(0.112), mo('·'), mi('X')),
    ),
    mo(','),
    equals(
      mi('X'),
      raised(paren('{Re}', mo('·'), raised(paren('{curvature}'), mn(2))), row(mo('−'), mn(0.2))),
    ),
  ),
  sentence:
    'A usual coil costs a fifth to two fifths more pressure than the same tube laid straight.',
  source: 'moriNakayama',
  where: 'turbulent flow; read second-hand',
  range: 'Re above 22 000, smooth bore, bore / coil diameter 0.01 to 0.2',
  outside:
    'between the critical Reynolds number and 22 000 a straight line joins it to the laminar value; a corrugated bore costs more than this',
  changes: 'Less pressure is lost with a larger bore, a shorter coil or two coils side by side.',
  example: {
    given: { Re: 1e4, curvature: 0.05 },
    gives: 0.037311802,
    digits: 9,
    note: 'Printed check: Re 10 000, 0.01 m in 0.2 m.',
  },
  compute: ({ Re, curvature }) => turbulentFriction(Re, curvature),
};
