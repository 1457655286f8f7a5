import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';

/** The draws of a variant by itself: one, or none. */
export function ownDraws({ draw }: Variant): readonly PatternDraw[] {
  const { volume, flow, startsAt, taken, mixedTo } = draw;
  if (volume <= 0) return [];
  const one = { at: startsAt, volume, flow, name: 'draw' };
  return [taken === 'mixed' ? { ...one, mixedTo } : one];
}

/** Draws that wait for their time. One that is due during another waits for its end. */
export class Waiting {
  readonly #draws: PatternDraw[];

  constructor(draws: readonly PatternDraw[]) {
    this.#draws = [...draws].sort((a, b) => a.at - b.at);
  }

  /** When the next is due, s; never when there is none. */
  get next(): Seconds {
    return this.#draws.length > 0 ? this.#draws[0].at : Number.POSITIVE_INFINITY;
  }

  /** Takes the next. */
  take(): PatternDraw {
    const [draw] = this.#draws.splice(0, 1);
    return draw;
  }

  /** Those that are left. */
  get left(): readonly PatternDraw[] {
    return this.#draws;
  }
}
