import type { Result } from '../../shared/result.ts';
import type { Spread } from '../../shared/spread.ts';
import { sameSettings } from '../state/settingsText.ts';

/** A spread that may be drawn round a result: of the same installation, and all of it known; else null. */
export function presentSpread(found: Spread | null, result: Result | null): Spread | null {
  if (found === null || result === null || found.runs < found.of) return null;
  return sameSettings(found.variant, result.variant) ? found : null;
}
