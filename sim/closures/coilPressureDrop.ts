import type { CubicMetresPerSecond, Metres, Pascals } from '../../shared/units.ts';
import { curvedFriction } from './curvedFriction.ts';
import { boreVelocity, darcyWeisbach } from './pipeFriction.ts';

/** A tube wound to a helix. */
export interface WoundTube {
  readonly bore: Metres;
  /** Of the turns, on the centre line of the tube. */
  readonly coilDiameter: Metres;
  /** Of the tube along its turns. */
  readonly length: Metres;
}

/**
 * Pressure lost to friction along a coil, Pa. Continuous and rising with the flow. Its two ends and
 * their fittings are not in it. The formula is that of the straight pipe (`pipePressureDropRecord`)
 * with the friction factor of the coil.
 * @param coil        smooth inside
 * @param volumeFlow  m³/s, not negative
 * @param density     kg/m³
 * @param viscosity   Pa s
 */
export function coilPressureDrop(
  coil: WoundTube,
  volumeFlow: CubicMetresPerSecond,
  density: number,
  viscosity: number,
): Pascals {
  if (volumeFlow === 0) return 0;
  const { bore, coilDiameter, length } = coil;
  const velocity = boreVelocity(bore, volumeFlow);
  const f = curvedFriction((density * velocity * bore) / viscosity, bore / coilDiameter);
  return darcyWeisbach(f, length, bore, density, velocity);
}
