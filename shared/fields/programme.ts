import type { Variant } from '../variant.ts';
import type { Field, NumberField } from './row.ts';

type Service = 'hotWater' | 'heating';

/** Start and length of one period; a length of 0 leaves it out. */
function period(
  service: Service,
  which: '' | 'Again',
  words: string,
  from: number,
  length: number,
): Field[] {
  const timed = { matters: ({ programme }: Variant) => programme[service] === 'timed' };
  const row = (path: NumberField['path'], rest: Omit<NumberField, 'path' | 'kind' | 'source'>) =>
    ({ kind: 'number', path, source: 'common practice, no source', ...rest, ...timed }) as const;
  return [
    row(`programme.${service}${which}From`, {
      label: `${words} from`,
      help: 'Time of day, in hours after midnight.',
      unit: 'hour',
      least: 0,
      most: 23.75,
      step: 0.25,
      default: from,
    }),
    row(`programme.${service}${which}For`, {
      label: `${words} for`,
      help: 'Minutes; 0 for none.',
      unit: 'minute',
      least: 0,
      most: 1440,
      step: 5,
      default: length,
    }),
  ];
}

function whether(service: Service, label: string): Field {
  return {
    kind: 'choice',
    path: `programme.${service}`,
    label,
    help: 'Always allowed, or at the set times only; outside them a call is not answered.',
    choices: [
      { value: 'always', label: 'always' },
      { value: 'timed', label: 'at set times' },
    ],
    default: 'always',
    source: 'no programme, so that the reheat stands alone',
  };
}

/** When hot water and heating are allowed. */
export const programmeFields: readonly Field[] = [
  {
    kind: 'number',
    path: 'programme.startsAt',
    label: 'Time of day at the start',
    help: 'Hours after midnight when the run begins; the programme and a daily outside wave go by it.',
    unit: 'hour',
    least: 0,
    most: 23.75,
    step: 0.25,
    default: 6,
    source: 'an example: before the morning',
    matters: ({ programme, house }) =>
      programme.hotWater === 'timed' || programme.heating === 'timed' || house.outsideSwing > 0,
  },
  whether('hotWater', 'Hot water allowed'),
  ...period('hotWater', '', 'Hot water', 6, 60),
  ...period('hotWater', 'Again', 'Hot water again', 17, 60),
  whether('heating', 'Heating allowed'),
  ...period('heating', '', 'Heating', 6, 180),
  ...period('heating', 'Again', 'Heating again', 16, 360),
];
