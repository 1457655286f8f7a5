import type { Section } from './section.ts';
import { ofDay, part, shownIn, tell } from './tell.ts';

export const tap: Section = {
  id: 'tap',
  title: 'At the tap',
  said: (here) => {
    if (here.day === null) {
      return [
        tell`A tap mixes hot and cold to what is wanted. No day in use has been computed yet; ${part('what a household takes', 'use.showers')} is known before that.`,
      ];
    }
    const { measures } = here.day;
    const isShort = measures.failedDraws > 0;
    return [
      tell`A tap mixes hot and cold to what is wanted. In the day on the bench ${ofDay(here, 'drawn')} are drawn, and the store gives ${ofDay(here, 'fromStore')} for them: the hotter it is, the less of it each draw takes.`,
      isShort
        ? tell`Once hot alone is not warm enough the draw runs cold: ${ofDay(here, 'failedDraws')} did, or fell short, and ${ofDay(here, 'coldVolume')} came too cold. At its emptiest the store had ${ofDay(here, 'leastUsable')} usable.`
        : tell`No draw ran cold; at its emptiest the store had ${ofDay(here, 'leastUsable')} usable.`,
      here.day.variant.draw.pipeLength > 0
        ? tell`What has cooled in the pipe to the tap has to run off first, ${ofDay(here, 'waitVolume')} in all. Of the heat drawn ${ofDay(here, 'useful')} were useful.`
        : tell`The tap is at the store here, so no pipe has to run off first. Of the heat drawn ${ofDay(here, 'useful')} were useful.`,
    ];
  },
  formulas: (here) =>
    here.day === null
      ? shownIn(here, 'use.showers', 'showerUse')
      : shownIn(here, 'day.fromStore', 'outletBlend'),
  further: [
    { label: 'people by floor area', key: 'use.people' },
    { label: 'baths', key: 'use.baths' },
    { label: 'showers', key: 'use.showers' },
    { label: 'sinks and basins', key: 'use.others' },
    { label: 'drawn in all', key: 'day.drawn' },
    { label: 'the heat in it', key: 'day.heatDrawn' },
    { label: 'draws that failed', key: 'day.failedDraws' },
    { label: 'of useful heat, not got', key: 'day.shortfall' },
    { label: 'hot water at the tap now', key: 'moment.arriving' },
  ],
  cautions: ['hotAtTheTap'],
};
