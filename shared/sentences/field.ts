import { duration, litres } from '../format.ts';
import type { Result } from '../result.ts';
import type { Celsius, CubicMetres, Seconds } from '../units.ts';
import { type FigureWords, type Sentence, say } from './sentence.ts';

/** Water people wash with, °C; the least that counts as usable. */
const warm: Celsius = 40;

/** What the field of height against time says: when half of the store is warm, and what never is. */
export function fieldFinding(result: Result): FigureWords {
  const { never, atStart, halfAfter } = warmWater(result);
  const left = never > 0 ? `${litres(never)} never do` : 'in the end all of it does';
  return {
    heading: heading(result, atStart, halfAfter, left),
    summary: [
      say`A line every 10 °C, hatched below 40 °C. Where the lines stand upright the water warms all together; where they lie flat it stays in layers.`,
    ],
  };
}

function heading(
  result: Result,
  atStart: CubicMetres,
  halfAfter: Seconds | null,
  left: string,
): Sentence {
  if (halfAfter === null) {
    return say`Less than half of the store passes 40 °C within ${duration(result.outcome.at)}.`;
  }
  if (halfAfter > 0)
    return say`Half of the store passes 40 °C after ${duration(halfAfter)}; ${left}.`;
  return say`At the start ${litres(atStart)} are at 40 °C or more; of the rest, ${left}.`;
}

interface WarmWater {
  /** Water that is below 40 °C all through the run. */
  readonly never: CubicMetres;
  /** Water at 40 °C or more at the start. */
  readonly atStart: CubicMetres;
  /** First sample at which half of the layers are at 40 °C or more. */
  readonly halfAfter: Seconds | null;
}

function warmWater({ trace, variant }: Result): WarmWater {
  const { layers, samples, time, layerTemperature: T } = trace;
  const isEver = new Array<boolean>(layers).fill(false);
  let halfAfter: Seconds | null = null;
  let atStart = 0;
  for (let sample = 0; sample < samples; sample += 1) {
    let count = 0;
    for (let layer = 0; layer < layers; layer += 1) {
      if (T[sample * layers + layer] < warm) continue;
      isEver[layer] = true;
      count += 1;
    }
    if (sample === 0) atStart = count;
    if (halfAfter === null && count >= layers / 2) halfAfter = time[sample];
  }
  const share = variant.cylinder.volume / layers;
  const never = isEver.filter((each) => !each).length * share;
  return { never, atStart: atStart * share, halfAfter };
}
