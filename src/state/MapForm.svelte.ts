import type { Asked } from '../../shared/asked.ts';
import { type Axis, choiceAxis, withOverrides } from '../../shared/grid.ts';
import { fieldAt } from '../../shared/fields.ts';
import { impliedBy, sharingAxis } from '../../shared/mapSettings.ts';
import type { FieldPath, Variant } from '../../shared/variant.ts';
import { MapRange } from './MapRange.svelte.ts';
import { askedTogether, type MapAsked } from './mapUnderWay.ts';

/** What a map is asked to show, as it is entered. */
export class MapForm {
  measure = $state<Asked>('recovery');
  readonly across: MapRange;
  readonly upward: MapRange;
  /** `number`: the upward range; `none`: one setting, a line; or a choice, a line for each of its words. */
  second = $state<'number' | 'none' | FieldPath>('number');
  /** How the boiler is shared, in place of what the variant says; null as it says. */
  sharing = $state<string | null>(null);
  #variant: () => Variant;

  /** @param variant  the one in hand, whose other settings the map holds */
  constructor(variant: () => Variant) {
    this.#variant = variant;
    this.across = new MapRange('coil.area', variant);
    this.upward = new MapRange('boiler.hotWaterFlow', variant);
  }

  /** Why the two settings make no map, in a sentence; null where they do. */
  readonly clash: string | null = $derived.by(() => {
    if (this.second !== 'number') return null;
    const [one, other] = [this.across.path, this.upward.path];
    if (one === other) return 'Choose two different settings, or none as the second.';
    const isSplit = impliedBy(one).some(([path, value]) =>
      impliedBy(other).some(([same, wanted]) => same === path && wanted !== value),
    );
    if (!isSplit) return null;
    const [first, second] = [one, other].map((path) => fieldAt(path).label.toLowerCase());
    return `Choose another setting: ${first} and ${second} describe one thing in two ways.`;
  });

  /** The map as it stands; null while something about it is to be put right. */
  readonly asked: MapAsked | null = $derived.by(() => {
    const { axis } = this.across;
    if (axis === null || this.clash !== null) return null;
    const rows = this.#rows();
    if (rows === null) return null;
    const axes = [...rows, axis];
    const says = axes.flatMap(({ path }) => impliedBy(path));
    const shared = this.sharing === null ? [] : [[sharingAxis.path, this.sharing] as const];
    return {
      grid: {
        base: withOverrides(this.#variant(), [...shared, ...says]),
        axes,
        measures: askedTogether(this.measure),
      },
      rowsAreWords: this.second !== 'number' && this.second !== 'none',
    };
  });

  /** The upward axis, if there is one; null while it has a problem. */
  #rows(): readonly Axis[] | null {
    if (this.second === 'none') return [];
    if (this.second === 'number') return this.upward.axis === null ? null : [this.upward.axis];
    if (this.second === sharingAxis.path) return [sharingAxis];
    const field = fieldAt(this.second);
    return field.kind === 'choice' ? [choiceAxis(this.second)] : null;
  }
}
