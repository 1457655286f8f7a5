import type { Variant } from '../../shared/variant.ts';
import type { Keep } from './keep.ts';

/** What was found from last time: nothing, a variant with when it was kept, or a sentence about why not. */
export type Kept =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'variant'; readonly variant: Variant; readonly at: Date }
  | { readonly kind: 'unreadable'; readonly message: string };

/** Whether a last visit left anything to read. */
export function holdsBench(keep: Keep): boolean {
  return keep.read(KEY) !== null;
}

/** Reads the bench of the last visit. */
export async function readBench(keep: Keep): Promise<Kept> {
  const text = keep.read(KEY);
  if (text === null) return { kind: 'nothing' };
  const { fromText } = await codec();
  const line = text.indexOf('\n');
  const at = new Date(text.slice(0, line));
  const found = fromText(text.slice(line + 1));
  if ('variant' in found && !Number.isNaN(at.getTime())) {
    return { kind: 'variant', variant: found.variant, at };
  }
  return {
    kind: 'unreadable',
    message: 'What was kept from last time cannot be read any more. A worked example is shown.',
  };
}

/** Keeps the bench for the next visit: the time, then the same text a file has. */
export async function keepBench(keep: Keep, variant: Variant, at: Date): Promise<boolean> {
  const { toText } = await codec();
  return keep.write(KEY, `${at.toISOString()}\n${toText(variant)}`);
}

// asked for once: after that a page that is being left still keeps its last change
let fetched: Promise<typeof import('../../shared/codec.ts')> | undefined;
function codec() {
  fetched ??= import('../../shared/codec.ts');
  return fetched;
}

const KEY = 'reheat-bench variant';
