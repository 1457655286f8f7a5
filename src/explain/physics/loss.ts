import { shown } from '../../../shared/format.ts';
import {
  betterText,
  classText,
  limitText,
  perKelvinText,
} from '../../../shared/sentences/standingLoss.ts';
import { TEST_DIFFERENCE } from '../../../sim/closures/standingLoss.ts';
import { lossStanding } from '../../../sim/closures/storeLoss.ts';
import { lossSteps } from '../lossSteps.ts';
import type { Section } from './section.ts';
import { now, ofDay, part, shownIn, tell } from './tell.ts';

export const loss: Section = {
  id: 'loss',
  title: 'Standing loss',
  said: (here) => {
    const { cylinder } = here.result.variant;
    const standing = lossStanding(cylinder);
    const labelled =
      standing.energyClass === null
        ? tell`A label ends at 500 l and says nothing of it.`
        : tell`On the label that is ${part(classText(standing), 'store.energyClass')}${betterText(standing)}.`;
    return [
      [
        ...tell`The cylinder loses heat day and night, ${part(perKelvinText(standing), 'store.lossPerKelvin')} for each kelvin above the air around it: ${now(here, 'standingLoss')} at this moment. `,
        ...labelled,
        ...tell` A new one may lose ${part(limitText(standing), 'store.lossLimit')} with ${shown(TEST_DIFFERENCE, 'kelvin', 0)} between store and air.`,
      ],
      here.day === null
        ? tell`${part('Left alone', 'store.coolDown')} it cools the slower the cooler it gets.`
        : tell`In the day on the bench that comes to ${ofDay(here, 'standingLoss')}. ${part('Left alone', 'store.coolDown')} it cools the slower the cooler it gets.`,
    ];
  },
  formulas: (here) => [
    ...shownIn(here, 'moment.standingLoss', 'cylinderLoss'),
    ...lossSteps(here.result.variant.cylinder).slice(0, 1),
  ],
  further: [
    { label: 'the guide of the United Kingdom', key: 'store.lossGuide' },
    { label: 'left alone for a day', key: 'store.coolDown' },
    { label: 'what it costs', key: 'day.standingLossCost' },
    { label: 'how often the stat calls for it', key: 'stat.rests' },
  ],
};
