import { WARMEST } from '../../shared/conventions.ts';
import { cosineOfTurns } from '../../shared/portableMaths.ts';
import type { Celsius, Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';

/** Outside air, °C: constant, or a daily wave. @param clock  s after midnight */
export function outsideAt({ outside, outsideSwing }: Variant['house'], clock: Seconds): Celsius {
  if (outsideSwing === 0) return outside;
  return outside + outsideSwing * cosineOfTurns((clock - WARMEST) / DAY);
}

const DAY = 86_400; // s
