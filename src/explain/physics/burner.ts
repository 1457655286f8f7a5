import { RATED_RETURN } from '../../../shared/conventions.ts';
import { settingText, shown } from '../../../shared/format.ts';
import type { Section } from './section.ts';
import { measured, now, part, shownIn, tell } from './tell.ts';

export const burner: Section = {
  id: 'burner',
  title: 'The burner and its two ends',
  said: (here) => {
    const { boiler } = here.result.variant;
    const rated = shown(RATED_RETURN, 'celsius', 0);
    const most = settingText('boiler.output', boiler.output);
    const gives = tell`It gives ${now(here, 'boilerHeat')} at this moment, with its flow at ${now(here, 'flow')} and ${now(here, 'flowTarget')} aimed at.`;
    if (boiler.model === 'ideal') {
      return [
        tell`This boiler is ideal: it gives whatever is taken, up to ${most}, and holds its flow exactly. ${'It burns no fuel that is counted and never cycles.'}`,
        gives,
      ];
    }
    const least = part(settingText('boiler.minimumOutput', boiler.minimumOutput), 'boiler.bursts');
    return [
      tell`With water back at ${rated} a burner gives no more than ${most} and, while it is lit, no less than ${least}; the cooler the water back, the more, by up to a tenth or so. Between its two ends a controller follows the flow: the further it is below its target, and the longer, the more is burnt. ${'Full output is only of use while the coil can pass it.'}`,
      [
        ...gives,
        ...tell` When its least is too much, boiler and pipes warm until the burner goes off and rests: here it is lit ${measured(here, 'burnerStarts')} times for ${measured(here, 'burnerTime')} in all, and ${measured(here, 'restingTime')} of the reheat pass in rests or waiting for a valve.`,
      ],
    ];
  },
  formulas: (here) =>
    here.result.variant.boiler.model === 'ideal'
      ? shownIn(here, 'moment.boilerHeat', 'streamHeat')
      : [
          ...shownIn(here, 'moment.boilerHeat', 'burnerGives'),
          ...shownIn(here, 'moment.flowTarget', 'belowTarget'),
        ],
  further: [
    { label: 'how long a burst lasts', key: 'boiler.bursts' },
    { label: 'at its least output', key: 'measure.minimumTime' },
    { label: 'the flow that full output needs', key: 'boiler.flowNeeded' },
  ],
  cautions: ['limiterTripped', 'gas'],
};
