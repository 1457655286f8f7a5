import { arrangementOf } from '../arrangements.ts';
import { fieldAt } from '../fields.ts';
import { celsius, settingText } from '../format.ts';
import type { FieldPath, Variant } from '../variant.ts';
import { type Problem, problemAt } from './problem.ts';

/** Whether the boiler's outputs and temperatures fit each other. */
export function boilerProblems(variant: Variant): Problem[] {
  const { boiler } = variant;
  if (boiler.model === 'ideal') return [];
  const found: Problem[] = [];
  if (boiler.minimumOutput > boiler.output) {
    found.push(
      problemAt(
        'boiler.minimumOutput',
        'minimumAboveMaximum',
        `${label('boiler.minimumOutput')} must be at most ${settingText('boiler.output', boiler.output)}, the boiler output; it is ${settingText('boiler.minimumOutput', boiler.minimumOutput)}.`,
      ),
    );
  }
  for (const path of targetsInUse(variant)) {
    const target = path === 'boiler.hotWaterFlow' ? boiler.hotWaterFlow : boiler.heatingFlow;
    const most = boiler.highLimit - boiler.offMargin;
    if (target < most) continue;
    found.push(
      problemAt(
        path,
        'aboveSafetyLimit',
        `${label(path)} must be below ${celsius(most)}: the burner goes off ${settingText('boiler.offMargin', boiler.offMargin)} above it, and the safety limiter locks the boiler out at ${settingText('boiler.highLimit', boiler.highLimit)}. Lower the target; leave the limiter alone.`,
      ),
    );
  }
  return found;
}

/** Targets that this installation keeps. */
function targetsInUse({ boiler, heating }: Variant): FieldPath[] {
  const heats = arrangementOf(heating.arrangement).heated || boiler.targets === 'shared';
  const paths: FieldPath[] = boiler.targets === 'separate' ? ['boiler.hotWaterFlow'] : [];
  return heats ? [...paths, 'boiler.heatingFlow'] : paths;
}

function label(path: FieldPath): string {
  return fieldAt(path).label;
}
