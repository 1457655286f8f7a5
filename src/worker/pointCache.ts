import type { Asked } from '../../shared/asked.ts';
import { defaultOf, type Field, fields } from '../../shared/fields.ts';
import { exampleDraws } from '../../shared/ownDraws.ts';
import type { Entry } from '../../shared/point.ts';
import { type FieldPath, settingOf, type Variant } from '../../shared/variant.ts';

/** The value of one measure for one variant, SI, or why there is none. */
export type Cell = Entry;

/**
 * Makes the content of many variants that differ in a few settings as short texts: two texts are equal where, and only
 * where, every setting is. The name has no say; what stands at its default is left out.
 * @param base   what they have in common
 * @param paths  the settings in which they differ
 * @returns the text for values of these, in their order
 */
export function contentOf(
  base: Variant,
  paths: readonly FieldPath[],
): (values: readonly (number | string)[]) => string {
  const isDefault = (field: Field, value: number | string) => Object.is(value, defaultOf(field));
  const text = (field: Field, value: number | string) =>
    isDefault(field, value) ? '' : `${field.path}=${value};`;
  // a fixed text, then a setting that differs, and so on: in the order of the fields, whatever the order of the paths
  const fixed: string[] = [''];
  const differing: { field: Field; index: number }[] = [];
  for (const field of fields) {
    const index = paths.indexOf(field.path);
    if (index < 0) fixed[fixed.length - 1] += text(field, settingOf(base, field.path));
    else {
      differing.push({ field, index });
      fixed.push('');
    }
  }
  const draws = JSON.stringify(base.ownDraws);
  if (draws !== JSON.stringify(exampleDraws)) fixed[fixed.length - 1] += draws;
  return (values) =>
    differing.reduce(
      (content, { field, index }, place) => content + text(field, values[index]) + fixed[place + 1],
      fixed[0],
    );
}

/** What has been computed, by content; what was not asked for longest is forgotten first. */
export class PointCache {
  readonly #found = new Map<string, ReadonlyMap<Asked, Cell>>();
  readonly #most: number;
  #size = 0;

  /** @param most  characters of all contents together, which is most of the memory */
  constructor(most = MOST) {
    this.#most = most;
  }

  get size(): number {
    return this.#found.size;
  }

  find(content: string, measure: Asked): Cell | undefined {
    const cells = this.#found.get(content);
    if (cells === undefined) return undefined;
    this.#found.delete(content);
    this.#found.set(content, cells);
    return cells.get(measure);
  }

  keep(content: string, found: ReadonlyMap<Asked, Cell>): void {
    const before = this.#found.get(content);
    if (before === undefined) this.#size += content.length + OVERHEAD;
    this.#found.delete(content);
    this.#found.set(content, before === undefined ? found : new Map([...before, ...found]));
    for (const oldest of this.#found.keys()) {
      if (this.#size <= this.#most) break;
      this.#found.delete(oldest);
      this.#size -= oldest.length + OVERHEAD;
    }
  }
}

/** About 8 MB at a byte a character with as much again for the values: ten maps of 32 × 32 with 20 settings of their own. */
const MOST = 8e6;
/** Of one variant, in characters: its measures. */
const OVERHEAD = 300;
