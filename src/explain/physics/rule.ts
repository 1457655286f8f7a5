import type { Section } from './section.ts';
import { has, measured, shownIn, tell } from './tell.ts';

export const rule: Section = {
  id: 'rule',
  title: 'The trade’s formula, and what it leaves out',
  said: (here) => [
    has(here, 'recovery') && has(here, 'ruleTime')
      ? tell`Heat over power is a time. With the full output of the boiler the formula of the trade gives ${measured(here, 'ruleTime')}; the run takes ${measured(here, 'recovery')}, ${measured(here, 'waitingTime')} of them before the stat calls.`
      : tell`Heat over power is a time, and the formula of the trade puts the full output of the boiler there. In this run the stat is not satisfied at all, after ${measured(here, 'waitingTime')} of waiting for its call; the formula cannot know why.`,
    has(here, 'meanCoilHeat')
      ? tell`The formula is sound arithmetic with the wrong power in it. What reaches the water is what the coil passes, ${measured(here, 'meanCoilHeat')} in the mean and ${measured(here, 'peakCoilHeat')} at its best, and the rest of this page is about why.`
      : tell`What reaches the water is what the coil passes, and here the coil never runs: ${measured(here, 'coilHeat')} go through it.`,
  ],
  formulas: (here) => [
    ...shownIn(here, 'store.heatUp', 'tradeHeatUpTime'),
    ...shownIn(here, 'measure.recovery', 'recoveryTime'),
  ],
  further: [
    { label: 'the same by heat capacity', key: 'store.heatUp' },
    { label: 'mean coil output', key: 'measure.meanCoilHeat' },
  ],
};
