import { describe, expect, test } from 'vitest';
import {
  cataloguedFields,
  entriesFor,
  entryDigest,
  entryFrom,
  isFitted,
  settingsFor,
  withFitted,
} from '../../shared/catalogue.ts';
import { startingCatalogue } from '../../shared/catalogueStart.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { problemsOf } from '../../shared/problems.ts';
import { withSetting } from '../../shared/variant.ts';

const house = defaultVariant('a house');
const start = startingCatalogue();
const named = (part: string) => {
  const entry = start.find(({ name }) => name.includes(part));
  if (!entry) throw new Error(`no entry is called ${part}`);
  return entry;
};

describe('what a catalogue begins with', () => {
  test('says of every entry that it is invented, and has some to pick for each group', () => {
    expect(start.map(({ source }) => source)).toEqual(start.map(() => 'invented'));
    expect(entriesFor(start, 'boiler')).toHaveLength(4);
    expect(entriesFor(start, 'cylinder')).toHaveLength(4);
    expect(entriesFor(start, 'coil')).toHaveLength(8);
    expect(entriesFor(start, 'secondCoil')).toHaveLength(8);
  });

  test.each(start.map((entry) => [entry.name, entry] as const))(
    '%s can be fitted without a problem',
    (_name, entry) => {
      for (const target of ['boiler', 'coil', 'cylinder'] as const) {
        expect(problemsOf(withFitted(house, entry, target))).toEqual([]);
      }
    },
  );
});

describe('fitting', () => {
  test('a boiler sets its own settings and leaves the targets of the house', () => {
    const hot = withSetting(house, 'boiler.hotWaterFlow', 66);
    const fitted = withFitted(hot, named('35 kW'), 'boiler');
    expect(fitted.boiler).toMatchObject({ output: 35_000, minimumOutput: 8000, hotWaterFlow: 66 });
    expect(fitted.coil).toBe(hot.coil);
  });

  test('a cylinder brings its coil with it; picked as a coil, it brings only that', () => {
    const cylinder = named('300 litres');
    expect(withFitted(house, cylinder, 'cylinder')).toMatchObject({
      cylinder: { volume: 0.3 },
      coil: { length: 24, top: 0.9 },
    });
    const asCoil = withFitted(house, cylinder, 'coil');
    expect(asCoil.cylinder).toBe(house.cylinder);
    expect(asCoil.coil).toMatchObject({ length: 24 });
  });

  test('as a second coil it is put in series, at the heights the second coil has', () => {
    const fitted = withFitted(house, named('300 litres'), 'secondCoil');
    const { bottom, top } = house.secondCoil;
    expect(fitted.secondCoil).toMatchObject({ fitted: 'inSeries', length: 24, bottom, top });
    expect(fitted.coil).toBe(house.coil);
  });

  test('scale stays: it belongs to the house, not to the coil that is bought', () => {
    const scaled = withSetting(house, 'coil.scaleThickness', 0.001);
    expect(withFitted(scaled, named('18 m'), 'coil').coil.scaleThickness).toBe(0.001);
  });

  test('is known again until one of its settings is another', () => {
    const coil = named('18 m');
    const fitted = withFitted(house, coil, 'coil');
    expect(isFitted(house, coil, 'coil')).toBe(false);
    expect(isFitted(fitted, coil, 'coil')).toBe(true);
    expect(isFitted(withSetting(fitted, 'coil.length', 19), coil, 'coil')).toBe(false);
    expect(isFitted(withSetting(fitted, 'boiler.output', 9000), coil, 'coil')).toBe(true);
    expect(isFitted(fitted, named('35 kW'), 'coil')).toBe(false);
  });
});

describe('keeping what is on the bench', () => {
  test.each(['boiler', 'coil', 'cylinder', 'cylinderWithCoil'] as const)(
    'a kept %s fitted into another house gives that house all it is kept with',
    (as) => {
      const entry = entryFrom(withSetting(house, 'coil.length', 15.5), as, 'mine', 'rating plate');
      const target = as === 'cylinderWithCoil' ? 'cylinder' : as;
      const other = {
        ...defaultVariant('another'),
        boiler: { ...house.boiler, output: 9000 },
        coil: { ...house.coil, length: 7 },
        cylinder: { ...house.cylinder, volume: 0.1 },
      };
      expect(isFitted(other, entry, target)).toBe(false);
      expect(isFitted(withFitted(other, entry, target), entry, target)).toBe(true);
      expect(settingsFor(entry, target)).toHaveLength(entry.settings.length);
    },
  );

  test('holds only settings that have a say: a coil known by its UA has no tube', () => {
    const known = withSetting(house, 'coil.given', 'conductance');
    const paths = entryFrom(known, 'coil', 'mine', '').settings.map(([path]) => path);
    expect(paths).toEqual(['coil.given', 'coil.bottom', 'coil.top', 'coil.conductance']);
  });

  test('holds nothing of the house: no targets, no scale, no surroundings', () => {
    const paths = cataloguedFields.map(({ path }) => path);
    expect(paths).not.toContain('boiler.hotWaterFlow');
    expect(paths).not.toContain('coil.scaleThickness');
    expect(paths).not.toContain('cylinder.surroundings');
    expect(paths).toContain('boiler.output');
  });
});

test('an entry in one line', () => {
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  expect(plain(entryDigest(named('24 kW'), 'boiler'))).toBe('24 kW, at least 5 kW');
  expect(plain(entryDigest(named('18 m'), 'coil'))).toBe('18 m of tube, 22 mm, copper');
  expect(plain(entryDigest(named('120 litres'), 'coil'))).toBe('its coil: 6 m of tube, 22 mm');
  expect(plain(entryDigest(named('120 litres'), 'cylinder'))).toBe(
    '120 l, 0.9 m high, vented, with 6 m of coil',
  );
});
