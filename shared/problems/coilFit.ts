import { fieldAt } from '../fields.ts';
import { type CoilGroup, coilGroups } from '../fittedCoils.ts';
import { metres, plainText } from '../format.ts';
import { fromSI, toSI } from '../units.ts';
import type { Coil, Variant } from '../variant.ts';
import { type Problem, problemAt } from './problem.ts';

/** Whether the coils can be built as described: their heights, their tube, and room for both. */
export function coilFitProblems(variant: Variant): Problem[] {
  return [...coilGroups(variant).flatMap((group) => oneCoil(variant, group)), ...overlap(variant)];
}

function oneCoil(variant: Variant, group: CoilGroup): Problem[] {
  const coil = variant[group];
  const found: Problem[] = [];
  const height = coil.top - coil.bottom;
  if (height < leastCoilHeight - 1e-9) {
    found.push(
      problemAt(
        `${group}.top`,
        'coilHeight',
        `${fieldAt(`${group}.top`).label} must be at least ${metres(leastCoilHeight)} above the coil bottom, which is at ${metres(coil.bottom)}.`,
      ),
    );
  }
  if (coil.given === 'conductance') return found;
  return [...found, ...tubeProblems(variant, group, coil)];
}

function tubeProblems(variant: Variant, group: CoilGroup, coil: Coil): Problem[] {
  const found: Problem[] = [];
  const label = (key: keyof Coil) => fieldAt(`${group}.${key}`).label;
  const tube = plainText(fromSI(coil.tubeOutside, 'millimetre'), 'millimetre');
  if (coil.tubeOutside - 2 * coil.tubeWall < leastBore - 1e-12) {
    const most = fromSI((coil.tubeOutside - leastBore) / 2, 'millimetre');
    found.push(
      problemAt(
        `${group}.tubeWall`,
        'tubeWall',
        `${label('tubeWall')} must be at most ${plainText(most, 'millimetre')}, or a tube of ${tube} has no bore left.`,
      ),
    );
  }
  const room = insideWidth(variant) - coil.tubeOutside;
  if (coil.coilDiameter > room + 1e-9) {
    found.push(
      problemAt(
        `${group}.coilDiameter`,
        'coilWidth',
        `${label('coilDiameter')} must be at most ${floorMetres(room)}: the cylinder is ${metres(insideWidth(variant))} wide inside and the tube ${tube}.`,
      ),
    );
  }
  if (coil.given !== 'geometry') return found;

  const oneTurn = Math.PI * coil.coilDiameter;
  const turns = coil.length / oneTurn;
  const stands = (turns - 1) * coil.tubeOutside;
  if (turns < 1) {
    found.push(
      problemAt(
        `${group}.length`,
        'oneTurn',
        `${label('length')} must be at least ${metres(Math.ceil(oneTurn * 100) / 100)}, one turn of this coil.`,
      ),
    );
  } else if (stands > coil.top - coil.bottom + 1e-9 && coil.top > coil.bottom) {
    found.push(
      problemAt(
        `${group}.length`,
        'tooMuchTube',
        `${label('length')} is more than fits: ${turns.toFixed(1)} turns of ${tube} tube stand ${metres(stands)} high, and the coil is ${metres(coil.top - coil.bottom)} from its lowest turn to its highest. Shorten the tube, widen the coil or make it taller.`,
      ),
    );
  }
  return found;
}

function overlap({ coil, secondCoil }: Variant): Problem[] {
  if (secondCoil.fitted === 'no') return [];
  const from = Math.max(coil.bottom, secondCoil.bottom);
  const to = Math.min(coil.top, secondCoil.top);
  if (!(to - from > 1e-9)) return [];
  return [
    problemAt(
      'secondCoil.bottom',
      'overlap',
      `The two coils overlap between ${metres(from)} and ${metres(to)}: put the second coil above ${metres(coil.top)} or below ${metres(coil.bottom)}.`,
    ),
  ];
}

/** Inside width of an upright round cylinder, m. */
function insideWidth({ cylinder }: Variant): number {
  return Math.sqrt((4 * cylinder.volume) / (Math.PI * cylinder.height));
}

/** Rounded down, so that what is allowed is allowed as printed. */
function floorMetres(value: number): string {
  return metres(Math.max(0, Math.floor(value * 100) / 100));
}

/** Lowest turn to highest turn; less has no layer of its own. */
const leastCoilHeight = toSI(0.02, 'metre'); // engineering guess, no source
const leastBore = toSI(1, 'millimetre'); // engineering guess, no source
