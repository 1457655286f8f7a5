import type { Joules, Watts, WattsPerKelvin } from './units.ts';
import type { Cylinder } from './variant.ts';

/** A standing loss beside the published bounds. */
export interface LossStanding {
  /** With the store 45 K above its surroundings. */
  readonly loss: Watts;
  readonly perKelvin: WattsPerKelvin;
  /** Null above 500 l, where the label ends. */
  readonly energyClass: Cylinder['lossClass'] | 'G' | null;
  /** The next better class and the loss below which a store is in it; null where there is none. */
  readonly better: { readonly energyClass: Cylinder['lossClass']; readonly bound: Watts } | null;
  /** Of new cylinders in the European Union: the most class C allows. */
  readonly limit: Watts;
  readonly isAboveLimit: boolean;
  /** Of the United Kingdom guides, in 24 h; null above 500 l, where they end. */
  readonly guide: Joules | null;
}
