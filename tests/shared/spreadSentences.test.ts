import { describe, expect, test } from 'vitest';
import { inventedSpread } from '../make/inventedSpread.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { plain } from '../../shared/sentences.ts';
import { spreadFinding, spreadSentence, unknownRows } from '../../shared/sentences/spread.ts';
import { unknownsOf } from '../../shared/unknowns.ts';
import { type FieldPath, type Variant, withSetting } from '../../shared/variant.ts';

const spaced = (text: string) => text.replaceAll('\u00a0', ' ');
const sentence = (wish: Parameters<typeof inventedSpread>[0] = {}) =>
  spaced(spreadSentence(inventedSpread(wish)));
const found = (wish: Parameters<typeof inventedSpread>[0], present: number | null) => {
  const { heading, summary } = spreadFinding(inventedSpread(wish), present);
  return { heading: spaced(plain(heading)), summary: summary.map(plain).map(spaced) };
};
const set = (...settings: readonly (readonly [FieldPath, number | string])[]): Variant =>
  settings.reduce((v, [path, value]) => withSetting(v, path, value), defaultVariant('as found'));

describe('the sentence beside the answer', () => {
  test('37, 45.5 and 54 min, the coil first with 60 %', () => {
    expect(sentence()).toBe(
      'With what is not known for certain: 37 to 54 min in 8 of 10 cases, half of them under 46 min; the coil matters most.',
    );
  });

  test('a band of less than 5 min is said in tenths', () => {
    expect(sentence({ low: 1446, median: 1488, high: 1536 })).toContain(
      '24.1 to 25.6 min in 8 of 10 cases, half of them under 24.8 min',
    );
  });

  test('46 and 42 % matter most together, 46 and 30 % do not', () => {
    const coil = (share: number) => ({ key: 'coil', share }) as const;
    const scale = { key: 'scale', share: 0.46 } as const;
    expect(sentence({ firstOrder: [scale, coil(0.42)] })).toContain(
      'the scale and the coil matter most.',
    );
    expect(sentence({ firstOrder: [scale, coil(0.3)] })).toContain('the scale matters most.');
  });

  test('across two hours each end has its own unit', () => {
    expect(sentence({ low: 6900, median: 7400, high: 9000 })).toContain(
      '115 min to 2 h 30 min in 8 of 10 cases, half of them under 2 h 03 min',
    );
  });

  test('with more than a tenth not there within 2 h the long end is left open', () => {
    expect(sentence({ high: null, reached: 17 })).toContain(
      '37 min or more in 9 of 10 cases, half of them under 46 min, more than 1 in 10 not within 2 h 00 min',
    );
  });

  test('with more than half not there the half is left open too', () => {
    expect(sentence({ high: null, median: null, reached: 8 })).toContain(
      '37 min or more in 9 of 10 cases, more than half of them not within 2 h 00 min',
    );
  });

  test('with 1 of 20 there, and with none', () => {
    const none = { low: null, median: null, high: null };
    expect(sentence({ ...none, reached: 1 })).toContain('within 2 h 00 min in only 1 of 20 cases');
    expect(sentence({ ...none, reached: 0, firstOrder: [] })).toBe(
      'With what is not known for certain: not within 2 h 00 min in any of 20 cases.',
    );
  });

  test('with nothing uncertain it says so', () => {
    expect(sentence({ of: 1, runs: 1, reached: 1, firstOrder: [] })).toBe(
      'Nothing is set as uncertain, so the time stands as it is.',
    );
  });
});

describe('the figure', () => {
  test('says the band, the counts, the time as set and what is left unexplained: 8 %', () => {
    const { heading, summary } = found({}, 2544);
    expect(heading).toMatch(/^The reheat takes 37 to 54 min in 8 of 10 cases/);
    expect(summary).toEqual([
      'All 20 cases get there; as set it is 42 min.',
      'Each by itself, the unknowns explain 92 % of the scatter; the other 8 % are several acting together, and chance in 20 runs.',
    ]);
  });

  test('after 32 of 256 runs, 30 of them there, says so far', () => {
    expect(found({ runs: 32, reached: 30, of: 256 }, null).summary[0]).toBe(
      '30 of the first 32 of 256 cases get there within 2 h 00 min; as set the stat is not satisfied within 2 h 00 min.',
    );
  });

  test('with none there it names the 20 cases', () => {
    const none = { low: null, median: null, high: null, reached: 0, firstOrder: [] };
    expect(found(none, null).heading).toBe(
      'In none of 20 cases is the stat satisfied within 2 h 00 min.',
    );
  });

  test('with nothing uncertain 1 run says it all', () => {
    expect(found({ of: 1, runs: 1, reached: 1, firstOrder: [] }, 2544).heading).toBe(
      'Nothing is set as uncertain: 1 run says it all, and as set it is 42 min.',
    );
  });
});

describe('ranges', () => {
  const texts = (variant: Variant) =>
    unknownRows(inventedSpread({ variant, firstOrder: [] })).map(({ key, ranges }) => [
      key,
      ...ranges.map(({ text, setting }) => `${spaced(text)} by ${setting}`),
    ]);

  test('of the defaults with 1 mm of scale', () => {
    expect(texts(set(['coil.scaleThickness', 0.001]))).toEqual([
      ['coil', '75 to 125 % of what its data give by unknowns.coil'],
      ['scale', '0.5 to 2 mm by unknowns.scale'],
      ['primaryFlow', '80 to 120 % of what the network gives by unknowns.primaryFlow'],
      ['cold', '7 to 13 °C by unknowns.cold'],
      ['lag', '30 to 120 s by unknowns.lag'],
    ]);
  });

  test('a rated coil has 10 %, a clean one up to 0.2 mm, a given flow litres, a month its cold', () => {
    const variant = set(
      ['coil.given', 'rating'],
      ['primary.flowFrom', 'given'],
      ['primary.flow', 15 / 60_000],
      ['draw.coldFrom', 'mains'],
      ['draw.month', '7'],
    );
    expect(texts(variant).slice(0, 4)).toEqual([
      ['coil', '90 to 110 % of what its data give by unknowns.ratedCoil'],
      ['scale', '0 to 0.2 mm by unknowns.hiddenScale'],
      ['primaryFlow', '12 to 18 l/min by unknowns.primaryFlow'],
      ['cold', '15.4 to 21.4 °C by unknowns.cold'],
    ]);
  });

  test('two coils, one scaled, have two ranges of scale; a known UA has none', () => {
    const two = set(['secondCoil.fitted', 'inSeries'], ['secondCoil.scaleThickness', 0.0005]);
    expect(texts(two)[1]).toEqual([
      'scale',
      '0 to 0.2 mm by unknowns.hiddenScale',
      'second coil 0.25 to 1 mm by unknowns.scale',
    ]);
    expect(texts(set(['coil.given', 'conductance'])).map(([key]) => key)).not.toContain('scale');
  });

  test('every range put to 0 leaves no unknown, and one alone leaves 1', () => {
    const ranges = ['coil', 'hiddenScale', 'primaryFlow', 'cold', 'lag'] as const;
    const none = set(...ranges.map((key) => [`unknowns.${key}`, 0] as const));
    expect(unknownsOf(none)).toEqual([]);
    expect(unknownsOf(withSetting(none, 'unknowns.cold', 2)).map(({ key }) => key)).toEqual([
      'cold',
    ]);
  });

  test('a sensor without a lag has none to be unsure of, and cold water stays at 1 °C or more', () => {
    const found = unknownsOf(set(['stat.lag', 0], ['draw.incomingCold', 2]));
    expect(found.map(({ key }) => key)).not.toContain('lag');
    expect(found.find(({ key }) => key === 'cold')).toMatchObject({ low: 1, high: 5 });
  });
});
