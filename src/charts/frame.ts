import type { Scale } from './scale.ts';
import { createContext } from 'svelte';

/** One rectangle of a figure with its scales, in pixels of the drawing. */
export interface Frame {
  /** Seconds (or what else lies along) to pixels. */
  readonly x: Scale;
  /** The value, in the unit of the axis title, to pixels. */
  readonly y: Scale;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** A frame that knows how large its text is set. */
export interface SizedFrame extends Frame {
  /** Of its text, pixels; 12 but where type is raised for a room. */
  readonly size: number;
}

/** Handed down by `Frame.svelte`, read by everything drawn inside it. */
export const [frameHere, setFrame] = createContext<SizedFrame>();
