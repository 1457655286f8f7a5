import { figure, shown } from '../../../shared/format.ts';
import { coilParts } from '../coilParts.ts';
import type { Section } from './section.ts';
import { now, part, shownIn, tell } from './tell.ts';
import { perSquareMetre } from './perSquareMetre.ts';

export const outside: Section = {
  id: 'outside',
  title: 'Outside the coil',
  said: (here) => {
    const { result, reading } = here;
    const parts = coilParts(result, reading);
    const water = now(here, 'coilWater');
    if (parts === null) {
      return [
        tell`Outside the tube nothing drives the water, ${water} here, but its own warmth: what touches the tube grows lighter and rises. ${result.variant.coil.given === 'conductance' ? 'A UA that is given as a whole is kept the same through the reheat, though in truth this part of it changes.' : 'The coil is at rest at this moment.'}`,
      ];
    }
    const { difference, ho, tube, film } = parts;
    return [
      tell`Outside the tube nothing drives the water but its own warmth: what touches the tube grows lighter and rises. The surface is ${part(shown(difference, 'kelvin', 1), 'coil.buoyancy')} ${parts.primary > here.reading.of('coilWater') ? 'hotter' : 'colder'} than the water around it, ${water}, with a film at ${shown(film, 'celsius', 1)} between them.`,
      tell`The store takes ${part(perSquareMetre(ho), 'coil.outside')}, already ${figure(tube.outsideEnhancement, 1)} times what one level tube alone would pass, for the turns drive each other’s water. As the store warms the difference shrinks, but warmer water expands more and is thinner, which makes up for much of that.`,
    ];
  },
  formulas: (here) => {
    const both = [
      ...shownIn(here, 'coil.buoyancy', 'rayleigh'),
      ...shownIn(here, 'coil.outside', 'churchillChu'),
    ];
    return both.length > 0 ? both : shownIn(here, 'coil.outside');
  },
  further: [
    { label: 'how thick the water is', key: 'coil.buoyancy' },
    { label: 'from Nusselt number to coefficient', key: 'coil.outside' },
  ],
};
