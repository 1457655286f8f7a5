import type { Section } from './section.ts';
import { now, shownIn, tell } from './tell.ts';

export const ohms: Section = {
  id: 'ohms',
  title: 'Ohms on the way to the controller',
  said: (here) => {
    const { sensor } = here.result.variant;
    const reads = now(here, 'sensor');
    const bead = now(here, 'bead');
    if (sensor.element === 'true') {
      return [
        tell`This sensor reads what it is at, as a mechanical stat or a healthy chain does: ${reads}, from a sensor at ${bead}. Choose a thermistor or platinum among the settings to see the ohms between the two.`,
      ];
    }
    return [
      tell`A controller sees no temperature, only a resistance. The sensor is at ${bead}; its element turns that into ohms, the lead and any bad joint add theirs, a damp path takes some away, and the controller’s own curve makes ${reads} of what arrives.`,
      tell`${sensor.element === 'platinum' ? 'Platinum gains a few ohms in a thousand with each kelvin, so a bad joint reads too warm.' : 'A thermistor loses ohms as it warms, so a bad joint reads too cold: the store then gets hotter than the controller shows.'} ${'A controller set for another type of element is wrong at every temperature, and by different amounts.'}`,
    ];
  },
  formulas: (here) => {
    const [first, ...rest] = shownIn(here, 'moment.sensor', ...inOrder);
    const read = shownIn(here, 'moment.sensor', 'readsTrue');
    return first === undefined ? read : [first, ...(rest.length > 0 ? rest.slice(0, 1) : read)];
  },
  further: [{ label: 'the whole chain', key: 'moment.sensor' }],
  cautions: ['readsLow', 'readsHigh', 'electricity'],
};

const inOrder = ['thermistorResistance', 'steinhartHart', 'platinum', 'ohmsInSeries'] as const;
