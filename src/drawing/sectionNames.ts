import { incomingCold } from '../../shared/coldWater.ts';
import { figure, litres, metres } from '../../shared/format.ts';
import type { Metres } from '../../shared/units.ts';
import type { Coil, Variant } from '../../shared/variant.ts';
import { spread } from '../charts/endLabels.ts';
import type { CoilDrawing } from './coilDrawing.ts';
import type { SectionPlan } from './sectionPlan.ts';

/** What stands beside the section at one moment; NaN where it has no value. */
export interface Readings {
  readonly flow: number;
  readonly back: number;
  readonly usable: number;
}

/** A coil with its drawing. */
export interface DrawnCoil {
  readonly coil: Coil;
  readonly drawing: CoilDrawing;
}

/** A name beside the section, at the height `y` it belongs to and the height `at` where it stands. */
export interface SectionName {
  readonly key: string;
  readonly text: string;
  readonly value: string;
  readonly y: number;
  readonly at: number;
  /** Arrow out of the cylinder or into it; none for a dimension. */
  readonly arrow: 'out' | 'in' | null;
}

const rowHeight = 15;

/**
 * Names to the right of the section, kept apart: hot, flow, coils, return, cold.
 * @param coils  from the bottom up
 */
export function sectionNames(
  variant: Variant,
  coils: readonly DrawnCoil[],
  plan: SectionPlan,
  readings: Readings,
): SectionName[] {
  const isNarrow = plan.heightLine === null;
  const { flow, back } = primaryEnds(coils);
  const number = (value: number) => (Number.isNaN(value) ? '' : figure(value, 0));
  const wishes: Omit<SectionName, 'at'>[] = [
    { key: 'flow', text: 'flow', value: number(readings.flow), y: flow, arrow: 'in' },
    { key: 'return', text: 'return', value: number(readings.back), y: back, arrow: 'out' },
    {
      key: 'cold',
      text: 'cold',
      value: figure(incomingCold(variant.draw), 0),
      y: plan.cold,
      arrow: 'in',
    },
  ];
  if (!isNarrow) {
    for (const [index, { coil, drawing }] of coils.entries()) {
      const centre = (drawing.topEnd + drawing.bottomEnd) / 2;
      const rows = [`coil ${metres(coil.top - coil.bottom)}`, coilSize(coil)];
      for (const [row, text] of rows.entries()) {
        wishes.push({
          key: `coil${index}.${row}`,
          text,
          value: '',
          y: centre + (row - 0.5) * rowHeight,
          arrow: null,
        });
      }
    }
  }
  const places = spread(
    wishes.map((wish) => wish.y),
    rowHeight,
    plan.y(variant.cylinder.height) + 4,
    plan.height,
  );
  const hot = hotPipe(variant.cylinder.height, plan);
  const names = wishes.map((wish, index) => ({ ...wish, at: places[index] }));
  names.push({ key: 'hot', text: 'hot out', value: '', y: hot, at: hot, arrow: 'out' });
  if (!isNarrow) {
    const usable = `${litres(readings.usable)} at 40 °C`;
    names.push({ key: 'usable', text: usable, value: '', y: hot + 15, at: hot + 15, arrow: null });
  }
  return names;
}

/** Heights at which the primary water enters the first coil and leaves the last, pixels. */
function primaryEnds(coils: readonly DrawnCoil[]): { flow: number; back: number } {
  const lowest = coils[0];
  const highest = coils[coils.length - 1];
  const fromTop = lowest.coil.flowEnters === 'top';
  return fromTop
    ? { flow: highest.drawing.topEnd, back: lowest.drawing.bottomEnd }
    : { flow: lowest.drawing.bottomEnd, back: highest.drawing.topEnd };
}

/** Middle of the hot pipe, pixels. */
function hotPipe(cylinderHeight: Metres, plan: SectionPlan): number {
  const thick = plan.outer - plan.radius;
  return plan.y(cylinderHeight) - thick - (plan.heightLine === null ? 18 : 24) + 4;
}

function coilSize(coil: Coil): string {
  if (coil.given === 'geometry') return `${figure(coil.length)} m of tube`;
  if (coil.given === 'area') return `${figure(coil.area)} m²`;
  if (coil.given === 'rating') return `rated ${figure(coil.ratedOutput / 1000)} kW`;
  return `${figure(coil.conductance)} W/K`;
}
