import { celsius, settingText } from '../../../shared/format.ts';
import { reductionBand } from '../../../shared/sentences/hygiene.ts';
import type { Section, Told } from './section.ts';
import { has, measured, ofDay, part, shownIn, tell } from './tell.ts';

export const hygiene: Section = {
  id: 'hygiene',
  title: 'Hot enough, and too hot',
  said: (here) => {
    const set = part(
      settingText('stat.setPoint', here.result.variant.stat.setPoint),
      'stat.callsAt',
    );
    const why: Told = tell`Water must be stored hot enough against Legionella and come out cool enough for skin; no one temperature does both, so the store is kept hot and a valve at the outlet mixes it down. The stat here is set to ${set}.`;
    const { day } = here;
    if (day === null) {
      return [
        why,
        has(here, 'bottomAtSatisfied')
          ? tell`When it is satisfied the bottom is at ${measured(here, 'bottomAtSatisfied')}. How warm the store is kept is told of a day in use, and none has been computed yet.`
          : tell`It is not satisfied in this run; the hottest water is at ${measured(here, 'hottest')}. How warm the store is kept is told of a day in use, and none has been computed yet.`,
      ];
    }
    const { coldestTenth } = day.hygiene;
    const most = { text: celsius(coldestTenth.most), of: 'hygiene.coldestTenth' } as const;
    const count = reductionBand(coldestTenth);
    const band = { text: count === 'none' ? 'no' : count, of: 'hygiene.coldestTenth' } as const;
    const tap =
      day.measures.hottestAtTap === null
        ? []
        : tell` The hottest water at a tap has ${ofDay(here, 'hottestAtTap')}.`;
    return [
      why,
      [
        ...tell`In the day on the bench its coldest tenth gets to ${most} at its hottest. Added up over the day between published times that is ${band} tenfold reductions of free bacteria in water: a band and no verdict, for it says nothing of biofilm, scale or sludge.`,
        ...tap,
      ],
    ];
  },
  formulas: (here) =>
    here.day === null
      ? shownIn(here, 'store.conduction', 'conduction')
      : [
          ...shownIn(here, 'hygiene.coldestTenth', 'longestReduction'),
          ...shownIn(here, 'day.hottestAtTap', 'shortestScald'),
        ],
  further: [
    { label: 'the top of the store', key: 'hygiene.top' },
    { label: 'what never gets hot', key: 'hygiene.neverHot' },
    { label: 'at the tap after a minute', key: 'hygiene.afterMinute' },
    { label: 'times in which water burns', key: 'day.hottestAtTap' },
  ],
  cautions: [
    'notHeatedThrough',
    'overheatsInTheDay',
    'warmForHours',
    'scaldsAtTheTap',
    'storedBelow60',
    'scald',
  ],
};
