import { fieldAt } from '../fields.ts';
import { coilGroups } from '../fittedCoils.ts';
import { shown, settingText } from '../format.ts';
import type { Coil, Variant } from '../variant.ts';
import { type Problem, problemAt } from './problem.ts';

/** Whether a declared rating can be that of any coil. */
export function ratingProblems(variant: Variant): Problem[] {
  return coilGroups(variant).flatMap((group) => {
    const coil = variant[group];
    if (coil.given !== 'rating') return [];
    const which = group === 'coil' ? '' : 'Second coil: ';
    const text = (key: 'ratedFrom' | 'ratedTo' | 'ratedInlet' | 'ratedFlow') =>
      settingText(`${group}.${key}`, coil[key]);
    if (coil.ratedTo < coil.ratedFrom) {
      return [
        problemAt(
          `${group}.ratedTo`,
          'ratedTo',
          `${which}The rated heat-up ends at ${text('ratedTo')}, below its start at ${text('ratedFrom')}: raise the store temperature at its end.`,
        ),
      ];
    }
    if (coil.ratedInlet <= coil.ratedTo) {
      return [
        problemAt(
          `${group}.ratedInlet`,
          'ratedInlet',
          `${which}The rated flow enters at ${text('ratedInlet')} and cannot heat a store to ${text('ratedTo')}: raise the flow temperature of the rating.`,
        ),
      ];
    }
    const most = reachable * mostRating(coil);
    if (coil.ratedOutput <= most) return [];
    return [
      problemAt(
        `${group}.ratedOutput`,
        'unreachableRating',
        `${fieldAt(`${group}.ratedOutput`).label} must be at most ${shown(Math.floor(most / 100) * 100, 'kilowatt', 1)}, which is 95 % of what ${text('ratedFlow')} at ${text('ratedInlet')} can give a store from ${text('ratedFrom')} to ${text('ratedTo')}.`,
      ),
    ];
  });
}

/**
 * Mean heat over the rated heat-up from a coil without end, whose water leaves at the temperature of
 * the store: flow heat capacity times the logarithmic mean of the differences, W.
 */
function mostRating(coil: Coil): number {
  const atStart = coil.ratedInlet - coil.ratedFrom;
  const atEnd = coil.ratedInlet - coil.ratedTo;
  const mean = atStart === atEnd ? atStart : (atStart - atEnd) / Math.log(atStart / atEnd);
  return coil.ratedFlow * hotWaterHeatCapacity * mean;
}

/** source: iapwsLiquid: 971.8 kg/m³ times 4197 J/(kg K) at 80 °C, J/(m³ K) */
const hotWaterHeatCapacity = 971.8 * 4197;
/** Beyond this share the rating no longer says anything about the coil. Engineering guess, no source. */
const reachable = 0.95;
