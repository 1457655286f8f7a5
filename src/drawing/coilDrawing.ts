import type { Metres } from '../../shared/units.ts';
import type { Coil } from '../../shared/variant.ts';
import type { SectionPlan } from './sectionPlan.ts';

/** A coil cut open, pixels. */
export interface CoilDrawing {
  /** Cut tubes, the right ones with the two ends among them. */
  readonly cuts: readonly { readonly x: number; readonly y: number }[];
  /** The far half of every turn, path data. */
  readonly farHalves: string;
  readonly tubeRadius: number;
  /** Of the ends at the right, pixels. */
  readonly topEnd: number;
  readonly bottomEnd: number;
  readonly right: number;
  /** Whole turns drawn, and whether they are the true number. */
  readonly turns: number;
  readonly isTrueToTurns: boolean;
}

/**
 * Draws a coil between its bottom and its top. Its turns are those of its length where that is
 * given; where only an area, a rating or a conductance is known, or where the turns would touch on
 * paper, as many as stand clear.
 */
export function coilDrawing(coil: Coil, plan: SectionPlan): CoilDrawing {
  const top = plan.y(coil.top);
  const bottom = plan.y(coil.bottom);
  const tubeRadius = Math.max(1.6, Math.min((coil.tubeOutside / 2) * plan.scale, 4.5));
  const half = Math.min((coil.coilDiameter / 2) * plan.scale, plan.radius - tubeRadius - 4);
  const most = Math.max(1, Math.floor((bottom - top - 2 * tubeRadius) / (2 * tubeRadius + 1.4)));
  const wanted = Math.max(1, Math.round(tubeLength(coil) / (Math.PI * coil.coilDiameter)));
  const turns = Math.min(most, wanted);
  const pitch = (bottom - top - 2 * tubeRadius) / turns;
  const [left, right] = [plan.middle - half, plan.middle + half];
  const rightAt = (turn: number) => top + tubeRadius + turn * pitch;
  const leftAt = (turn: number) => rightAt(turn + 0.5);
  const all = Array.from({ length: turns }, (_, turn) => turn);
  const bow = (right - left) * 0.28;
  const farHalves = all
    .map((turn) => {
      const [from, to] = [leftAt(turn), rightAt(turn)];
      const slope = (to - from) * 0.12;
      return (
        `M${left} ${from.toFixed(1)}C${(left + bow).toFixed(1)} ${(from + slope).toFixed(1)} ` +
        `${(right - bow).toFixed(1)} ${(to - slope).toFixed(1)} ${right} ${to.toFixed(1)}`
      );
    })
    .join('');
  return {
    cuts: [
      ...all.map((turn) => ({ x: left, y: leftAt(turn) })),
      ...[...all, turns].map((turn) => ({ x: right, y: rightAt(turn) })),
    ],
    farHalves,
    tubeRadius,
    topEnd: rightAt(0),
    bottomEnd: rightAt(turns),
    right,
    turns,
    isTrueToTurns: turns === wanted && coil.given === 'geometry',
  };
}

/** Tube in the coil as far as it is known; from the area where that is given. */
function tubeLength(coil: Coil): Metres {
  return coil.given === 'area' ? coil.area / (Math.PI * coil.tubeOutside) : coil.length;
}
