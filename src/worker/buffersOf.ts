import type { Result, Study } from '../../shared/result.ts';

/** The memory behind the traces of a result or a study, each piece once: moved, not copied. */
export function buffersOf(found: Result | Study): ArrayBuffer[] {
  if (!('kind' in found)) return tracesOf([found]);
  return found.kind === 'arrangement' ? tracesOf([found.priority, found.simultaneous]) : [];
}

function tracesOf(results: readonly Result[]): ArrayBuffer[] {
  const arrays = results.flatMap(({ trace }) => [
    trace.time,
    trace.layerTemperature,
    ...Object.values(trace.of),
  ]);
  return [...new Set(arrays.map(({ buffer }) => buffer as ArrayBuffer))];
}
