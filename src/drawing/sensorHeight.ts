import { fieldAt } from '../../shared/fields.ts';
import type { Metres } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';

/** Where the sensor of a variant may stand, m. */
export interface SensorReach {
  readonly least: Metres;
  readonly most: Metres;
  readonly step: Metres;
}

/** Lowest and highest place of the sensor and the step it is moved by: those of its setting, within the cylinder. */
export function sensorReach(variant: Variant): SensorReach {
  const field = fieldAt('stat.sensorHeight');
  if (field.kind !== 'number') throw new Error('sensor height is a choice; expected a number');
  const { least, most, step } = field;
  const within = Math.floor(variant.cylinder.height / step + 1e-9) * step;
  return { least, most: Number(Math.min(most, within).toFixed(6)), step };
}

/** The nearest height the sensor may stand at, m. */
export function settledHeight(height: Metres, { least, most, step }: SensorReach): Metres {
  const stepped = Math.round(height / step) * step;
  return Number(Math.min(most, Math.max(least, stepped)).toFixed(6));
}

/**
 * The height a key puts the sensor to, or null for a key that does not move it: one step up or
 * down, ten with Page, the limits with Home and End.
 */
export function keyedHeight(key: string, height: Metres, reach: SensorReach): Metres | null {
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: 1,
    ArrowRight: 1,
    ArrowDown: -1,
    ArrowLeft: -1,
    PageUp: 10,
    PageDown: -10,
  };
  if (key === 'Home') return reach.least;
  if (key === 'End') return reach.most;
  const count = steps[key];
  return count === undefined ? null : settledHeight(height + count * reach.step, reach);
}
