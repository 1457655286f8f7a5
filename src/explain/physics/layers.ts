import { figure } from '../../../shared/format.ts';
import { columnStep } from '../columnStep.ts';
import type { Section } from './section.ts';
import { has, measured, now, part, shownIn, tell, usableAt } from './tell.ts';

export const layers: Section = {
  id: 'layers',
  title: 'Layers, and what rises through them',
  said: (here) => {
    const column = columnStep(here.result, here.reading).values.result ?? Number.NaN;
    const left = has(here, 'coldAtSatisfied')
      ? tell` So ${measured(here, 'coldAtSatisfied')} are still below ${usableAt} when the stat is satisfied, and the bottom is then at ${measured(here, 'bottomAtSatisfied')}.`
      : [];
    return [
      tell`Hot water lies on cold and stays there: the top is at ${now(here, 'top')} and the bottom at ${now(here, 'bottom')}. What the coil warms is lighter than what stands above it, so it ${part('rises and mixes', 'store.mixing')} until nothing cooler lies over it, and the water above the coil warms as one body.`,
      [
        ...tell`Downwards there is only conduction, ${part(`${figure(column)} W/(m K)`, 'store.conduction')} through water and wall together, and that is slow.`,
        ...left,
      ],
    ];
  },
  formulas: (here) => [
    ...shownIn(here, 'store.mixing', 'mixing'),
    ...shownIn(here, 'store.conduction', 'conduction'),
  ],
  further: [
    { label: 'how fast that body warms', key: 'moment.top' },
    { label: 'hottest water', key: 'measure.hottest' },
  ],
  cautions: ['warmBelowTheCoil', 'topOverheats'],
};
