import { settingText } from '../../../shared/format.ts';
import type { Section } from './section.ts';
import { measured, part, shownIn, tell } from './tell.ts';

export const circulator: Section = {
  id: 'circulator',
  title: 'Circulator and pipes',
  said: (here) => {
    const { primary } = here.result.variant;
    const flow = measured(here, 'coilFlow');
    const speed = measured(here, 'primaryVelocity');
    const runs = tell`Alone, the coil gets ${flow}, which runs at ${speed} in the pipe. More flow keeps the far end of the coil hotter, with less and less to gain.`;
    if (primary.flowFrom === 'given') {
      return [
        tell`The flow is set here and not computed, so no circulator stands behind it.`,
        runs,
      ];
    }
    return [
      tell`Water runs as fast as the circulator’s pressure allows: the more it moves, the less pressure it has left, and the more the way round costs. The two meet at one flow. On that way lie the boiler, ${part(`${settingText('primary.length', primary.length)} of pipe`, 'pipe.friction')} each way with its bends, the valve, and the ${part('coil', 'coil.friction')} itself.`,
      runs,
    ];
  },
  formulas: (here) =>
    here.result.variant.primary.flowFrom === 'given'
      ? shownIn(here, 'measure.primaryVelocity', 'boreSpeed')
      : shownIn(here, 'measure.coilFlow', 'circulator', 'pipePressureDrop'),
  further: [
    { label: 'friction of the pipes', key: 'pipe.friction' },
    { label: 'friction of the coil', key: 'coil.friction' },
    { label: 'all that is in the way', key: 'measure.coilFlow' },
    { label: 'flow through the radiators', key: 'measure.radiatorFlow' },
  ],
  cautions: ['fastPrimary'],
};
