import type { Section } from './section.ts';
import { has, measured, now, shownIn, tell } from './tell.ts';

export const pipes: Section = {
  id: 'pipes',
  title: 'What the pipes lose and hold',
  said: (here) => {
    const lost = now(here, 'pipeLoss');
    const built = here.result.variant.boiler.model === 'asBuilt';
    const arrives = here.coilRuns
      ? tell`The boiler sends ${now(here, 'flow')} and the coil gets ${now(here, 'coilInlet')}; on the way there and back ${lost} go into the air.`
      : tell`Nothing runs to the coil at this moment; what stands in the pipes loses ${lost}.`;
    return [
      arrives,
      !built
        ? tell`With an ideal boiler the pipes hold no heat: only what they lose on the way counts.`
        : has(here, 'leftInPrimary')
          ? tell`Boiler, pipes and coil have to be warmed before the store is. What is in them when the stat is satisfied, ${measured(here, 'leftInPrimary')}, has been burnt for and is not in the store; lagging only makes it go more slowly.`
          : tell`Boiler, pipes and coil have to be warmed before the store is, and what is in them at the end has been burnt for and is not in the store.`,
    ];
  },
  formulas: (here) => [
    ...shownIn(here, 'moment.coilInlet', 'pipeEnd'),
    ...shownIn(here, 'pipe.loss', 'pipeHeatLoss'),
  ],
  further: [
    { label: 'a metre of pipe', key: 'pipe.loss' },
    { label: 'water in the pipes', key: 'measure.leftInPrimary' },
  ],
};
