import { shown } from '../../shared/format.ts';
import { churchillChu, churchillChuRecord } from '../../sim/closures/coilOutside.ts';
import { curvedTube } from '../../sim/closures/coilInside.ts';
import { exchangeRecord } from '../../sim/closures/exchange.ts';
import { filmCoefficientRecord } from '../../sim/closures/filmCoefficient.ts';
import { overallRecord } from '../../sim/closures/overallCoefficient.ts';
import { scaleRecord } from '../../sim/closures/scale.ts';
import { tubeWallRecord } from '../../sim/closures/tubeWall.ts';
import { buoyancyWorking } from './buoyancyWorking.ts';
import { coilParts } from './coilParts.ts';
import { insideSteps, regimeNote, regimeWorking } from './insideWorkings.ts';
import { type Reading, type Sampled, waterOf } from './reading.ts';
import { type Working, type WorkingKey, worked } from './working.ts';

export type CoilKey = Exclude<Extract<WorkingKey, `coil.${string}`>, 'coil.friction'>;

/** The workings of what the coil conducts. @param when  e.g. `at 30 min` */
export function coilWorking(
  key: CoilKey,
  result: Sampled,
  reading: Reading,
  when: string,
): Working {
  const { conductance: UA, heatRate: mc } = reading;
  if (key === 'coil.share') {
    return {
      title: `${when} the flow gives up a share of its heat`,
      steps: [worked(exchangeRecord, { UA, mc })],
      note: '',
      further: [{ label: 'what the coil conducts', key: 'coil.overall' }],
    };
  }
  const parts = coilParts(result, reading);
  if (!parts) {
    const given = result.variant.coil.given === 'conductance';
    return {
      title: given ? 'UA is given as a whole' : `${when} the coil does not run`,
      steps: [{ record: overallRecord, values: {} }],
      note: given ? 'A known UA is taken as constant, so it has no parts here.' : '',
      further: [],
    };
  }
  const { tube, U, ho, hi, ratio, Rw, Rs, film, Ra, Pr, Re } = parts;
  const water = waterOf(result);
  const small = (value: number, unit: string) => `${Number(value.toPrecision(3))}\u00a0${unit}`;
  const density = 'W/(m²\u00a0K)';
  switch (key) {
    case 'coil.overall':
      return {
        title: `${when} the coil conducts ${shown(UA, 'wattPerKelvin')}: ${small(U, density)} on ${small(UA / U, 'm²')}`,
        steps: [worked(overallRecord, { ho, hi, ratio, Rw, Rs })],
        note: 'Taken at the mean of the primary and of the water around the coil; the model does it piece by piece.',
        further: [
          { label: `outside ${small(ho, density)}`, key: 'coil.outside' },
          { label: `inside ${small(hi, density)}`, key: 'coil.inside' },
          { label: 'wall', key: 'coil.wall' },
          ...(Rs > 0 ? [{ label: 'scale', key: 'coil.scale' } as const] : []),
        ],
      };
    case 'coil.outside': {
      const Nu = churchillChu(Ra, Pr);
      return {
        title: `${when} the water takes ${small(ho, density)} from the tube`,
        steps: [
          worked(churchillChuRecord, { Ra, Pr }),
          worked(filmCoefficientRecord, {
            E: tube.outsideEnhancement,
            Nu,
            k: water.conductivity(film),
            d: tube.outsideDiameter,
          }),
        ],
        note: `The film between tube and water is at ${shown(film, 'celsius', 1)}.`,
        further: [
          { label: 'what drives the water there', key: 'coil.buoyancy' },
          { label: 'what the coil conducts', key: 'coil.overall' },
        ],
      };
    }
    case 'coil.inside':
      return {
        title: `${when} the primary gives ${small(hi, density)} to the bore`,
        steps: [
          ...insideSteps(parts),
          worked(filmCoefficientRecord, {
            E: tube.insideEnhancement,
            Nu: curvedTube(Re, parts.primaryPr, parts.curvature),
            k: water.conductivity(parts.primary),
            d: tube.insideDiameter,
          }),
        ],
        note: regimeNote(parts),
        further: [
          { label: 'laminar or turbulent', key: 'coil.regime' },
          { label: 'the pressure this costs', key: 'coil.friction' },
          { label: 'what the coil conducts', key: 'coil.overall' },
        ],
      };
    case 'coil.regime':
      return regimeWorking(parts, when);
    case 'coil.buoyancy':
      return buoyancyWorking(parts, water, when);
    case 'coil.wall':
      return {
        title: 'the wall of the tube holds the heat back',
        steps: [
          worked(tubeWallRecord, {
            outside: tube.outsideDiameter,
            inside: tube.insideDiameter,
            k: tube.wallConductivity,
          }),
        ],
        note: '',
        further: [{ label: 'what the coil conducts', key: 'coil.overall' }],
      };
    case 'coil.scale':
      return {
        title: 'the scale on the tube holds the heat back',
        steps: [worked(scaleRecord, { thickness: tube.scaleThickness, k: tube.scaleConductivity })],
        note: '',
        further: [{ label: 'what the coil conducts', key: 'coil.overall' }],
      };
  }
}
