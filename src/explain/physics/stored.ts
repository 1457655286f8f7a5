import { shown } from '../../../shared/format.ts';
import { riseOf } from '../heatUpWorking.ts';
import type { Section } from './section.ts';
import { has, measured, part, shownIn, tell, usableAt } from './tell.ts';

export const stored: Section = {
  id: 'stored',
  title: 'What is stored',
  said: (here) => {
    const { volume } = here.result.variant.cylinder;
    const rise = part(shown(riseOf(here.result), 'kelvin', 1), 'store.heatUp');
    return [
      tell`Hot water is heat on a shelf. In this reheat ${part(shown(volume, 'litre', 0), 'store.heatUp')} warm by ${rise} in the mean; ${measured(here, 'coilHeat')} go through the coil, for the water, for the wall round it, and for what the cylinder loses meanwhile.`,
      has(here, 'usableAtSatisfied')
        ? tell`What counts at a tap is not the heat but the litres that are warm enough. From ${measured(here, 'usableAtStart')} at the start the store comes to ${measured(here, 'usableAtSatisfied')} when its stat is satisfied, counted as mixed water at ${usableAt}.`
        : tell`What counts at a tap is not the heat but the litres that are warm enough. The store begins with ${measured(here, 'usableAtStart')}, counted as mixed water at ${usableAt}, and its stat is not satisfied in this run.`,
    ];
  },
  formulas: (here) => shownIn(here, 'store.heatUp', 'storedHeat'),
  further: [
    { label: 'heat through the coil', key: 'measure.coilHeat' },
    { label: 'usable now', key: 'moment.usable' },
  ],
};
