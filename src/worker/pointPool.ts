import type { Asked } from '../../shared/asked.ts';
import type { Override } from '../../shared/grid.ts';
import type { Point } from '../../shared/point.ts';
import type { Variant } from '../../shared/variant.ts';
import { Pool } from './pool.ts';
import { workerCount } from './workerCount.ts';

/** What the points of a task have in common: the variant, and the measures asked of each. */
export interface PointJob {
  readonly base: Variant;
  readonly asked: readonly Asked[];
}

/** What sets a point apart: the settings that are put to other values. */
export type PointAsked = readonly Override[];

/** Workers that compute points. */
export type PointPool = Pool<PointJob, PointAsked, Point>;

/** The pool of this machine. No worker is started before it is woken, or there is something to compute. */
export function pointPool(): PointPool {
  return new Pool(startPointWorker, workerCount(navigator.hardwareConcurrency));
}

/** Starts a worker that computes points. */
export function startPointWorker(): Worker {
  return new Worker(new URL('./points.worker.ts', import.meta.url), { type: 'module' });
}
