import { fields } from './fields.ts';
import { settingText } from './format.ts';
import { type FieldPath, settingOf, type Variant } from './variant.ts';

/** A setting that is not the same in all variants. */
export interface Difference {
  /** Null: the own draws, which are no single setting. */
  readonly path: FieldPath | null;
  readonly label: string;
  /** What each variant has, as text, in their order. */
  readonly texts: readonly string[];
}

/** The settings in which variants differ, in the order of the settings; names aside. */
export function differencesOf(variants: readonly Variant[]): Difference[] {
  const [first] = variants;
  if (first === undefined) return [];
  const differ = (of: (variant: Variant) => unknown) =>
    variants.some((variant) => of(variant) !== of(first));
  const settings = fields
    .filter(({ path }) => differ((variant) => settingOf(variant, path)))
    .map(({ path, label }) => ({
      path,
      label,
      texts: variants.map((variant) => settingText(path, settingOf(variant, path))),
    }));
  const draws = { path: null, label: 'Own draws', texts: variants.map(drawsText) };
  return differ(({ ownDraws }) => JSON.stringify(ownDraws)) ? [...settings, draws] : settings;
}

function drawsText({ ownDraws }: Variant): string {
  return ownDraws.length === 1 ? '1 draw' : `${ownDraws.length} draws`;
}
