import { shown } from '../../shared/format.ts';
import { ZERO_CELSIUS } from '../../shared/units.ts';
import { viscosityRecord } from '../../sim/closures/waterViscosity.ts';
import { rayleighRecord } from '../../sim/closures/rayleigh.ts';
import type { Water } from '../../sim/closures/water.ts';
import type { CoilParts } from './coilParts.ts';
import { type Working, worked } from './working.ts';

/** What makes the water at the tube rise, and what holds it back. */
export function buoyancyWorking(parts: CoilParts, water: Water, when: string): Working {
  const { film, difference, tube } = parts;
  return {
    title: `${when} the tube is ${shown(difference, 'kelvin', 1)} from the water around it`,
    steps: [
      worked(rayleighRecord, {
        beta: water.expansion(film),
        rho: water.density(film),
        c: water.specificHeat(film),
        mu: water.viscosity(film),
        k: water.conductivity(film),
        d: tube.outsideDiameter,
        difference,
      }),
      worked(viscosityRecord, { ratio: (film + ZERO_CELSIUS) / 300 }),
    ],
    note: `Both are for the film between tube and water, at ${shown(film, 'celsius', 1)}.`,
    further: [{ label: 'what the water takes from the tube', key: 'coil.outside' }],
  };
}
