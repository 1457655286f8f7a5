import { incomingCold } from './coldWater.ts';
import { coilGroups } from './fittedCoils.ts';
import { mountingOf } from './mounting.ts';
import type { UnknownKey } from './spread.ts';
import type { FieldPath, Variant } from './variant.ts';

/** The range in which a thing may lie that is not known for certain. */
export interface UnknownRange {
  readonly key: UnknownKey;
  /** The setting that says how wide the range is. */
  readonly setting: FieldPath;
  /** What may be off; null for what follows from several settings. */
  readonly about: FieldPath | null;
  /** SI of what it is about; times what follows from the settings where that is null. */
  readonly low: number;
  readonly high: number;
}

/** The unknowns of an installation; none whose range is put to nothing, or that has no say in it. */
export function unknownsOf(variant: Variant): readonly UnknownRange[] {
  const { scale, hiddenScale, primaryFlow, cold, lag } = variant.unknowns;
  const coil = unknownOfCoil(variant);
  const share = variant.unknowns[coil];
  const rows: UnknownRange[] = [
    {
      key: 'coil',
      setting: `unknowns.${coil}`,
      about: null,
      low: 1 - share,
      high: 1 + share,
    },
  ];
  for (const group of coilGroups(variant)) {
    const { given, scaleThickness } = variant[group];
    if (given === 'conductance') continue;
    rows.push({
      key: 'scale',
      about: `${group}.scaleThickness`,
      ...(scaleThickness > 0
        ? { setting: 'unknowns.scale', ...eitherWay(scaleThickness, scale) }
        : { setting: 'unknowns.hiddenScale', low: 0, high: hiddenScale }),
    });
  }
  const { flowFrom, flow } = variant.primary;
  const isGiven = flowFrom === 'given';
  rows.push({
    key: 'primaryFlow',
    setting: 'unknowns.primaryFlow',
    about: isGiven ? 'primary.flow' : null,
    low: (isGiven ? flow : 1) * (1 - primaryFlow),
    high: (isGiven ? flow : 1) * (1 + primaryFlow),
  });
  const incoming = incomingCold(variant.draw);
  rows.push({
    key: 'cold',
    setting: 'unknowns.cold',
    about: 'draw.incomingCold',
    low: Math.max(COLDEST, incoming - cold),
    high: incoming + cold,
  });
  rows.push({
    key: 'lag',
    setting: 'unknowns.lag',
    about: 'stat.lag',
    ...eitherWay(mountingOf(variant.stat).lag, lag),
  });
  return rows.filter(({ low, high }) => high > low);
}

/** Which range is that of the coil: a declared one has been measured. */
export function unknownOfCoil({ coil }: Variant): 'coil' | 'ratedCoil' {
  return coil.given === 'rating' || coil.given === 'conductance' ? 'ratedCoil' : 'coil';
}

/** From so many times thinner to so many times thicker. @param share  0 for what is known */
function eitherWay(value: number, share: number): { readonly low: number; readonly high: number } {
  return { low: value / (1 + share), high: value * (1 + share) };
}

/** As cold as the incoming water can be set, °C. */
export const COLDEST = 1;
