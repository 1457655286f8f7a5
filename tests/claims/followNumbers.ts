/** Words that depend on the numbers beside them, and the test that shows them follow. */
export interface FollowsNumbers {
  readonly in: string;
  /** The name of the test, or its beginning. */
  readonly test: string;
  readonly says: readonly string[];
}

const sentences = 'tests/shared/sentences.test.ts';
const plant = 'tests/shared/sentencesPlant.test.ts';
const figures = 'tests/shared/figureSentences.test.ts';
const day = 'tests/shared/daySentences.test.ts';
const hygiene = 'tests/shared/hygieneSentences.test.ts';
const loss = 'tests/shared/lossSentences.test.ts';
const delivery = 'tests/shared/deliverySentences.test.ts';
const field = 'tests/src/figures/storeField.test.ts';

export const followNumbers: readonly FollowsNumbers[] = [
  {
    in: 'tests/sim/run/laws.test.ts',
    test: 'in 200 invented reheats',
    says: [
      'laws: more coil, output, flow or limit never slower, scale never faster, priority never slower',
    ],
  },
  {
    in: 'tests/shared/differences.test.ts',
    test: 'the finding has a verb and a number',
    says: ['… recovers in …, … sooner than …'],
  },
  {
    in: 'tests/shared/differences.test.ts',
    test: 'differences in words',
    says: ['… more'],
  },
  {
    in: 'tests/sim/run/burnerCycling.test.ts',
    test: 'cycles with the closed-form period to 0.1 %',
    says: ['burner on and off on a coil that takes less than its least'],
  },
  {
    in: 'tests/sim/run/wholePlant.test.ts',
    test: 'the heat lost is that of one node within 15 percent, the air falls further',
    says: ['0.01 K the table; 15 % the heat; the air falls further'],
  },
  {
    in: 'tests/sim/run/changes.test.ts',
    test: 'the minutes of every change for 15 of them are those of a fresh run, soonest first',
    says: [
      'practical changes are run one by one and ranked by the minutes they save',
      'ranks practical changes by what they save',
    ],
  },
  {
    in: 'tests/sim/run/pace.test.ts',
    test: 'a gain is what the whole model gives with a setting moved by a thousandth of its usual step',
    says: ['… more boiler output', 'a flow limit … K higher', '… more primary flow', '… more coil'],
  },
  {
    in: sentences,
    test: 'a store all at 60 °C with a differential of 6 K never calls within 2 h',
    says: ['The stat never calls: … above ….'],
  },
  {
    in: sentences,
    test: 'a flow limit of 55 °C never satisfies a stat at 60 °C, and the finding says why',
    says: ['The sensor never reaches …: the boiler holds its flow at ….'],
  },
  {
    in: sentences,
    test: 'a run of 15 min ends before the stat is satisfied, with the reading at its end',
    says: ['The coil passed … on average; a longer run would show whether it gets there.'],
  },
  {
    in: sentences,
    test: 'more steps than it may take and ends after 12.0 min',
    says: ['The run needed more steps than it may take and ends'],
  },
  {
    in: plant,
    test: 'a least output of 12 kW on 0.35 m² of coil is told, with its rests counted',
    says: [
      'The coil takes less than the boiler’s least output: the burner is at its least for …, goes off … and rests or waits for ….',
    ],
  },
  {
    in: figures,
    test: 'hot water first against both at once: 33 min and 19.4 °C, 58 min and 19.7 °C',
    says: [
      'Hot water first takes … and the rooms fall to …; both at once takes … and ….',
      'The same reheat takes …, and the rooms fall to ….',
      'more than …',
    ],
  },
  {
    in: loss,
    test: 'that falls below 40 °C after 30 h says so, and so does one that starts at 38 °C',
    says: ['The top falls below 40 °C after ….'],
  },
  {
    in: day,
    test: 'a draw that never comes warm has no time before it',
    says: ['… never comes warm: ….'],
  },
  {
    in: day,
    test: 'by load profile XL 0.210 kWh are short, or a peak of 55 °C is not reached',
    says: ['… falls … of useful heat short.', 'fall short'],
  },
  { in: day, test: 'never came warm, 50 l', says: ['never came warm, …'] },
  {
    in: day,
    test: 'a store colder than the room takes heat in',
    says: ['In … the cylinder takes in … from around it: it is mostly colder than the air.'],
  },
  {
    in: delivery,
    test: 'a boiler that keeps up has no end to it',
    says: ['The boiler keeps up: a draw of … goes on for two hours without falling by ….'],
  },
  {
    in: field,
    test: 'half of the store passes 40 °C after 24 min; 21 l in 2 of 20 layers never do',
    says: ['Half of the store passes 40 °C after …; ….', '… never do'],
  },
  {
    in: field,
    test: 'a run of 20 min ends before half of the store passes 40 °C',
    says: ['Less than half of the store passes 40 °C within ….'],
  },
  {
    in: hygiene,
    test: 'a coldest tenth from 12 to 40 °C never reaches 60 °C and is warm for 20 h of 24 h',
    says: ['never reaches 60 °C'],
  },
  {
    in: hygiene,
    test: '26 l that never get hot are the blind spot under the coil',
    says: ['… never reach 60 °C, the coolest of them no more than ….'],
  },
  {
    in: hygiene,
    test: 'at the tap 0 or 3 of 11 long draws have less than 50 °C after a minute',
    says: [
      '… … of a minute or more',
      'In … of … the hot water at the tap has less than 50 °C a minute after opening.',
    ],
  },
];
