import { type FileHandle, open } from 'node:fs/promises';
import type { Writable } from 'node:stream';

/** Where rows go. */
export interface Sink {
  readonly write: (text: string) => Promise<void>;
  readonly close: () => Promise<void>;
}

/** Rows after those that a file has. @param bytes  of it that are kept */
export async function fileSink(file: string, bytes: number): Promise<Sink> {
  const handle: FileHandle = await open(file, 'a');
  await handle.truncate(bytes);
  return { write: (text) => handle.appendFile(text), close: () => handle.close() };
}

/** Rows on a stream; the next waits until one has been taken. */
export function streamSink(stream: Writable): Sink {
  return {
    write: (text) =>
      new Promise((settle, fail) => {
        stream.write(text, (fault) => (fault ? fail(fault) : settle()));
      }),
    close: async () => {},
  };
}
