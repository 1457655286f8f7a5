import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { equals, frac, mi, mn, mo, row, sub } from '../../shared/mathml.ts';
import { type CoilBore, insideFilm } from './coilInside.ts';
import { type Balance, type OutsideFilm, outsideFilm } from './outsideFilm.ts';
import { scaleResistance } from './scale.ts';
import type { SmoothTable } from './smoothTable.ts';
import { tubeWall } from './tubeWall.ts';
import type { Water } from './water.ts';

/** What the overall coefficient of a coil depends on, apart from the two temperatures. */
export interface CoilTube extends CoilBore {
  /** m */
  readonly outsideDiameter: number;
  /** W/(m K) */
  readonly wallConductivity: number;
  /** m, 0 for a clean coil */
  readonly scaleThickness: number;
  /** W/(m K) */
  readonly scaleConductivity: number;
  /** Any further fouling, per outside area, m² K/W. */
  readonly foulingResistance: number;
  /** Pure number on the outside coefficient. */
  readonly outsideEnhancement: number;
}

/** A coil made ready for a run at one primary flow. */
export interface PreparedCoil {
  /** kg/s */
  readonly massFlow: number;
  /** Coefficient inside against primary temperature, W/(m² K) of inside area. */
  readonly inside: SmoothTable;
  /** Outside over inside area, pure number. */
  readonly areaRatio: number;
  /** Wall, scale and fouling, per outside area, m² K/W. */
  readonly solidResistance: number;
  readonly outside: OutsideFilm;
}

/**
 * Makes a coil ready: builds its tables. Costs about a tenth of a millisecond; do it once per flow, never in
 * the derivative.
 * @param massFlow      primary flow, kg/s
 * @param primaryWater  inside the coil
 * @param storedWater   outside it
 */
export function prepareCoil(
  tube: CoilTube,
  massFlow: number,
  primaryWater: Water,
  storedWater: Water,
): PreparedCoil {
  const { outsideDiameter, insideDiameter } = tube;
  const wall = tubeWall(outsideDiameter, insideDiameter, tube.wallConductivity);
  const scale = scaleResistance(tube.scaleThickness, tube.scaleConductivity);
  return {
    massFlow,
    inside: insideFilm(primaryWater, tube, massFlow),
    areaRatio: outsideDiameter / insideDiameter,
    solidResistance: wall + scale + tube.foulingResistance,
    outside: outsideFilm(storedWater, outsideDiameter, tube.outsideEnhancement),
  };
}

/**
 * Overall coefficient of a coil on its outside area, W/(m² K), with the tube surface at the one
 * temperature at which the heat that reaches it leaves it. Zero without flow. Good to 1e-6;
 * allocates nothing and remembers nothing.
 * @param coil     made ready for the present flow
 * @param primary  primary water at this piece of the coil, °C; may be colder than the tank
 * @param tank     stored water at this piece, °C
 * @param beside   the balance of the piece before, which this one is looked for beside; written
 */
export function overallCoefficient(
  coil: PreparedCoil,
  primary: number,
  tank: number,
  beside?: Balance,
): number {
  if (!(coil.massFlow > 0)) return 0;
  const resistance = coil.areaRatio / coil.inside.at(primary) + coil.solidResistance;
  return seriesCoefficient(coil.outside.balanced(resistance, primary, tank, beside), resistance);
}

/**
 * Coefficient of the outside film with the rest in series, W/(m² K).
 * @param inner  all other resistance, m² K/W
 */
function seriesCoefficient(outside: number, inner: number): number {
  return 1 / (1 / outside + inner);
}

export const overallRecord: ClosureRecord = {
  key: 'overall',
  title: 'Overall coefficient of the coil',
  result: {
    key: 'result',
    symbol: mi('U'),
    name: 'overall coefficient on the outside area',
    unit: 'W/(m² K)',
  },
  terms: [
    { key: 'ho', symbol: sub('h', 'o'), name: 'coefficient outside', unit: 'W/(m² K)' },
    { key: 'hi', symbol: sub('h', 'i'), name: 'coefficient inside', unit: 'W/(m² K)' },
    {
      key: 'ratio',
      symbol: row(sub('d', 'o'), mo('/'), sub('d', 'i')),
      name: 'outside over inside area',
      unit: '',
    },
    { key: 'Rw', symbol: sub('R', 'w'), name: 'resistance of the wall', unit: 'm² K/W' },
    { key: 'Rs', symbol: sub('R', 's'), name: 'resistance of scale and fouling', unit: 'm² K/W' },
  ],
  formula: equals(
    '{result}',
    frac(
      mn(1),
      row(frac(mn(1), '{ho}'), mo('+'), '{Rs}', mo('+'), '{Rw}', mo('+'), frac('{ratio}', '{hi}')),
    ),
  ),
  sentence:
    'The heat passes film, wall, scale and film one after the other, and the largest resistance decides.',
  source: 'kaysLondon',
  where: 'resistances in series on the outside area; from memory',
  range: 'plain tubes; ± 25 % for a coil known by geometry alone',
  outside: 'zero without primary flow',
  changes:
    'In a clean coil the water outside it decides; scale is as much at two millimetres of dense or one of porous scale, and more beyond.',
  example: {
    given: { ho: 1000, hi: 1e12, ratio: 1, Rw: 0, Rs: 4.5e-4 },
    gives: 690,
    digits: 0,
    note: 'A clean coefficient of 1000 with 4.5e-4 m² K/W of scale: 1 / 0.00145 = 689.7.',
  },
  compute: ({ ho, hi, ratio, Rw, Rs }) => seriesCoefficient(ho, ratio / hi + Rw + Rs),
};
