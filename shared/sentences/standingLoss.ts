import { dash, shown } from '../format.ts';
import type { LossStanding } from '../lossStanding.ts';

/** `75.0 W`, with the store 45 K above the air. */
export const lossText = ({ loss }: LossStanding): string => shown(loss, 'watt', 1);

/** `1.67 W/K` */
export const perKelvinText = ({ perKelvin }: LossStanding): string =>
  shown(perKelvin, 'wattPerKelvin', 2);

/** `class C`, or that there is none. */
export function classText({ energyClass }: LossStanding): string {
  return energyClass === null ? 'no class above 500 l' : `class ${energyClass}`;
}

/** ` (B below 62.3 W)` behind a class: what the next better one asks; empty where there is none. */
export function betterText({ better }: LossStanding): string {
  return better === null ? '' : ` (${better.energyClass} below ${shown(better.bound, 'watt', 1)})`;
}

/** `87.4 W`, the most class C allows. */
export const limitText = ({ limit }: LossStanding): string => shown(limit, 'watt', 1);

/** `2.30 kWh/24 h`; a dash where the guides say nothing. */
export const guideText = ({ guide }: LossStanding): string =>
  guide === null ? dash : shown(guide / DAY, 'kilowattHourPerDay', 2);

/** A standing loss and what is published about it, as rows of a label and a value. */
export function lossRows(standing: LossStanding): [string, string][] {
  const above = standing.isAboveLimit ? '; this store is above it' : '';
  return [
    ['with the store 45 K above the air', lossText(standing)],
    ['for each kelvin', perKelvinText(standing)],
    ['on the energy label', `${classText(standing)}${betterText(standing)}`],
    ['limit for new cylinders, European Union', `${limitText(standing)}${above}`],
    ...(standing.guide === null
      ? []
      : [['guide of the United Kingdom', guideText(standing)] as [string, string]]),
  ];
}

const DAY = 86_400; // s
