import { citation } from '../citation.ts';
import type { DayRun, Warmth } from '../day.ts';
import { lowestCoil } from '../fittedCoils.ts';
import { celsius, clock, duration, figure, litres, metres, shown } from '../format.ts';
import type { Celsius, Seconds } from '../units.ts';
import { brief } from './dayDraws.ts';

/** The two parts of the store side by side: a name, then the coldest tenth and the top. */
export function warmthRows({ hygiene }: DayRun): readonly (readonly [string, string, string])[] {
  const { coldestTenth, top } = hygiene;
  const row = (name: string, text: (warmth: Warmth) => string) =>
    [name, text(coldestTenth), text(top)] as const;
  return [
    row('at its coldest', ({ least }) => celsius(least)),
    row('at its hottest', ({ most }) => celsius(most)),
    row('at 60\u00a0°C or more, in all', ({ hotTime }) => duration(hotTime)),
    row('at a stretch', ({ longestHot }) => duration(longestHot)),
    row('from 20 to 45\u00a0°C', ({ growthTime }) => duration(growthTime)),
    row('tenfold reductions', reductionBand),
  ];
}

/** Tenfold reductions as a band, `4 to more than 100`; large numbers are not printed, for they say no more. */
export function reductionBand({ fewestReductions, mostReductions }: Warmth): string {
  if (fewestReductions > MANY) return `more than ${MANY}`;
  if (mostReductions < 0.05) return 'none';
  const few = fewestReductions < 0.05 ? '0' : reductions(fewestReductions);
  const many = mostReductions > MANY ? `more than ${MANY}` : reductions(mostReductions);
  return few === many ? few : `${few} to ${many}`;
}

/** How warm the store and the tap were kept, against the guidance; no verdict. */
export function hygieneWords(day: DayRun): string[] {
  return [coldest(day), blindSpot(day), atTaps(day), heatedThrough(day)].filter(
    (one) => one !== '',
  );
}

/** What the guidance asks, with its source. */
export const guidanceWords = `Guidance: store at 60\u00a0°C or more and have 50\u00a0°C at the tap within a minute (${citation('hsg274')}, second-hand). Where it is run cooler, usual practice is to heat the whole store to 60\u00a0°C for an hour every week (no source).`;

/** What the band of reductions is and is not. */
export const reductionWords = `Tenfold reductions are of free Legionella in water, added up over the day between the slowest and the fastest published times (${citation('reductionTests')}, and others): a band, no verdict. They say nothing of biofilm, scale or sludge, and growth is not counted.`;

/**
 * What water this hot does to skin, and what to do about it; empty up to 44 °C.
 * @param band  published times to a burn at the hottest of the tap, s
 */
export function scaldWords(
  { measures }: DayRun,
  band: { readonly shortest: Seconds; readonly longest: Seconds },
): string {
  const { hottestAtTap } = measures;
  if (hottestAtTap === null || hottestAtTap <= SCALDS) return '';
  return `Caution: water leaves the tap at up to ${celsius(hottestAtTap)}. In published tests that burns adult skin within ${burnTimes(band)}, a child’s sooner (${citation('scaldTimes')}). Lower it with a thermostatic mixing valve at the outlet, not by storing cooler.`;
}

/** Hottest water at a tap for which no time to a burn is printed, °C. Source: scaldTimes. */
export const SCALDS: Celsius = 44;

/** Whether the coldest tenth was held hot for as long as heating through asks. */
export function isHeatedThrough({ hygiene }: DayRun): boolean {
  return hygiene.coldestTenth.longestHot >= HOUR;
}

function coldest({ hygiene, shownDays }: DayRun): string {
  const { least, most, longestHot, growthTime } = hygiene.coldestTenth;
  const of = shownDays === 1 ? '24 h' : `${figure(shownDays, 0)} days`;
  const hot =
    longestHot > 0
      ? `is at 60\u00a0°C or more for ${duration(longestHot)} at a stretch`
      : 'never reaches 60\u00a0°C';
  const warm =
    growthTime > 0
      ? ` For ${duration(growthTime)} of ${of} it is between 20\u00a0°C and 45\u00a0°C, where Legionella multiplies.`
      : '';
  return `The coldest tenth of the store goes from ${celsius(least)} to ${celsius(most)} and ${hot}.${warm}`;
}

function blindSpot({ hygiene, variant }: DayRun): string {
  const { neverHot, neverHotBest } = hygiene;
  if (neverHot <= 0) return 'All of the store reaches 60\u00a0°C at some time.';
  if (neverHot > variant.cylinder.volume * 0.999) {
    return `No part of the store ever reaches 60\u00a0°C; its coolest part gets to ${celsius(neverHotBest)}.`;
  }
  return `${litres(neverHot)} never reach 60\u00a0°C, the coolest of them no more than ${celsius(neverHotBest)}. The lowest part under the coil, which never gets hot, is the usual blind spot.`;
}

function atTaps({ hygiene: { longDraws, cooler } }: DayRun): string {
  if (longDraws === 0) return '';
  const of = `${figure(longDraws, 0)} ${longDraws === 1 ? 'draw' : 'draws'} of a minute or more`;
  return cooler === 0
    ? `In ${of} the hot water at the tap has 50\u00a0°C or more a minute after opening.`
    : `In ${figure(cooler, 0)} of ${of} the hot water at the tap has less than 50\u00a0°C a minute after opening.`;
}

function heatedThrough(day: DayRun): string {
  const { pasteurise, pasteuriseFrom, pasteuriseFor, pasteuriseTo } = day.variant.day;
  if (pasteurise !== 'once') return '';
  const { most, longestHot } = day.hygiene.coldestTenth;
  const what = `Heating through from ${clock(pasteuriseFrom)} for ${duration(pasteuriseFor, 0)}, with the set-point at ${shown(pasteuriseTo, 'celsius', 0)}:`;
  if (isHeatedThrough(day))
    return `${what} the coldest tenth holds 60\u00a0°C for ${duration(longestHot)}.`;
  if (longestHot > 0) {
    return `${what} the coldest tenth holds 60\u00a0°C for ${duration(longestHot)} only, not for an hour.`;
  }
  const under = metres(lowestCoil(day.variant));
  return `${what} the coldest tenth gets to ${celsius(most)} and does not reach 60\u00a0°C. What lies under the coil, below ${under}, is hardly heated by it: a pump that turns the store over, or a lower heater, would reach it (common practice, no source).`;
}

function burnTimes({ shortest, longest }: { shortest: Seconds; longest: Seconds }): string {
  const [soon, late] = [brief(shortest), brief(longest)];
  if (soon === late) return soon;
  const [number, unit] = soon.split('\u00a0');
  return late.endsWith(unit) && !late.includes('h') ? `${number} to ${late}` : `${soon} to ${late}`;
}

function reductions(count: number): string {
  return figure(count, count < 9.95 ? 1 : 0);
}

const MANY = 100; // beyond what any test can show
const HOUR = 3600; // s
