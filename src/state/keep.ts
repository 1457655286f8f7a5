/** A place that outlives a reload. Reading and writing never throw; `works` says whether they do. */
export interface Keep {
  readonly works: boolean;
  read(key: string): string | null;
  write(key: string, text: string): boolean;
}

/**
 * The browser's own place. It may be switched off or full, so each use may fail.
 * @param storage  gives the place; throws where there is none
 */
export function browserKeep(storage: () => Storage = () => localStorage): Keep {
  const attempt = <T>(use: (place: Storage) => T, otherwise: T): T => {
    try {
      return use(storage());
    } catch {
      return otherwise;
    }
  };
  const write = (key: string, text: string) =>
    attempt((place) => {
      place.setItem(key, text);
      return true;
    }, false);
  return {
    works: write('reheat-bench check', 'works'),
    read: (key) => attempt((place) => place.getItem(key), null),
    write,
  };
}
