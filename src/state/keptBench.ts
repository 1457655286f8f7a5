import type { BenchSet } from '../../shared/codec/bench.ts';
import type { Keep } from './keep.ts';

/** What was found from last time: nothing, a bench with when it was kept, or a sentence about why not. */
export type Kept =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'bench'; readonly bench: BenchSet; readonly at: Date }
  | { readonly kind: 'unreadable'; readonly message: string };

/** Whether a last visit left anything to read. */
export function holdsBench(keep: Keep): boolean {
  return keep.read(KEY) !== null;
}

/** Reads the bench of the last visit. */
export async function readBench(keep: Keep): Promise<Kept> {
  const text = keep.read(KEY);
  if (text === null) return { kind: 'nothing' };
  const { benchFromText } = await codec();
  const line = text.indexOf('\n');
  const at = new Date(text.slice(0, line));
  const found = benchFromText(text.slice(line + 1));
  if ('variants' in found && !Number.isNaN(at.getTime())) {
    return { kind: 'bench', bench: found, at };
  }
  return {
    kind: 'unreadable',
    message: 'What was kept from last time cannot be read any more. A worked example is shown.',
  };
}

/** Keeps the bench for the next visit: the time, then the same text a file has. A bench that could not be read again is not kept. */
export async function keepBench(keep: Keep, bench: BenchSet, at: Date): Promise<boolean> {
  const { benchToText, problemsOf } = await codec();
  if (bench.variants.some((variant) => problemsOf(variant).length > 0)) return false;
  return keep.write(KEY, `${at.toISOString()}\n${benchToText(bench)}`);
}

// asked for once: after that a page that is being left still keeps its last change
let fetched: Promise<typeof import('./benchText.ts')> | undefined;
function codec() {
  fetched ??= import('./benchText.ts');
  return fetched;
}

const KEY = 'reheat-bench variant';
