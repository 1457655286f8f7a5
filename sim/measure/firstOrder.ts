/**
 * Part of the variance of an output that each input alone explains (first-order indices), from one sample of runs.
 * Each input is cut into equal bins, and the output is taken apart into a mean and one effect for each bin of each input,
 * all of them together, so that the others do not blur one. What no single input explains is scatter: of it a bin's mean
 * keeps some by chance, which is taken off. What an effect does inside a bin is added as a straight line between the
 * bins beside it.
 * @param inputs  [input] [run] 0 to 1, as many runs in one bin as in another
 * @param output  [run]
 * @returns       [input] 0 to 1; all 0 where nothing scatters
 */
// source: Plischke, Borgonovo and Smith 2013, indices from given data by bins; effects fitted together as in
// Hastie and Tibshirani 1990 (backfitting); both from memory
export function firstOrder(
  inputs: readonly Float64Array[],
  output: Float64Array,
  bins = binsFor(output.length),
): number[] {
  const runs = output.length;
  const mean = output.reduce((sum, value) => sum + value, 0) / runs;
  const left = output.map((value) => value - mean);
  const variance = meanSquare(left);
  if (!(variance > mean * mean * ROUNDING)) return inputs.map(() => 0);

  const binOf = inputs.map((input) => Int32Array.from(input, (value) => binAt(value, bins)));
  const effects = inputs.map(() => new Float64Array(bins));
  for (let sweep = 0; sweep < SWEEPS; sweep++) {
    for (const [input, bin] of binOf.entries()) takeOff(bin, left, effects[input]);
  }
  const freedom = runs - 1 - inputs.length * (bins - 1);
  const scatter = freedom > 0 ? (meanSquare(left) * runs) / freedom : 0;
  const inBin = (scatter * bins) / runs; // of the mean of one bin, by chance
  return effects.map((effect, input) => {
    const explained = meanSquare(Float64Array.from(binOf[input], (bin) => effect[bin]));
    const slopes = slopesOf(effect);
    const inside = (meanSquare(slopes) - inBin / 2) / 12;
    const found = explained - (inBin * (bins - 1)) / bins + Math.max(0, inside);
    return Math.min(1, Math.max(0, found) / variance);
  });
}

/** Bins for so many runs: enough for the shape of an effect, with as many runs in each again. */
function binsFor(runs: number): number {
  let bins = 1;
  while (4 * bins * bins <= runs) bins *= 2;
  return bins;
}

/** Moves the mean of what is left in each bin into the effect of that bin. */
function takeOff(bin: Int32Array, left: Float64Array, effect: Float64Array): void {
  const sum = new Float64Array(effect.length);
  const count = new Float64Array(effect.length);
  for (let run = 0; run < left.length; run++) {
    sum[bin[run]] += left[run];
    count[bin[run]] += 1;
  }
  for (let one = 0; one < effect.length; one++) {
    if (count[one] > 0) effect[one] += sum[one] / count[one];
  }
  for (let run = 0; run < left.length; run++) left[run] -= sum[bin[run]] / count[bin[run]];
}

/** How much an effect rises over each bin, from the bins beside it. */
function slopesOf(effect: Float64Array): Float64Array {
  const last = effect.length - 1;
  return effect.map((_, bin) => {
    const [from, to] = [Math.max(0, bin - 1), Math.min(last, bin + 1)];
    return to > from ? (effect[to] - effect[from]) / (to - from) : 0;
  });
}

function binAt(value: number, bins: number): number {
  return Math.min(bins - 1, Math.floor(value * bins));
}

function meanSquare(values: Float64Array): number {
  return values.reduce((sum, value) => sum + value * value, 0) / values.length;
}

const SWEEPS = 12; // an even sample is nearly done after two
const ROUNDING = 1e-20; // of the square of the mean
