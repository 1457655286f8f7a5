import { type Asked, askedRow } from './asked.ts';
import { dayMeasureRows } from './day.ts';
import { type Measures, measureRows } from './result.ts';
import { capital } from './sentences/sentence.ts';

/** Measures by which variants are compared, under one name. */
export interface ComparedGroup {
  readonly title: string;
  readonly keys: readonly Asked[];
}

/** What variants are compared by at first sight, in the order in which it is asked. */
export const comparedGroups: readonly ComparedGroup[] = [
  {
    title: 'What comes of the reheat',
    keys: [
      'recovery',
      'usableAtSatisfied',
      'usableWhenCalled',
      'meanCoilHeat',
      'meanReturn',
      'condensingShare',
      'burnerStarts',
    ],
  },
  { title: 'What comes of a day in use', keys: ['callsPerDay', 'dayLowestRoom', 'fuelPerDay'] },
];

const first = comparedGroups.flatMap(({ keys }) => keys);

/** Every other measure of the reheat, a click away. */
export const comparedElse: ComparedGroup = {
  title: 'Everything else of the reheat',
  keys: (Object.keys(measureRows) as (keyof Measures)[]).filter((key) => !first.includes(key)),
};

/** Those that take a run besides the reheat: a day in use, or a draw until the stat calls. */
export const comparedApart: readonly Asked[] = first.filter((key) => askedRow(key).of !== 'run');

/** The name of a measure under the name of its group, which says already that it is of the day. */
export function comparedLabel(key: Asked): string {
  const { of, perDay, label, measure } = askedRow(key);
  const isOfDay = of === 'day' && !perDay;
  return capital(isOfDay ? dayMeasureRows[measure as keyof typeof dayMeasureRows].label : label);
}
