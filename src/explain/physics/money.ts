import type { Section } from './section.ts';
import { measured, ofDay, shownIn, tell } from './tell.ts';

export const money: Section = {
  id: 'money',
  title: 'What it comes to',
  said: (here) => {
    const { variant, measures } = here.result;
    const run =
      measures.fuel === null
        ? tell`An ideal boiler burns no fuel that is counted; the immersion heater takes ${measured(here, 'electricity')}.`
        : tell`This run burns ${measured(here, 'fuel')} of fuel and takes ${measured(here, 'electricity')} of electricity for the immersion heater; by the prices of the settings that is ${measured(here, 'cost')} of your currency and ${measured(here, 'carbon')} of carbon dioxide.`;
    if (here.day === null) return [run, tell`A day in use has not been computed yet.`];
    const heater =
      variant.immersion.used === 'no' ? '' : ', a unit of electricity counted 2.5 times';
    return [
      run,
      here.day.measures.efficiency === null
        ? tell`Of the day in use ${ofDay(here, 'useful')} were useful, and nothing that was spent on it is counted.`
        : tell`Of the day in use ${ofDay(here, 'useful')} were useful, ${ofDay(here, 'efficiency')} of what was spent on hot water${heater}. What is missing left by the flue, through the insulation and from the pipes.`,
    ];
  },
  formulas: (here) => [
    ...shownIn(here, 'measure.cost', 'bill'),
    ...(here.day === null ? [] : shownIn(here, 'day.efficiency', 'efficiencyOfDay')),
  ],
  further: [
    { label: 'carbon dioxide', key: 'measure.carbon' },
    { label: 'the immersion heater', key: 'measure.electricity' },
    { label: 'fuel for hot water in the day', key: 'day.fuelForHotWater' },
    { label: 'cost of the day', key: 'day.cost' },
    { label: 'burner starts in the day', key: 'day.burnerStarts' },
  ],
};
