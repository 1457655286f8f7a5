import { figure } from '../../../shared/format.ts';
import { coilParts } from '../coilParts.ts';
import { turbulence } from '../insideWorkings.ts';
import type { Section } from './section.ts';
import { now, part, shownIn, tell } from './tell.ts';
import { perSquareMetre } from './perSquareMetre.ts';

export const inside: Section = {
  id: 'inside',
  title: 'Inside the coil',
  said: (here) => {
    const { result, reading } = here;
    const parts = coilParts(result, reading);
    if (parts === null) {
      return [
        result.variant.coil.given === 'conductance'
          ? tell`The ${part('UA', 'coil.overall')} of this coil is given as a whole, so its inside has no number of its own. What would decide it is the flow, ${now(here, 'coilFlow')} now, in the bore.`
          : tell`Only water that runs, ${now(here, 'coilFlow')} now, carries heat to the wall of the bore. At this moment the coil is at rest.`,
      ];
    }
    const share = turbulence(parts);
    const how =
      share === 1 ? 'turbulent' : share === 0 ? 'laminar' : 'between laminar and turbulent';
    return [
      tell`The primary, ${now(here, 'coilFlow')}, hands its heat to the wall through a thin layer of slow water. The turns of the coil keep stirring it, so that the flow stays laminar to a higher speed than in a straight tube and yet carries more heat. At a Reynolds number of ${part(figure(parts.Re, 0), 'coil.regime')} it is ${how}.`,
      tell`It passes ${part(perSquareMetre(parts.hi), 'coil.inside')}, against ${part(perSquareMetre(parts.ho), 'coil.outside')} outside: ${parts.ratio / parts.hi < 1 / parts.ho ? 'here it is the outside that holds the heat back more.' : 'here it is the inside that holds the heat back more.'}`,
    ];
  },
  formulas: (here) =>
    shownIn(here, 'coil.inside').length > 0
      ? shownIn(here, 'coil.inside')
      : shownIn(here, 'coil.overall'),
  further: [
    { label: 'laminar or turbulent', key: 'coil.regime' },
    { label: 'both sides of the film', key: 'coil.inside' },
    { label: 'the pressure this costs', key: 'coil.friction' },
  ],
};
