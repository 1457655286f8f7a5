import { benchFromText, type BenchSet, benchToText } from '../../shared/codec/bench.ts';
import type { Problem } from '../../shared/problems.ts';
import type { Variant } from '../../shared/variant.ts';
import { saveText } from './saveText.ts';

/** What came of opening a file. */
export type Opened =
  | { readonly bench: BenchSet }
  | { readonly fileName: string; readonly problems: readonly Problem[] };

/** Hands the user the bench as a file, called after the variant in hand. */
export function saveFile(bench: BenchSet): void {
  saveText(fileNameOf(bench.variants[bench.inHand]), 'application/json', benchToText(bench));
}

/** Reads a bench, or one variant, from a file the user chose. */
export async function openFile(file: File): Promise<Opened> {
  const fileName = file.name;
  if (file.size > LARGEST) {
    const message = `${fileName} holds ${Math.round(file.size / 1e6)} MB; a bench needs a few kilobytes.`;
    return { fileName, problems: [{ field: '', path: null, code: 'tooLarge', message }] };
  }
  const found = benchFromText(await file.text());
  return 'variants' in found ? { bench: found } : { fileName, problems: found.problems };
}

/** The name of a variant as a file name: letters and figures, the rest as hyphens. */
export function fileNameOf(variant: Variant): string {
  const plain = variant.name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '');
  return `${plain || 'bench'}.json`;
}

const LARGEST = 1e6; // bytes; a bench takes about 3000
