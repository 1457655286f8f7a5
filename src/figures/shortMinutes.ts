import { duration, figure } from '../../shared/format.ts';

/** Minutes of a stretch without their unit, which the axis of its strip names. */
export function shortMinutes({ from, to }: { readonly from: number; readonly to: number }): string {
  const seconds = to - from;
  return seconds < 7200 ? figure(seconds / 60, 1) : duration(seconds);
}
