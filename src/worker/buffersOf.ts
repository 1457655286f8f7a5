import type { Result } from '../../shared/result.ts';
import type { Study } from '../../shared/study.ts';

/** The memory behind the traces of a result or a study, each piece once: moved, not copied. */
export function buffersOf(found: Result | Study): ArrayBuffer[] {
  if (!('kind' in found)) return tracesOf([found]);
  switch (found.kind) {
    case 'arrangement':
      return tracesOf([found.priority, found.simultaneous]);
    case 'day':
      return tracesOf([found.day]);
    case 'coolDown':
      return piecesOf([found.time, found.top, found.mean, found.bottom, found.loss]);
    case 'spread':
      return piecesOf([
        found.time,
        found.lowReading,
        found.medianReading,
        found.highReading,
        found.recoveries,
      ]);
    default:
      return [];
  }
}

function tracesOf(results: readonly { readonly trace: Result['trace'] }[]): ArrayBuffer[] {
  const arrays = results.flatMap(({ trace }) => [
    trace.time,
    trace.layerTemperature,
    ...Object.values(trace.of),
  ]);
  return piecesOf(arrays);
}

function piecesOf(arrays: readonly Float64Array[]): ArrayBuffer[] {
  return [...new Set(arrays.map(({ buffer }) => buffer as ArrayBuffer))];
}
