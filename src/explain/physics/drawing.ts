import { incomingCold } from '../../../shared/coldWater.ts';
import { settingText, shown } from '../../../shared/format.ts';
import type { Section } from './section.ts';
import { has, measured, now, part, shownIn, tell } from './tell.ts';

export const drawing: Section = {
  id: 'drawing',
  title: 'Drawing off, and the cold that comes in',
  said: (here) => {
    const { draw } = here.result.variant;
    const cold = shown(incomingCold(draw), 'celsius', 0);
    const jet = part(settingText('draw.inlet', draw.inlet), 'store.inlet');
    return [
      tell`Each litre that leaves at the top is replaced by one at ${cold} near the base, and all the water between moves up. The boundary between hot and cold moves with it; at the moment shown ${now(here, 'usable')} would be usable.`,
      draw.inlet === 'asTyped'
        ? tell`Inlet: ${jet}. A jet would stir the deeper the faster it is and the less it differs from what it meets.`
        : tell`Inlet: ${jet}. Such a jet stirs the deeper the faster it is and the less it differs from what it meets: against hot water it soon sinks back, among water as cold as itself it stirs all of it. Published fits differ by several times, so this is the least certain part of a draw.`,
      ...(has(here, 'usableAtCall') && has(here, 'usableAtSatisfied')
        ? [
            tell`When the stat next calls ${measured(here, 'usableAtCall')} are usable, of ${measured(here, 'usableAtSatisfied')} when it was satisfied.`,
          ]
        : []),
    ];
  },
  formulas: (here) => [
    ...shownIn(here, 'store.inlet', 'inletRichardson'),
    ...shownIn(here, 'moment.usable', 'usableLitres'),
  ],
  further: [
    { label: 'how far the jet stirs', key: 'store.inlet' },
    { label: 'other inlets', key: 'store.inletOthers' },
    { label: 'by a simulated draw', key: 'delivery.drawn' },
  ],
};
