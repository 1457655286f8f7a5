import { incomingCold } from './coldWater.ts';
import { fieldAt } from './fields.ts';
import { settingText } from './format.ts';
import { boilerProblems } from './problems/boilerFit.ts';
import { coilFitProblems } from './problems/coilFit.ts';
import {
  characteristicProblems,
  compensationProblems,
  programmeProblems,
} from './problems/controls.ts';
import { networkProblems } from './problems/network.ts';
import { colderDrawProblems, drawRangeProblems } from './problems/ownDraws.ts';
import { type Problem, problemAt } from './problems/problem.ts';
import { rangeProblems } from './problems/ranges.ts';
import { ratingProblems } from './problems/rating.ts';
import type { Group, Variant } from './variant.ts';

export { parseNumber } from './problems/parseNumber.ts';
export type { Problem } from './problems/problem.ts';
export { rangeText, settingProblem } from './problems/ranges.ts';

/** Everything about a variant that the user has to put right before it can be run. */
export function problemsOf(variant: Variant): Problem[] {
  const alone = [...rangeProblems(variant), ...drawRangeProblems(variant)];
  const wrong = new Set(alone.map(({ path }) => path?.split('.')[0]));
  // what a wrong setting does to the others is not worth saying until it is right
  const together = checks.flatMap(({ groups, find }) =>
    groups.some((group) => wrong.has(group)) ? [] : find(variant),
  );
  return [...alone, ...together];
}

function startProblems(variant: Variant): Problem[] {
  const { start, draw } = variant;
  if (start.hotShare === 0 || start.hotTemperature >= incomingCold(draw)) return [];
  const cold = settingText('draw.incomingCold', incomingCold(draw));
  const label = fieldAt('start.hotTemperature').label;
  return [
    problemAt(
      'start.hotTemperature',
      'colderThanCold',
      `${label} must be at least ${cold}, the incoming cold; it is ${settingText('start.hotTemperature', start.hotTemperature)}.`,
    ),
  ];
}

/** Nothing can be mixed down to less than the cold that is mixed in. */
function drawProblems({ draw }: Variant): Problem[] {
  const cold = incomingCold(draw);
  if (draw.volume === 0 || draw.taken === 'hot' || draw.mixedTo > cold) return [];
  return [
    problemAt(
      'draw.mixedTo',
      'notAboveCold',
      `${fieldAt('draw.mixedTo').label} must be above ${settingText('draw.incomingCold', cold)}, the incoming cold; it is ${settingText('draw.mixedTo', draw.mixedTo)}.`,
    ),
  ];
}

/** Checks of several settings against each other, and the groups they read. */
const checks: readonly {
  readonly groups: readonly Group[];
  readonly find: (variant: Variant) => Problem[];
}[] = [
  { groups: ['coil', 'secondCoil', 'cylinder'], find: coilFitProblems },
  { groups: ['coil', 'secondCoil'], find: ratingProblems },
  { groups: ['start', 'draw'], find: startProblems },
  { groups: ['draw'], find: drawProblems },
  { groups: ['draw', 'day'], find: colderDrawProblems },
  { groups: ['boiler', 'heating'], find: boilerProblems },
  { groups: ['primary', 'coil', 'secondCoil'], find: networkProblems },
  { groups: ['programme'], find: programmeProblems },
  { groups: ['boiler', 'heating'], find: compensationProblems },
  { groups: ['sensor'], find: characteristicProblems },
];
