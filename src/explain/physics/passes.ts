import { percent, shown } from '../../../shared/format.ts';
import type { Section } from './section.ts';
import { atRest, has, measured, now, part, shownIn, tell } from './tell.ts';

export const passes: Section = {
  id: 'passes',
  title: 'What the coil passes',
  said: (here) => {
    const { conductance: UA, heatRate } = here.reading;
    if (!has(here, 'peakCoilHeat') || !has(here, 'meanCoilHeat')) {
      return [tell`The coil never runs here: ${measured(here, 'coilHeat')} go through it.`];
    }
    const fades = tell`As the store warms the difference shrinks and the coil fades: from ${measured(here, 'peakCoilHeat')} at its best to a mean of ${measured(here, 'meanCoilHeat')}.`;
    if (!here.coilRuns) return [atRest, fades];
    const made =
      here.result.variant.coil.given === 'conductance'
        ? 'Its conductance is given as a whole,'
        : 'Films, wall and scale lie one after the other, and together they leave a conductance of';
    const share = here.reading.of('coilInlet') - here.reading.of('coilOutlet');
    const most = here.reading.of('coilInlet') - here.reading.of('coilWater');
    return [
      tell`${made} ${part(shown(UA, 'wattPerKelvin', 0), 'coil.overall')}. Against the ${shown(heatRate, 'wattPerKelvin', 0)} that the flow carries it gives up ${part(percent(share / most), 'coil.share')} of the heat it could give at most, and the coil passes ${now(here, 'coilHeat')}.`,
      [
        ...fades,
        ...tell` For full output the flow would have to be at ${part(shown(here.reading.of('returnTemperature') + here.result.variant.boiler.output / heatRate, 'celsius', 1), 'boiler.flowNeeded')} now; above its limit the boiler must give less, as it does for ${measured(here, 'flowLimitTime')} of this reheat.`,
      ],
    ];
  },
  formulas: (here) => [
    ...shownIn(here, 'coil.overall', 'overall'),
    ...shownIn(here, 'moment.coilHeat', 'coilPasses'),
  ],
  further: [
    { label: 'the share given up', key: 'coil.share' },
    { label: 'the flow this needs', key: 'moment.flow' },
    { label: 'at full output', key: 'measure.outputLimitTime' },
    { label: 'return at the coil', key: 'moment.coilOutlet' },
  ],
};
