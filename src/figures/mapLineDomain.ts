import { type Asked, askedRow } from '../../shared/asked.ts';
import { endsOf } from '../../shared/sentences/map.ts';
import { fromSI } from '../../shared/units.ts';

/** Least and most of the axis of a line, in the shown unit: from nought where the line comes near it, else close around it. */
export function lineDomain(values: ArrayLike<number>, measure: Asked): [number, number] {
  const ends = endsOf(values);
  if (ends === null) return [0, 1];
  const { unit } = askedRow(measure);
  const [least, most] = [fromSI(values[ends.least], unit), fromSI(values[ends.most], unit)];
  const room = Math.max((most - least) * 0.1, Math.abs(most) * 0.02, 1e-6);
  return [least >= 0 && least < 0.6 * most ? 0 : least - room, most + room];
}
