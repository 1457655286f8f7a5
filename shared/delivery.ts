import type { Celsius, CubicMetres, Seconds } from './units.ts';

/** What the store delivers, by draws that are simulated. */
export interface Delivered {
  readonly moments: readonly DeliveredAt[];
  /** Null where the stat is never satisfied. */
  readonly firstHour: FirstHour | null;
}

/** Mixed water at 40 °C at one moment of a run, nothing heating it. */
export interface DeliveredAt {
  readonly when: 'start' | 'satisfied' | 'called';
  readonly at: Seconds;
  /** From the layers at that moment. */
  readonly estimate: CubicMetres;
  /** Drawn at 10 l/min until the outlet falls to 40 °C. */
  readonly drawn: CubicMetres;
}

/** Hot water in the first hour, with the boiler at work. */
export interface FirstHour {
  readonly volume: CubicMetres;
  /** Draws it took, the last at the full hour included. */
  readonly draws: number;
  /** Mean of what was delivered. */
  readonly mean: Celsius;
  /** One draw went on for as long as it was watched: the boiler keeps up with it. */
  readonly isSustained: boolean;
}

/** Flow at which usable water is drawn, m³/s: 10 l/min. Source: EN 16147, from memory. */
export const DELIVERY_FLOW = 0.01 / 60;

/** Conditions of the first hour. Source: 10 CFR 430 Subpart B Appendix E, from memory. */
export const FIRST_HOUR = {
  /** 3.0 US gallons a minute, m³/s. */
  flow: (3 * 3.785411784e-3) / 60,
  /** 58 °F. */
  cold: (58 - 32) / 1.8,
  /** A draw ends when the outlet has fallen by 15 °F, K. */
  fall: 15 / 1.8,
} as const;
