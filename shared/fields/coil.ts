import type { FieldPath, Variant } from '../variant.ts';
import type { ChoiceField, Field, NumberField } from './row.ts';

type CoilGroup = 'coil' | 'secondCoil';
type Given = Variant['coil']['given'];

/** The settings of one coil; the second coil has the same, and is either fitted or not. */
function coilRows(group: CoilGroup, bottom: number, top: number): readonly Field[] {
  const isSecond = group === 'secondCoil';
  const fitted = (variant: Variant) => !isSecond || variant.secondCoil.fitted !== 'no';
  const when = (...given: Given[]) => ({
    matters: (variant: Variant) => fitted(variant) && given.includes(variant[group].given),
  });
  const always = { matters: fitted };
  const at = (key: keyof Variant['coil']) => `${group}.${key}` as FieldPath;
  const named = (label: string) =>
    isSecond ? `Second coil: ${label[0].toLowerCase()}${label.slice(1)}` : label;
  const number = (
    key: keyof Variant['coil'],
    label: string,
    row: Omit<NumberField, 'kind' | 'path' | 'label'>,
  ): NumberField => ({ kind: 'number', path: at(key), label: named(label), ...row });
  const choice = (
    key: keyof Variant['coil'],
    label: string,
    row: Omit<ChoiceField, 'kind' | 'path' | 'label'>,
  ): ChoiceField => ({ kind: 'choice', path: at(key), label: named(label), ...row });

  return [
    choice('given', 'Coil is known by', {
      help: 'Use whatever is known: the tube, its area, a declared rating or a measured conductance.',
      choices: [
        { value: 'geometry', label: 'its tube' },
        { value: 'area', label: 'its area' },
        { value: 'rating', label: 'a declared rating' },
        { value: 'conductance', label: 'a known UA' },
      ],
      default: 'geometry',
      source: 'a declared rating narrows the ±25 % that geometry alone leaves',
      ...always,
    }),
    number('bottom', 'Coil bottom', {
      help: 'Height of the lowest turn; water below it is hardly heated.',
      unit: 'metre',
      least: 0,
      most: 3,
      step: 0.02,
      default: bottom,
      source: 'common practice, no source',
      ...always,
    }),
    number('top', 'Coil top', {
      help: 'Height of the highest turn.',
      unit: 'metre',
      least: 0.02,
      most: 3,
      step: 0.02,
      default: top,
      source: 'common practice, no source',
      ...always,
    }),
    choice('flowEnters', 'Flow enters at', {
      help: 'Where the hot primary water enters the coil.',
      choices: [
        { value: 'top', label: 'the top' },
        { value: 'bottom', label: 'the bottom' },
      ],
      default: 'top',
      source: 'common practice, no source',
      ...always,
    }),
    number('length', 'Tube length', {
      help: 'Length of tube in the water.',
      unit: 'metre',
      least: 0.5,
      most: 80,
      step: 0.5,
      default: 12,
      source: 'common practice, no source: about 0.8 m² of 22 mm tube',
      ...when('geometry'),
    }),
    number('area', 'Coil area', {
      help: 'Outside surface of the tube.',
      unit: 'squareMetre',
      least: 0.05,
      most: 6,
      step: 0.05,
      default: 0.85,
      source: 'common practice, no source: ordinary indirect coils have 0.5 to 1.5 m²',
      ...when('area'),
    }),
    number('tubeOutside', 'Tube outside diameter', {
      help: 'Measured over the bare tube.',
      unit: 'millimetre',
      least: 8,
      most: 54,
      step: 1,
      default: 22,
      source: 'EN 1057, a standard size, from memory',
      ...when('geometry', 'area', 'rating'),
    }),
    number('tubeWall', 'Tube wall', {
      help: 'Thickness of the tube.',
      unit: 'millimetre',
      least: 0.3,
      most: 4,
      step: 0.1,
      default: 0.8,
      source: 'common practice, no source',
      ...when('geometry', 'area', 'rating'),
    }),
    choice('tubeMaterial', 'Tube material', {
      help: 'Copper conducts so well that its wall hardly matters; stainless steel matters a little.',
      choices: [
        { value: 'copper', label: 'copper' },
        { value: 'stainless', label: 'stainless steel' },
        { value: 'steel', label: 'carbon steel' },
      ],
      default: 'copper',
      source: 'common practice, no source',
      ...when('geometry', 'area', 'rating'),
    }),
    number('coilDiameter', 'Coil diameter', {
      help: 'Across the turns, centre to centre; a tighter coil stirs the water inside it more.',
      unit: 'metre',
      least: 0.08,
      most: 1.5,
      step: 0.01,
      default: 0.35,
      source: 'common practice, no source',
      ...when('geometry', 'area', 'rating'),
    }),
    number('enhancement', 'Stirring by the coil itself', {
      help: 'Outside coefficient over that of one level tube; measured coils gave 1.0 to 1.5.',
      unit: 'times',
      least: 0.5,
      most: 4,
      step: 0.05,
      default: 1.25,
      source:
        'Mates 1987 found 1.3 to 1.8 times the formula of Morgan; 1.25 times Churchill and Chu is about 1.5 times Morgan',
      ...when('geometry', 'area'),
    }),
    number('ratedOutput', 'Declared rating', {
      help: 'Mean output of the clean coil over the heat-up described below.',
      unit: 'kilowatt',
      least: 0.5,
      most: 150,
      step: 0.5,
      default: 20,
      source: 'common practice, no source',
      ...when('rating'),
    }),
    number('ratedFlow', 'Flow of the rating', {
      help: 'Primary flow of the declared rating.',
      unit: 'litrePerMinute',
      least: 0.5,
      most: 100,
      step: 0.5,
      default: 15,
      source: 'conventional test, from memory: about 15 l/min',
      ...when('rating'),
    }),
    number('ratedInlet', 'Flow temperature of the rating', {
      help: 'Temperature at which the primary entered the coil.',
      unit: 'celsius',
      least: 40,
      most: 95,
      step: 1,
      default: 80,
      source: 'conventional test, from memory: about 80 °C',
      ...when('rating'),
    }),
    number('ratedFrom', 'Store at the start of the rating', {
      help: 'Mixed store before the rated heat-up.',
      unit: 'celsius',
      least: 1,
      most: 60,
      step: 1,
      default: 15,
      source: 'conventional test, from memory: from 15 °C',
      ...when('rating'),
    }),
    number('ratedTo', 'Store at the end of the rating', {
      help: 'Mixed store after it; the same as at the start for a rating at one temperature.',
      unit: 'celsius',
      least: 1,
      most: 75,
      step: 1,
      default: 60,
      source: 'conventional test, from memory: to 60 °C',
      ...when('rating'),
    }),
    number('conductance', 'Known UA', {
      help: 'Heat passed per kelvin between primary and store, taken as constant.',
      unit: 'wattPerKelvin',
      least: 10,
      most: 20_000,
      step: 10,
      default: 900,
      source: 'common practice, no source',
      ...when('conductance'),
    }),
    number('scaleThickness', 'Scale', {
      help: 'Lime on the outside of the tube.',
      unit: 'millimetre',
      least: 0,
      most: 5,
      step: 0.1,
      default: 0,
      source: 'a clean coil',
      ...when('geometry', 'area', 'rating'),
    }),
    number('scaleConductivity', 'Scale conductivity', {
      help: 'Dense lime conducts about 2.2, porous lime half as much.',
      unit: 'wattPerMetreKelvin',
      least: 0.3,
      most: 4,
      step: 0.1,
      default: 2.2,
      source: 'Pezzin, Giansetti and Ferri 2013, conference abstract on calcium carbonate',
      matters: (variant) =>
        fitted(variant) &&
        variant[group].given !== 'conductance' &&
        variant[group].scaleThickness > 0,
    }),
  ];
}

/** The coil, or the lower of two. */
export const coilFields = coilRows('coil', 0.08, 0.48);

/** A second coil in series with the first. */
export const secondCoilFields: readonly Field[] = [
  {
    kind: 'choice',
    path: 'secondCoil.fitted',
    label: 'Second coil',
    help: 'A second coil on the same primary; water passes one coil, then the other.',
    choices: [
      { value: 'no', label: 'none' },
      { value: 'inSeries', label: 'in series' },
    ],
    default: 'no',
    source: 'common practice, no source',
  },
  ...coilRows('secondCoil', 0.7, 1),
];
