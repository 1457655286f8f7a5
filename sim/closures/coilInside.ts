import { curvedTube, flowRegime } from './curvedTube.ts';
import { filmCoefficient } from './filmCoefficient.ts';
import { lastFew } from './lastFew.ts';
import { SmoothTable } from './smoothTable.ts';
import { prandtl, type Water } from './water.ts';

// The relations behind the coefficient, so that a reader of it finds them from here
export { coilFriction, coilFrictionRecord } from './coilFriction.ts';
export { criticalReynolds, criticalReynoldsRecord } from './criticalReynolds.ts';
export { curvedLaminarRecord, curvedTube, curvedTurbulentRecord } from './curvedTube.ts';

/** The bore the primary water runs through. */
export interface CoilBore {
  /** m */
  readonly insideDiameter: number;
  /** Diameter of the turns on the centre line of the tube, m. */
  readonly coilDiameter: number;
  /** Pure number on the coefficient: 1 for a plain tube, more for a corrugated one. */
  readonly insideEnhancement: number;
}

/**
 * Heat transfer coefficient inside a coil, W/(m² K) of inside area.
 * @param water        the primary water
 * @param bore         of the tube and of its turns
 * @param massFlow     kg/s, not negative
 * @param temperature  mean primary temperature, °C
 */
export function coilInside(
  water: Water,
  bore: CoilBore,
  massFlow: number,
  temperature: number,
): number {
  const d = bore.insideDiameter;
  const Re = reynolds(water, d, massFlow, temperature);
  const Nu = curvedTube(Re, prandtl(water, temperature), d / bore.coilDiameter);
  return filmCoefficient(Nu, water.conductivity(temperature), d, bore.insideEnhancement);
}

/** Reynolds number in a round bore, pure number. @param massFlow  kg/s @param temperature  °C */
export function reynolds(
  water: Water,
  insideDiameter: number,
  massFlow: number,
  temperature: number,
): number {
  return (4 * massFlow) / (Math.PI * insideDiameter * water.viscosity(temperature));
}

/**
 * The coefficient at one fixed primary flow as a smooth table of primary temperature, W/(m² K) of
 * inside area: 1 K apart from 0 to 110 °C, end values kept outside. Within 1e-6 of the direct
 * formula away from the corners where the flow regime changes, and within 0.3 % at a corner, which
 * the table rounds off. The last few tables are kept, for run after run asks for the same.
 */
export function insideFilm(water: Water, bore: CoilBore, massFlow: number): SmoothTable {
  const { insideDiameter, coilDiameter, insideEnhancement } = bore;
  return keptFilm(water, insideDiameter, coilDiameter, insideEnhancement, massFlow);
}

const keptFilm = lastFew(
  16,
  (
    water: Water,
    insideDiameter: number,
    coilDiameter: number,
    insideEnhancement: number,
    massFlow: number,
  ) => {
    const bore = { insideDiameter, coilDiameter, insideEnhancement };
    const curvature = insideDiameter / coilDiameter;
    return new SmoothTable(
      0,
      110,
      110,
      (t) => coilInside(water, bore, massFlow, t),
      (t) => flowRegime(reynolds(water, insideDiameter, massFlow, t), curvature),
    );
  },
);
