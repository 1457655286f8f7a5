import { fieldAt } from '../fields.ts';
import { fittedCoils } from '../fittedCoils.ts';
import type { Variant } from '../variant.ts';
import { type Problem, problemAt } from './problem.ts';

/** Whether the way through the coil resists at all: a circulator against nothing has no flow that could be computed. */
export function networkProblems(variant: Variant): Problem[] {
  const { primary } = variant;
  if (primary.flowFrom === 'given') return [];
  const resists =
    primary.length > 0 ||
    primary.bends > 0 ||
    primary.valveDrop > 0 ||
    primary.coilBranchDrop > 0 ||
    fittedCoils(variant).some(({ given }) => given !== 'conductance');
  if (resists) return [];
  return [
    problemAt(
      'primary.length',
      'nothingResists',
      `${fieldAt('primary.length').label} is 0 m, there are no bends, and valve and coil have no resistance: give the pipe a length or the valve a resistance, or set the primary flow to a known flow.`,
    ),
  ];
}
