/** Where in the program the user is, as the fragment of the address says: `#lessons/turn-down`, none for the bench. */
export class Destination {
  /** First part of the fragment; empty for the bench. */
  key = $state('');
  /** What follows it, such as the lesson; null where nothing does. */
  rest = $state<string | null>(null);
  #known: readonly string[];

  /** @param known  keys besides the bench's */
  constructor(known: readonly string[], fragment: string) {
    this.#known = known;
    this.read(fragment);
  }

  /** Takes up a fragment, with or without its `#`; one that is not known means the bench. */
  read(fragment: string): void {
    const [, key, rest] = /^#?([^/]*)\/?(.*)$/.exec(fragment) ?? [];
    this.key = this.#known.includes(key) ? key : '';
    this.rest = (this.key && rest) || null;
  }
}
