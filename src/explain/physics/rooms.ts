import { arrangementOf } from '../../../shared/arrangements.ts';
import { settingText } from '../../../shared/format.ts';
import type { Section } from './section.ts';
import { has, measured, now, shownIn, tell } from './tell.ts';

export const rooms: Section = {
  id: 'rooms',
  title: 'Sharing with the radiators and the house',
  said: (here) => {
    const { heating } = here.result.variant;
    const { heated, both, turn } = arrangementOf(heating.arrangement);
    if (!heated) {
      return [
        tell`This boiler heats the cylinder only, so nobody shares it: the coil has all it gives, ${now(here, 'boilerHeat')} now. The relations of radiators and rooms are below all the same.`,
      ];
    }
    const shares = both.coilRuns && both.radiatorsRun;
    return [
      tell`Who gets the boiler when both call is a choice: ${settingText('heating.arrangement', heating.arrangement)}. ${shares ? 'Flow and output are then shared at one flow temperature, and what the radiators take the coil does not get.' : both.coilRuns ? `The coil then has all the flow and all the output, and the rooms wait${turn ? ' for their turn' : ''}.` : 'The rooms then have all of it, and the cylinder waits.'} At this moment the radiators give ${now(here, 'radiatorHeat')}.`,
      [
        ...tell`While they wait the rooms live on the heat of their fabric: the air is at ${now(here, 'air')} with ${now(here, 'outside')} outside`,
        ...(has(here, 'lowestRoom')
          ? tell`, and at ${measured(here, 'lowestRoom')} when it is coldest in this run`
          : []),
        ...(has(here, 'sufficientFlow')
          ? tell`. On such a day a flow of ${measured(here, 'sufficientFlow')} would hold them.`
          : ['.']),
      ],
    ];
  },
  formulas: (here) => [
    ...shownIn(here, 'moment.radiatorHeat', 'radiator'),
    ...shownIn(here, 'moment.air', 'houseLoses'),
  ],
  further: [
    { label: 'the flow that would do', key: 'measure.sufficientFlow' },
    { label: 'the flow that is aimed at', key: 'moment.flowTarget' },
    { label: 'how a house cools', key: 'measure.lowestRoom' },
    { label: 'below which rooms are too cold', key: 'measure.coldRoomTime' },
    { label: 'outside through the day', key: 'moment.outside' },
  ],
};
