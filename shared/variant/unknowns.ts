import type { Kelvins, Metres, Share } from '../units.ts';

/** How far what is set may be off, either way; 0 where it is known. */
export interface Unknowns {
  /** Of the conductance of a coil known by its tube or area. */
  readonly coil: Share;
  /** Of the conductance of a coil known by its rating or as such. */
  readonly ratedCoil: Share;
  /** A thickness of scale lies between what is set divided by one more than this, and multiplied by it. */
  readonly scale: Share;
  /** The most that may sit on a coil set as clean. */
  readonly hiddenScale: Metres;
  readonly primaryFlow: Share;
  readonly cold: Kelvins;
  /** As of the scale. */
  readonly lag: Share;
}
