/** What stands in a text field while it is being edited, until it is entered, left or dropped. */
export class Draft {
  /** null while nothing is being typed. */
  text = $state<string | null>(null);
  #settled: () => string;
  #onentry: (text: string) => void;

  /**
   * @param settled  what stands there otherwise
   * @param onentry  takes a text that is another than that
   */
  constructor(settled: () => string, onentry: (text: string) => void) {
    this.#settled = settled;
    this.#onentry = onentry;
  }

  get shown(): string {
    return this.text ?? this.#settled();
  }

  enter(): void {
    const { text } = this;
    this.text = null;
    if (text !== null && text !== this.#settled()) this.#onentry(text);
  }

  drop(): void {
    this.text = null;
  }

  /** While a text is being typed, undo is for the text. */
  keepsUndo(event: KeyboardEvent): boolean {
    if (this.text === null || event.key !== 'z' || !(event.ctrlKey || event.metaKey)) return false;
    event.stopPropagation();
    return true;
  }
}
