import { describe, expect, test } from 'vitest';
import type { DayRun } from '../../shared/day.ts';
import { fails, missingHeat } from '../../shared/drawFails.ts';
import { clock } from '../../shared/format.ts';
import { plain, type Sentence } from '../../shared/sentences.ts';
import { dayFinding, toldMoment } from '../../shared/sentences/day.ts';
import {
  brief,
  drawTrouble,
  failureLabel,
  failureWord,
  warmTime,
} from '../../shared/sentences/dayDraws.ts';
import {
  dayMeasureGroups,
  efficiencyWords,
  lossWords,
  patternWords,
} from '../../shared/sentences/dayMeasures.ts';
import { withSetting } from '../../shared/variant.ts';
import { inventedDay, inventedDraw } from '../make/inventedDay.ts';

const text = (words: Sentence | string) =>
  (typeof words === 'string' ? words : plain(words)).replaceAll('\u00a0', ' ');
const heading = (day: DayRun) => text(dayFinding(day).heading);
const summary = (day: DayRun) => dayFinding(day).summary.map(text);
const hour = 3600;
const { variant } = inventedDay();
const byProfile = withSetting(variant, 'day.pattern', 'XL');
const bath = inventedDraw({
  name: 'bath',
  from: 21.5 * hour,
  to: 21.5 * hour + 442,
  coldTime: 190,
  coldVolume: 0.038,
});
const profileDraw = inventedDraw({
  name: '0.735 kWh',
  from: 12.75 * hour,
  usefulAsked: 2.646e6,
  useful: 1.89e6,
  wanted: 10,
});

test('21:05 is 75 900 s after midnight; 86 400 s is 24:00, and of 7 days the second midnight', () => {
  expect(clock(75_900)).toBe('21:05');
  expect(clock(75_929)).toBe('21:05');
  expect(clock(86_400)).toBe('24:00');
  expect(text(clock(86_400, 7))).toBe('day 2, 00:00');
  expect(text(clock(7 * 86_400, 7))).toBe('day 7, 24:00');
});

describe('whether a draw fails', () => {
  test('1 s too cold fails, a draw that was cut does not, and one that wants nothing cannot', () => {
    expect(fails(inventedDraw())).toBe(false);
    expect(fails(inventedDraw({ coldTime: 1 }))).toBe(true);
    expect(fails(inventedDraw({ coldTime: 1, isCut: true }))).toBe(false);
    expect(fails(inventedDraw({ coldTime: 1, wanted: null }))).toBe(false);
  });

  test('by a load profile heat and peak decide, not the 190 s below Tm', () => {
    const enough = { ...profileDraw, useful: 2.646e6, coldTime: 190 };
    expect(fails(enough)).toBe(false);
    expect(fails({ ...enough, hasPeaked: false })).toBe(true);
    // 0.735 kWh asked less 0.525 kWh got
    expect(missingHeat(profileDraw) / 3.6e6).toBeCloseTo(0.21, 9); // exact but for rounding
    expect(missingHeat({ ...profileDraw, isCut: true })).toBe(0);
  });
});

describe('the heading of a day', () => {
  test('nobody runs cold, and the least usable is 241 l at 21:05', () => {
    const day = inventedDay();
    expect(heading(day)).toBe(
      'Nobody runs cold in 24 h: at least 241 l usable at 40 °C are left, at 21:05.',
    );
    expect(toldMoment(day)).toBe(21 * hour + 300);
  });

  test('of 3 days the day is named; where 0 l are left that is said', () => {
    const week = inventedDay({
      shownDays: 3,
      measures: { leastUsable: 0, leastUsableAt: 30 * hour },
    });
    expect(heading(week)).toBe(
      'Nobody runs cold in 3 days, but nothing usable at 40 °C is left on day 2 at 06:00.',
    );
  });

  test('the bath runs cold after 4.2 min by the mark of it, 38 l; the moment is there', () => {
    const marks = [{ at: bath.from + 252, kind: 'tapCold' as const }];
    const day = inventedDay({ draws: [inventedDraw(), bath], marks });
    expect(heading(day)).toBe('The bath at 21:30 runs cold after 4.2 min: 38 l come out too cold.');
    expect(toldMoment(day)).toBe(bath.from + 252);
    // without its mark, the cold is taken for the end of the draw: 442 s less 190 s
    expect(warmTime(inventedDay({ draws: [bath], marks: [] }), bath)).toBe(252);
  });

  test('a draw that never comes warm has no time before it', () => {
    const draws = [{ ...bath, waitTime: null }];
    expect(heading(inventedDay({ draws }))).toBe(
      'The bath at 21:30 never comes warm: 38 l come out too cold.',
    );
  });

  test('2 of 3 draws run cold, 43 l in all, worst the bath', () => {
    const draws = [inventedDraw(), inventedDraw({ coldTime: 30, coldVolume: 0.005 }), bath];
    expect(heading(inventedDay({ draws }))).toBe(
      '2 of 3 draws run cold: 43 l come out too cold; the worst is the bath at 21:30.',
    );
  });

  test('by load profile XL 0.210 kWh are short, or a peak of 55 °C is not reached', () => {
    const short = inventedDay({ variant: byProfile, draws: [profileDraw] });
    expect(heading(short)).toBe(
      'The 0.735 kWh draw at 12:45 falls 0.210 kWh of useful heat short.',
    );
    const peak = { ...profileDraw, useful: 2.646e6, peak: 55, hasPeaked: false };
    expect(heading(inventedDay({ variant: byProfile, draws: [peak] }))).toBe(
      'The 0.735 kWh draw at 12:45 does not reach the 55 °C it has to.',
    );
    expect(heading(inventedDay({ variant: byProfile, draws: [profileDraw, profileDraw] }))).toBe(
      '2 of 2 draws fall short: 0.42 kWh of useful heat are missing; the worst is the 0.735 kWh draw at 12:45.',
    );
    const enough = { ...profileDraw, useful: 2.646e6 };
    expect(heading(inventedDay({ variant: byProfile, draws: [enough, enough] }))).toBe(
      'All 2 draws get their useful heat: at least 241 l usable at 40 °C are left, at 21:05.',
    );
  });

  test('a day with 0 draws says what is lost and how often the stat calls', () => {
    const day = inventedDay({ draws: [], measures: { hotWaterCalls: 1 } });
    expect(heading(day)).toBe(
      'Nothing is drawn in 24 h: the cylinder loses 1.50 kWh and the stat calls 1 time.',
    );
    expect(summary(day)[1]).toBe('At least 241 l are usable, at 21:05.');
  });
});

describe('the summary of a day', () => {
  test('day 2 ends as it began; 277 l drawn, 174 l from the store, 1.50 kWh lost', () => {
    expect(summary(inventedDay())).toEqual([
      'This is day 2, which ends as it began.',
      'In 24 h 277 l are drawn at the tap, 174 l of them out of the store, and the cylinder loses 1.50 kWh.',
    ]);
  });

  test('7 days that do not repeat themselves say by how much, 6.9 K, and why they may not', () => {
    const never = { simulatedDays: 7, isSteady: false, difference: 6.93 };
    expect(summary(inventedDay(never))[0]).toBe(
      'The days do not repeat themselves: even day 7, shown here, ends up to 6.9 K from how it began, for heating that comes and goes may keep two days from being equal.',
    );
    const alone = withSetting(variant, 'heating.arrangement', 'hotWaterOnly');
    expect(summary(inventedDay({ ...never, variant: alone }))[0]).toContain(
      'for calls that come at other times of the day may keep',
    );
    const through = withSetting(variant, 'day.pasteurise', 'once');
    expect(summary(inventedDay({ ...never, variant: through }))[0]).toBe(
      'The day of heating through stands alone: it ends up to 6.9 K from how it began.',
    );
  });

  test('3 stated days are told, and 1 with how far it ends from how it began, 0.06 K', () => {
    const stated = withSetting(variant, 'day.repeat', 'stated');
    const three = inventedDay({ variant: stated, shownDays: 3, isSteady: false });
    expect(summary(three)[0]).toBe(
      '3 days one after the other, from a store that was reheated before the first.',
    );
    const one = inventedDay({ variant: stated, isSteady: false, difference: 0.06 });
    expect(summary(one)[0]).toContain('it ends up to 0.06 K from how it began');
  });

  test('a run that ends at 13:20 says so before anything else', () => {
    const cut = inventedDay({ outcome: { kind: 'tooManySteps', at: 48_000 }, isSteady: false });
    expect(summary(cut)[0]).toBe(
      'The run needed more steps than it may take and ends at 13:20, short of 24 h: the numbers go up to there.',
    );
  });
});

describe('what was wrong with a draw', () => {
  test.each([
    ['nothing', {}, ''],
    ['126 s cold', { coldTime: 126, coldVolume: 0.021 }, 'cold for 2.1 min, 21 l'],
    ['12 s cold', { coldTime: 12, coldVolume: 0.0024 }, 'cold for 12 s, 2.4 l'],
    ['never warm', { waitTime: null, coldTime: 300, coldVolume: 0.05 }, 'never came warm, 50 l'],
    ['a peak', { peak: 55, hasPeaked: false }, 'peak of 55 °C not reached'],
    ['heat', { usefulAsked: 7.256e6 }, '0.210 kWh short'],
    ['a wait of 9 s', { waitTime: 9 }, 'waited 9 s'],
    ['a wait of 0.4 s', { waitTime: 0.4 }, ''],
    ['the end', { isCut: true, hasPeaked: false, peak: 55 }, 'still open when the last day ended'],
    [
      'two things',
      { waitTime: 9, coldTime: 60, coldVolume: 0.01 },
      'cold for 1.0 min, 10 l; waited 9 s',
    ],
  ])('%s', (_what, wish, words) => {
    expect(text(drawTrouble(inventedDraw(wish)))).toBe(words);
  });

  test('its label has the name, 38 l and at most 50 characters, with a name of 200 too', () => {
    expect(text(failureLabel(bath, variant))).toBe('bath cold, 38 l');
    const own = withSetting(variant, 'day.pattern', 'own');
    const long = failureLabel({ ...bath, name: 'Dog wash '.repeat(25) }, own);
    expect(long.length).toBeLessThanOrEqual(50);
    expect(text(failureLabel({ ...bath, name: 'Dog wash' }, own))).toBe('“Dog wash” cold, 38 l');
    expect(text(failureLabel(profileDraw, byProfile))).toBe('0.735 kWh draw 0.21 kWh short');
    const peak = { ...profileDraw, useful: 2.646e6, peak: 55, hasPeaked: false };
    expect(text(failureLabel(peak, byProfile))).toBe('0.735 kWh draw short of 55 °C');
  });

  test('its one word is cold, or short where it was warm; none of a draw that does not fail', () => {
    expect([bath, profileDraw, inventedDraw()].map(failureWord)).toEqual(['cold', 'short', null]);
  });

  test('59 s are in seconds, 60 s in minutes, a tenth of a second is 1 s', () => {
    expect([59, 60, 0.1].map((seconds) => text(brief(seconds)))).toEqual([
      '59 s',
      '1.0 min',
      '1 s',
    ]);
  });
});

describe('the measures of a day in words', () => {
  test('3 groups leave out what the day has not: a profile’s heat, rooms, burner starts', () => {
    const groups = dayMeasureGroups(inventedDay({ measures: { lowestRoom: null } }));
    expect(groups.map(({ title }) => title)).toEqual([
      'At the tap',
      'The store',
      'Boiler, heater and rooms',
    ]);
    const rows = groups.flatMap(({ rows: each }) =>
      each.map(({ label, text: said }) => [label, text(said)]),
    );
    expect(rows).toContainEqual(['least usable at', '21:05']);
    expect(rows).toContainEqual(['useful heat over fuel and electricity', '80 %']);
    expect(rows).not.toContainEqual(['lowest room temperature', '–']);
    expect(rows).toHaveLength(19); // of 22, without two of a profile and the rooms
  });

  test('1.50 kWh of standing loss cost 0.12; a store colder than the room takes heat in', () => {
    expect(text(lossWords(inventedDay()))).toBe(
      'In the day the cylinder loses 1.50 kWh to its surroundings: at what heat costs here that is 0.12 of your currency, by the prices you set.',
    );
    expect(text(lossWords(inventedDay({ measures: { standingLoss: -3.6e5 } })))).toContain(
      'takes in 0.10 kWh',
    );
    expect(lossWords(inventedDay({ measures: { standingLossCost: null } }))).toContain('no cost');
  });

  test('the efficiency: 80 % of 12.50 kWh of fuel, with electricity 2.5 times, no label', () => {
    const words = efficiencyWords(inventedDay()).map(text);
    expect(words[1]).toContain(
      'Useful heat is 80 % of what was spent on it: 10.00 kWh out of 12.50 kWh',
    );
    expect(words[2]).toContain('not the declared efficiency of a label: no correction term');
    const heater = efficiencyWords(inventedDay({ measures: { electricity: 3.6e6 } })).map(text);
    expect(heater[1]).toContain('and 2.5 times 1.00 kWh of electricity');
    expect(efficiencyWords(inventedDay({ variant: byProfile }))[0]).toContain('at or above Tm');
    const ideal = efficiencyWords(inventedDay({ measures: { efficiency: null } }));
    expect(ideal).toHaveLength(2);
    expect(ideal[1]).toContain('has no efficiency');
  });

  test('3 patterns name where their draws come from', () => {
    expect(patternWords(inventedDay())).toContain('Appendix J');
    expect(patternWords(inventedDay({ variant: byProfile }))).toContain('Annex III, Table 1');
    const own = withSetting(variant, 'day.pattern', 'own');
    expect(patternWords(inventedDay({ variant: own }))).toBe('Draws: your own table.');
  });
});
