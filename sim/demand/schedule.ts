import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { CubicMetresPerSecond, Seconds } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';

/** A moment at which the draw changes, and the flow from then on. */
export interface DrawEdge {
  readonly at: Seconds;
  readonly flow: CubicMetresPerSecond;
}

/** The draws of a variant by itself: one, or none. */
export function ownDraws(variant: Variant): readonly PatternDraw[] {
  const { volume, flow, startsAt } = variant.draw;
  return volume > 0 ? [{ at: startsAt, volume, flow, name: 'draw' }] : [];
}

/** Edges of a list of draws in order of time; a draw that would begin during another waits for its end. */
export function drawEdges(draws: readonly PatternDraw[]): DrawEdge[] {
  const edges: DrawEdge[] = [];
  let free = 0;
  for (const draw of [...draws].sort((a, b) => a.at - b.at)) {
    const from = Math.max(draw.at, free);
    free = from + draw.volume / draw.flow;
    const last = edges.at(-1);
    if (last && last.at === from) edges.pop();
    edges.push({ at: from, flow: draw.flow }, { at: free, flow: 0 });
  }
  return edges;
}
