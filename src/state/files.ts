import { fromText, toText } from '../../shared/codec.ts';
import type { Problem } from '../../shared/problems.ts';
import type { Variant } from '../../shared/variant.ts';
import { saveText } from './saveText.ts';

/** What came of opening a file. */
export type Opened =
  | { readonly variant: Variant }
  | { readonly fileName: string; readonly problems: readonly Problem[] };

/** Hands the user the variant as a file. */
export function saveFile(variant: Variant): void {
  saveText(fileNameOf(variant), 'application/json', toText(variant));
}

/** Reads a variant from a file the user chose. */
export async function openFile(file: File): Promise<Opened> {
  const fileName = file.name;
  if (file.size > LARGEST) {
    const message = `${fileName} holds ${Math.round(file.size / 1e6)} MB; a bench needs a few kilobytes.`;
    return { fileName, problems: [{ field: '', path: null, code: 'tooLarge', message }] };
  }
  const found = fromText(await file.text());
  return 'variant' in found ? found : { fileName, problems: found.problems };
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
