import { readFile } from 'node:fs/promises';

/** What reading or writing a file gives: the text, or one sentence on what stands in the way. */
export type Read = { readonly text: string } | { readonly problem: string };

/** The text of a file, or of standard input for `-`. */
export async function readInput(file: string): Promise<Read> {
  try {
    return { text: file === '-' ? await readAll(process.stdin) : await readFile(file, 'utf8') };
  } catch (fault) {
    return { problem: `${nameOf(file)}: ${whyNotRead(fault)}` };
  }
}

/** What a file is called in sentences. */
export function nameOf(file: string): string {
  return file === '-' ? 'standard input' : file;
}

/** Why the system did not let a file be read or written, as a sentence. */
export function whyNotRead(fault: unknown): string {
  const code = (fault as NodeJS.ErrnoException).code ?? '';
  return reasons[code] ?? `it could not be opened (${code || String(fault)}).`;
}

async function readAll(stream: NodeJS.ReadableStream): Promise<string> {
  const pieces: Buffer[] = [];
  for await (const piece of stream) pieces.push(Buffer.from(piece));
  return Buffer.concat(pieces).toString('utf8');
}

const reasons: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder; check the name.',
  EISDIR: 'this is a folder; name a file in it.',
  ENOTDIR: 'part of the path is a file, not a folder.',
  EACCES: 'it may not be opened by this user; check its permissions.',
  EPERM: 'it may not be opened by this user; check its permissions.',
  EROFS: 'the disk cannot be written to; name a file elsewhere.',
  ENOSPC: 'the disk is full.',
  ENAMETOOLONG: 'the name is too long.',
  ELOOP: 'its links lead in a circle.',
};
