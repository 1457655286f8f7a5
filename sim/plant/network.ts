import { rootBetween } from '../../shared/rootBetween.ts';
import type { CubicMetresPerSecond, Pascals } from '../../shared/units.ts';

/** Pressure lost at a flow, Pa: finite and never falling with the flow, or infinite where all is shut. */
export type Drop = (volumeFlow: CubicMetresPerSecond) => Pascals;

/**
 * Flow of each branch of a circuit, m³/s: a circulator pushes through what all the water passes (boiler
 * and shared pipe), then through the branches side by side, which all have the same pressure
 * across them. Within 1e-6 of each flow.
 * @param pump         pressure added at a flow, Pa, never rising with it
 * @param common       what all the water passes
 * @param branches     those that are open; one that is shut in itself (infinite drop) gets 0
 * @param largestFlow  m³/s, at which the pump adds nothing
 * @returns            [branch], m³/s; all 0 when the pump adds nothing or nothing can pass
 */
export function networkFlows(
  pump: (volumeFlow: CubicMetresPerSecond) => Pascals,
  common: Drop,
  branches: readonly Drop[],
  largestFlow: CubicMetresPerSecond,
): number[] {
  if (pump(largestFlow) > 0) {
    throw new Error(`pump adds ${pump(largestFlow)} Pa at its largest flow; expected 0`);
  }
  for (const branch of branches) {
    if (!(branch(largestFlow) > 0)) {
      throw new Error(`branch loses ${branch(largestFlow)} Pa at ${largestFlow}; expected above 0`);
    }
  }
  const most = pump(0);
  const isShut = common(largestFlow) === Number.POSITIVE_INFINITY;
  if (isShut || most <= common(0)) return branches.map(() => 0);

  const flowsAt = (pressure: Pascals) =>
    branches.map((branch) => flowThrough(branch, pressure, largestFlow));
  // What is left of the pump's pressure once the branches have had theirs: falls with it
  const left = (pressure: Pascals): Pascals => {
    const total = flowsAt(pressure).reduce((sum, flow) => sum + flow, 0);
    return pump(total) - common(total) - pressure;
  };
  return flowsAt(rootBetween(left, 0, most, CLOSENESS * most));
}

/** Flow that loses a pressure in a branch, m³/s, and the largest flow where that loses less. */
function flowThrough(
  branch: Drop,
  pressure: Pascals,
  largestFlow: CubicMetresPerSecond,
): CubicMetresPerSecond {
  const atLargest = branch(largestFlow);
  if (atLargest === Number.POSITIVE_INFINITY || branch(0) >= pressure) return 0;
  if (atLargest <= pressure) return largestFlow;
  return rootBetween((flow) => branch(flow) - pressure, 0, largestFlow, CLOSENESS * largestFlow);
}

/**
 * Of the whole range, pure number. Far below the 1e-6 that is promised, so that a branch that passes
 * a millionth of the flow keeps it too; the last steps to it are quick.
 */
const CLOSENESS = 1e-16;
