import { settingText, shown } from '../../../shared/format.ts';
import { mountingOf } from '../../../shared/mounting.ts';
import type { Section } from './section.ts';
import { has, measured, now, part, shownIn, tell } from './tell.ts';

export const sensor: Section = {
  id: 'sensor',
  title: 'The sensor and the stat',
  said: (here) => {
    const { stat } = here.result.variant;
    const { lag } = mountingOf(stat);
    const calls = part(shown(stat.setPoint - stat.differential, 'celsius', 1), 'stat.callsAt');
    return [
      tell`The stat knows one height only, ${settingText('stat.sensorHeight', stat.sensorHeight)}. The sensor there is at ${now(here, 'bead')} now and ${part('runs behind', 'stat.follows')} the water${lag > 0 ? ` with a lag of ${shown(lag, 'second', 0)}` : ', here without a lag'}. It says nothing of what lies below it.`,
      [
        ...tell`Satisfied at ${settingText('stat.setPoint', stat.setPoint)}, it rests until its reading has fallen to ${calls}. ${part('With nothing drawn', 'stat.rests')} only the loss of the store and what crosses its layers bring it there.`,
        ...(has(here, 'usableAtCall')
          ? tell` When it next calls in this run, ${measured(here, 'usableAtCall')} are usable.`
          : []),
      ],
    ];
  },
  formulas: (here) => [
    ...shownIn(here, 'stat.follows', 'sensorFollows'),
    ...shownIn(here, 'stat.callsAt', 'callsAt'),
  ],
  further: [
    { label: 'where it settles', key: 'moment.bead' },
    { label: 'how long it rests', key: 'stat.rests' },
    { label: 'calls in this run', key: 'measure.hotWaterCalls' },
  ],
  cautions: ['readsLow', 'readsHigh'],
};
