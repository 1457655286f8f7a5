import { shown } from '../../../shared/format.ts';
import { DEW_POINT } from '../../../sim/closures/boilerEfficiency.ts';
import type { Section } from './section.ts';
import { has, measured, now, part, shownIn, tell } from './tell.ts';

export const efficiency: Section = {
  id: 'efficiency',
  title: 'Efficiency and condensing',
  said: (here) => {
    const back = now(here, 'returnTemperature');
    const dew = part(shown(DEW_POINT, 'celsius', 0), 'boiler.condensing');
    if (here.result.variant.boiler.model === 'ideal') {
      return [
        tell`An ideal boiler has no efficiency. Choose the boiler as built to see one: it goes by the return, ${back} at this moment, and by how it stands to the dew point of the flue gas, near ${dew}.`,
      ];
    }
    return [
      tell`The flue gas of natural gas is wet. Water that comes back colder than its dew point, near ${dew}, lets the steam condense and takes its heat; at this moment it comes back at ${back}.`,
      !has(here, 'efficiency') || !has(here, 'condensingShare')
        ? tell`In this run the burner is never lit: it burns ${measured(here, 'fuel')} of fuel.`
        : tell`Over the run the burner turns ${measured(here, 'efficiency')} of the heat in its fuel into heat in the water, by gross calorific value, and gives ${measured(here, 'condensingShare')} of it while condensing. A coil that takes more out of the flow sends it back cooler, so it saves fuel as well as minutes.`,
    ];
  },
  formulas: (here) => shownIn(here, 'boiler.condensing', 'boilerEfficiency', 'condensingShare'),
  further: [
    { label: 'gross and net', key: 'measure.efficiency' },
    { label: 'fuel of the run', key: 'measure.fuel' },
    { label: 'fuel burnt now', key: 'moment.fuel' },
    { label: 'of it for the rooms', key: 'measure.fuelForHeating' },
    { label: 'mean return', key: 'measure.meanReturn' },
    { label: 'return now', key: 'moment.returnTemperature' },
  ],
};
