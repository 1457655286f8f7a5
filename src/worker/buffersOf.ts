import type { Result, Study } from '../../shared/result.ts';

/** The memory behind the traces of a result or a study, each piece once: moved, not copied. */
export function buffersOf(found: Result | Study): ArrayBuffer[] {
  if (!('kind' in found)) return tracesOf([found]);
  if (found.kind === 'arrangement') return tracesOf([found.priority, found.simultaneous]);
  return found.kind === 'day' ? tracesOf([found.day]) : [];
}

function tracesOf(results: readonly { readonly trace: Result['trace'] }[]): ArrayBuffer[] {
  const arrays = results.flatMap(({ trace }) => [
    trace.time,
    trace.layerTemperature,
    ...Object.values(trace.of),
  ]);
  return [...new Set(arrays.map(({ buffer }) => buffer as ArrayBuffer))];
}
