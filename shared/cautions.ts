import { citation } from './citation.ts';
import type { DayRun } from './day.ts';
import { dayCautions } from './dayCautions.ts';
import { celsius, plainText, settingText, shown } from './format.ts';
import { lowestCoil } from './fittedCoils.ts';
import type { Result } from './result.ts';
import type { SourceKey } from './sources.ts';
import type { Variant } from './variant.ts';

/** A warning that applies to the variant in hand. */
export interface Caution {
  readonly key: string;
  readonly text: string;
  /** Where it comes from, as one line. */
  readonly source: string;
}

/** Cautions that did not apply before. */
export function broughtUp(
  before: readonly Caution[],
  after: readonly Caution[],
): readonly Caution[] {
  const had = new Set(before.map(({ key }) => key));
  return after.filter(({ key }) => !had.has(key));
}

/**
 * The cautions that apply, in order of weight; the last always defers to those who may decide.
 * @param day  of hot water in use, where one has been run
 */
export function cautionsOf(
  variant: Variant,
  result: Result | null,
  day: DayRun | null = null,
): readonly Caution[] {
  const ofDay = dayCautions
    .filter(({ when }) => day !== null && when(day))
    .map(({ key, text, source }) => ({
      key,
      text: day === null ? '' : text(day),
      source: citation(source),
    }));
  const ofRun = cautions
    .filter(({ when }) => when(variant, result))
    .map(({ key, text, source }) => ({
      key,
      text: text(variant, result),
      source: citation(source),
    }));
  return [...ofDay, ...ofRun];
}

interface CautionRow {
  readonly key: string;
  readonly when: (variant: Variant, result: Result | null) => boolean;
  readonly text: (variant: Variant, result: Result | null) => string;
  readonly source: SourceKey;
}

/** The hottest water a variant is known to hold, °C. */
function hottestOf({ stat, start, day }: Variant, result: Result | null): number {
  const atStart = start.hotShare > 0 ? start.hotTemperature : 0;
  const through = day.pasteurise === 'once' ? day.pasteuriseTo : 0;
  return Math.max(stat.setPoint, atStart, through, result?.measures.hottest ?? 0);
}

/** The flow target while the cylinder is heated, °C. */
function hottestTarget({ targets, hotWaterFlow, heatingFlow }: Variant['boiler']): number {
  return targets === 'shared' ? heatingFlow : hotWaterFlow;
}

/** The hottest draw of an own table that the day goes by, °C; 0 without one. */
function hottestDraw({ day, ownDraws }: Variant): number {
  return day.pattern === 'own' ? Math.max(0, ...ownDraws.map(({ mixedTo }) => mixedTo)) : 0;
}

/** Hottest water into a bath, °C. Approved Document G, 2015, G3, from memory. */
const bathLimit = 48;

function sensorBelowCoil(variant: Variant): boolean {
  return variant.stat.sensorHeight < lowestCoil(variant);
}

/** Whether the controller takes the element for another. */
function isMistaken({ element, expects }: Variant['sensor']): boolean {
  return element !== 'true' && expects !== 'same';
}

/** Whether more ohms read hotter: they do where the controller expects platinum, and colder where a thermistor. */
function risesWithHeat({ element, expects }: Variant['sensor']): boolean {
  return (expects === 'same' ? element : expects) === 'platinum';
}

const always = () => true;

/** One table for the screen, the printed page and the command line. */
const cautions: readonly CautionRow[] = [
  {
    key: 'storedBelow60',
    when: ({ stat }) => stat.setPoint < 60,
    text: ({ stat }) =>
      `Stored at ${settingText('stat.setPoint', stat.setPoint)}, below 60 °C: Legionella is not reliably killed, and in the cooler parts it multiplies. ` +
      'Store at 60 °C or more, have at least 50 °C at the taps within a minute, and where it must be run cooler heat the whole store to 60 °C for an hour every week (usual practice, no source).',
    source: 'hsg274',
  },
  {
    key: 'warmBelowTheCoil',
    when: (_variant, result) =>
      result !== null &&
      result.measures.bottomAtSatisfied !== null &&
      result.measures.bottomAtSatisfied >= 20 &&
      result.measures.bottomAtSatisfied <= 45,
    text: (_variant, result) =>
      `When the stat is satisfied the bottom of the store is at ${celsius(result?.measures.bottomAtSatisfied ?? null)}: ` +
      'Legionella multiplies between 20 °C and 45 °C. A reading of 60 °C at the sensor says nothing about the water below it.',
    source: 'legionellaRange',
  },
  {
    key: 'scald',
    when: (variant, result) => hottestOf(variant, result) >= 50,
    text: (variant, result) =>
      `Hot water scalds: the store reaches ${celsius(hottestOf(variant, result))}. Water at 60 °C burns adult skin in about 3 to 8 s, at 55 °C in about 17 to 30 s, a child’s sooner. ` +
      'Limit the temperature at the outlet with a thermostatic mixing valve, not by storing cooler.',
    source: 'scaldTimes',
  },
  {
    key: 'hotAtTheTap',
    when: (variant) => hottestDraw(variant) > bathLimit,
    text: (variant) =>
      `The own table wants water of ${plainText(hottestDraw(variant), 'celsius')} at a tap: it scalds. A bath is to be filled at ${bathLimit} °C at most; fit a thermostatic mixing valve where people wash.`,
    source: 'waterSafetyG',
  },
  {
    key: 'topOverheats',
    when: (variant, result) =>
      sensorBelowCoil(variant) ||
      (result !== null &&
        (result.measures.hottest > variant.stat.setPoint + 5 || result.measures.hottest > 80)),
    text: (variant, result) => {
      const cause = sensorBelowCoil(variant)
        ? 'The sensor sits below the coil, where water is hardly heated, so the stat may not stop the boiler before the top is overheated. '
        : '';
      const found = result
        ? `The hottest water of this run is at ${celsius(result.measures.hottest)}, with the stat at ${settingText('stat.setPoint', variant.stat.setPoint)}. `
        : '';
      return `${cause}${found}Water this far above the set-point scalds, and above 80 °C it may trip the high-limit cut-out; never raise or bypass the cut-out.`;
    },
    source: 'waterSafetyG',
  },
  {
    key: 'flowAbove80',
    when: ({ boiler }) => hottestTarget(boiler) > 80,
    text: ({ boiler }) =>
      `With the flow at ${settingText('boiler.hotWaterFlow', hottestTarget(boiler))} a stat that fails can overheat the store. ` +
      'The independent high-limit cut-out must close the primary valve; check that it does.',
    source: 'waterSafetyG',
  },
  {
    key: 'programmeShort',
    when: ({ programme }) => programme.hotWater === 'timed',
    text: () =>
      'Hot water is allowed at set times only: see that the whole store reaches 60 °C in them, or the cooler part is where Legionella multiplies.',
    source: 'hsg274',
  },
  {
    key: 'readsLow',
    when: ({ stat, sensor }) =>
      stat.mounting === 'strappedBare' ||
      stat.mounting === 'strappedLagged' ||
      (stat.mounting === 'asTyped' && stat.airShare > 0) ||
      isMistaken(sensor) ||
      (sensor.element !== 'true' &&
        (risesWithHeat(sensor) ? sensor.dampResistance : sensor.jointResistance) > 0),
    text: () =>
      'This sensor may read lower than the water is: the store gets hotter than the controller shows, and scalds the sooner. Put the sensor right; do not turn the set-point down to make up for it.',
    source: 'practice',
  },
  {
    key: 'readsHigh',
    when: ({ sensor }) =>
      isMistaken(sensor) ||
      (sensor.element !== 'true' &&
        (risesWithHeat(sensor) ? sensor.jointResistance : sensor.dampResistance) > 0),
    text: () =>
      'This sensor may read hotter than the water is: the store is then colder than the controller shows, and Legionella is not reliably killed. Put the sensor right.',
    source: 'hsg274',
  },
  {
    key: 'limiterTripped',
    when: (_variant, result) =>
      result?.marks.some(({ kind }) => kind === 'limiterTripped') ?? false,
    text: () =>
      'The boiler’s safety limiter has tripped in this run. Find out why before anybody resets it; never raise it or bridge it.',
    source: 'gasSafety',
  },
  {
    key: 'immersion',
    when: ({ immersion }) => immersion.used !== 'no',
    text: () =>
      'Immersion heater: it needs its own stat with an independent cut-out that does not reset itself. Electrical work is for a competent person.',
    source: 'waterSafetyG',
  },
  {
    key: 'fastPrimary',
    when: (_variant, result) => (result?.measures.primaryVelocity ?? 0) > 1,
    text: (_variant, result) =>
      `The primary runs at ${shown(result?.measures.primaryVelocity ?? null, 'metrePerSecond', 2)} through its pipe: above 1 m/s it can be heard and in time wears bends. Use a larger pipe or a lower setting of the circulator.`,
    source: 'practice',
  },
  {
    key: 'unvented',
    when: ({ cylinder }) => cylinder.supply === 'unvented',
    text: () =>
      'Unvented cylinder: work on it is for a qualified, licensed installer and may have to be notified. ' +
      'Never alter, block or defeat a safety device; water that passes 100 °C under pressure can burst the cylinder.',
    source: 'waterSafetyG',
  },
  {
    key: 'vented',
    when: ({ cylinder }) => cylinder.supply === 'vented',
    text: () =>
      'Vented cylinder: the open vent must never be valved, blocked or allowed to freeze.',
    source: 'practice',
  },
  {
    key: 'gas',
    when: always,
    text: () =>
      'Gas work, and any work inside a gas boiler, is for a registered gas engineer only.',
    source: 'gasSafety',
  },
  {
    key: 'electricity',
    when: always,
    text: () =>
      'Isolate the electricity, and prove it dead, before opening a stat, a valve head or a wiring box.',
    source: 'practice',
  },
  {
    key: 'deferral',
    when: always,
    text: () =>
      'This is a calculation. Local codes, the maker’s instructions and licensed practice come before anything it says.',
    source: 'practice',
  },
];
