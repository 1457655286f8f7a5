/** Sentences with a directional word that claim no direction of the model, each with why. */
export interface NoDirection {
  readonly why: string;
  readonly says: readonly string[];
}

/** Words that depend on the numbers beside them, and the test that shows them follow. */
export interface FollowsNumbers {
  readonly in: string;
  /** The name of the test, or its beginning. */
  readonly test: string;
  readonly says: readonly string[];
}

export const noDirection: readonly NoDirection[] = [
  {
    why: 'a name, a key or a label: nothing is said of it',
    says: [
      'Boiler: Proportional band',
      'Proportional band',
      '`always`, `timed`',
      'always',
      'rise',
      'temperature rise',
      '{rise}',
      'fall of the house',
      'flow less return',
      'flow less return on the coldest day',
      'half the range of the day',
      'heat capacity of the lower layer',
      'temperature of the lower layer',
      'the reading rises',
      'too much',
      'What the least output gives too much',
      'Opens further: …',
      'return hotter than the limit',
      'what rises and mixes',
      'Layers, and what rises through them',
      'what never gets hot',
      'how often the stat calls for it',
      'Lower layer: the water beside the coil with a minute of its heat held there.',
      'Slow hot water is usually blamed on the boiler.',
      'usual causes of slow hot water are there to start from: the same house, one thing wrong.',
      'each of 19 causes of slow hot water',
    ],
  },
  {
    why: 'tells how the program or a file is used, or how it was timed',
    says: [
      'With Node 20.19 or later, npm and git, and nothing else installed:',
      'The app saves, and the command line reads, one JSON object:',
      'save, open, save',
      '_Project_ raises type and lines for a room.',
      'and no colder than the incoming cold.',
      'how that grows with layers and hours',
      'how soon the curve follows a dragged sensor in Chromium with the processor slowed four times.',
      'Use whatever is known: the tube, its area, a declared rating or a measured conductance.',
      'The mean coil output is a result of the run, not an input: the settings beside it show what would raise it.',
    ],
  },
  {
    why: 'how well something is known, not which way it goes',
    says: [
      '…: a test is nearer than a formula, but not the coil in use',
      'A declared rating or a measured heat-up narrows it.',
      'a declared rating narrows the ±25 % that geometry alone leaves',
      'A rating or a calibration of the coil narrows the ± 25 %.',
      'From the tube alone it is known to ±25 %; a declared rating narrows that.',
      'extended; a declared loss is better where there is one',
      'The number of people who live there, where it is known, is better than this mean.',
      'Habits differ far more than this mean: type what your household does.',
      'Three coefficients follow the table of a real thermistor more closely than beta does.',
      'square elbow through 90°; from memory, published values differ by half',
      'temperatures are set against guidance and published times, as a band and never as a verdict.',
      'Published times differ by several times, so this is one edge of a band and never a verdict:',
    ],
  },
  {
    why: 'guidance, safety and what happens to people: rules with a source, which no model may move',
    says: [
      'A store that must be run cooler is usually heated through to 60 °C for an hour every week',
      'where it must be run cooler heat the whole store to 60 °C for an hour every week',
      'Where it is run cooler, usual practice is to heat the whole store to 60 °C for an hour every week',
      'Legionella is not reliably killed, and in the cooler parts it multiplies.',
      'a child’s sooner',
      'Limit the temperature at the outlet, not by storing cooler.',
      'Limit the temperature at the outlet with a thermostatic mixing valve, not by storing cooler.',
      'Lower it with a thermostatic mixing valve at the outlet, not by storing cooler.',
      'Fit a thermostatic mixing valve at the outlet; do not store cooler for it.',
      'lower the temperature at the outlet with a thermostatic mixing valve, not by storing cooler.',
      'Never alter, block or defeat a safety device',
      'never raise or bypass the cut-out.',
      'Find out why before anybody resets it; never raise it or bridge it.',
      'the open vent must never be valved, blocked or allowed to freeze.',
      'children, old people and thin or numb skin burn sooner',
      'in biofilm, scale, sludge or amoebae it lasts longer.',
      'It may still grow up to about 46 °C',
      'bacteria that no longer grow in a culture, even after 70 °C, can recover.',
    ],
  },
  {
    why: 'a range, a definition or a rule of counting, held where it is computed',
    says: [
      'lower layer warmer than the one above it',
      'water warmer than the room',
      'store warmer than the air',
      'surfaces that face a room much larger than themselves',
      '−20 to 120 °C, where the ohms have to fall all the way',
      'air within half the band of the set point',
      'one fully mixed lump at constant power, loss in proportion to the difference',
      'one fully mixed lump, loss in proportion to the difference',
      'characteristic equation turned round, with a heat loss in proportion to the difference',
      'proportional and integral action on the flow temperature',
      'time constant of Table 9b, read second-hand; the fall is its exponential decay',
      'a circulator that holds its head gives the smaller of that and the curve',
      'outside diameter less two walls; walls as usually sold, from memory',
      'Dense lime conducts about 2.2, porous lime half as much.',
      'the sooner of the tabled burn through a part of the skin',
      'the later of the tabled burn through the whole skin',
      'and a shorter one of others at 50 °C; straight on a logarithmic scale between them',
      'until the outlet falls to 40 °C',
      'The rise is the mean of the run above the air around, with the metal counted as water.',
      'the integrator adds the rise up from the start.',
      'The rise is the mean above the incoming cold, where the hot water leaves the pipe to the tap.',
      'The first line holds from … to …, and is shown at its nearer end.',
    ],
  },
  {
    why: 'a calculation by hand, or the place of a line on the screen',
    says: [
      'Worked by hand: 8 kW less 5 kW.',
      'Worked by hand: 210 l less 200 l.',
      'Worked by hand: 6 kWh less 5.5 kWh.',
      'Worked by hand at half the largest flow: 1000 × 9.80665 × 6 × 0.75.',
      'the stream gives up half of 60 K at 1 kW/K.',
      'The lower line is for the mean return of the reheat and the mean load while lit.',
      'the lower line says how each moment is weighed.',
      'the lower lines are for the draw that took most from the store in its time',
      'The lower line is for the middle of the first draw that failed, or of the largest.',
      'Closed form, from the two times of the same lump.',
    ],
  },
  {
    why: 'what the model leaves out, or where a source says more than the model takes from it',
    says: [
      'a corrugated bore costs more than this',
      'extended to laminar flow, where an elbow matters less',
      'no gains from sun or people',
      'air and fabric as one node, no gains: it understates the first minutes of air temperature',
      'extended; with sun, people or warm radiators the house cools less',
      'extended; a pipe behind boards or near a warm wall radiates less',
      'extended: a thicker layer would also widen the tube, which is left out',
      'Only the temperature; antifreeze in the primary would raise it, which is not modelled.',
      'an old boiler without condensing is 10 to 20 worse',
      'common practice, no source: 15 to 30 s, more for slow actuators',
      'common practice, no source: short runs are often bare',
    ],
  },
];

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
