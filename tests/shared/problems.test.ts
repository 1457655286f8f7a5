import { describe, expect, test } from 'vitest';
import { defaultVariant, fieldAt, fields } from '../../shared/fields.ts';
import type { NumberField } from '../../shared/fields/row.ts';
import { problemsOf, rangeText } from '../../shared/problems.ts';
import { toSI } from '../../shared/units.ts';
import { type FieldPath, type Variant, withSetting } from '../../shared/variant.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

/** The defaults with some settings, in SI or words, put to other values. */
function variantWith(...sets: readonly (readonly [FieldPath, number | string])[]): Variant {
  return sets.reduce<Variant>(
    (variant, [path, value]) => withSetting(variant, path, value),
    defaultVariant('Case'),
  );
}

const found = (variant: Variant) =>
  problemsOf(variant).map(({ path, code, message }) => [path, code, plain(message)]);

describe('settings on their own', () => {
  const numbers = fields.filter((field): field is NumberField => field.kind === 'number');

  test('the defaults have 0 problems', () => {
    expect(problemsOf(defaultVariant('Defaults'))).toEqual([]);
  });

  test.each(numbers)(
    '$path is accepted at its least $least and most $most, refused beyond',
    (field) => {
      const codesAt = (value: number) =>
        problemsOf(withSetting(defaultVariant('Limit'), field.path, value))
          .filter(({ path, code }) => path === field.path && code === 'range')
          .map(({ path }) => path);
      const below = field.least - field.step;
      const above = field.most + field.step;
      expect(codesAt(toSI(field.least, field.unit))).toEqual([]);
      expect(codesAt(toSI(below, field.unit))).toEqual([field.path]);
      expect(codesAt(toSI(above, field.unit))).toEqual([field.path]);
      // heights stop at the 1.32 m of the default cylinder, or at their own limit if it is hidden
      const [, most] = rangeText(field, defaultVariant('Limit')).split(' to ');
      expect(codesAt(toSI(Number.parseFloat(most), field.unit))).toEqual([]);
    },
  );

  test.each([Number.NaN, Number.POSITIVE_INFINITY, 1e308])(
    '%d is refused for all settings',
    (value) => {
      for (const { path } of numbers) {
        const problems = problemsOf(withSetting(defaultVariant('Wild'), path, value));
        expect(problems.map((problem) => problem.path)).toEqual([path]);
      }
    },
  );

  test('no message has a word that blames: 6 words are never said', () => {
    const wild = numbers.flatMap(({ path }) =>
      problemsOf(withSetting(defaultVariant('Words'), path, 1e9)),
    );
    expect(wild.length).toBe(numbers.length);
    for (const { message, path } of wild) {
      expect(message).not.toMatch(/invalid|illegal|error|please|sorry|oops/i);
      expect(message).toContain(fieldAt(path as FieldPath).label);
    }
  });
});

describe('settings against each other', () => {
  const inSeries = ['secondCoil.fitted', 'inSeries'] as const;
  const rating = ['coil.given', 'rating'] as const;
  const cases: readonly {
    readonly name: string;
    readonly sets: readonly (readonly [FieldPath, number | string])[];
    readonly gives: readonly (readonly [FieldPath, string, string])[];
  }[] = [
    {
      name: 'a sensor at 1.34 m in a cylinder 1.32 m high',
      sets: [['stat.sensorHeight', 1.34]],
      gives: [
        [
          'stat.sensorHeight',
          'range',
          'Sensor height must be between 0.02 m and 1.32 m, the height of this cylinder; it is 1.34 m.',
        ],
      ],
    },
    {
      name: 'a coil 0.01 m high',
      sets: [
        ['coil.top', 0.09],
        ['coil.given', 'conductance'],
      ],
      gives: [
        [
          'coil.top',
          'coilHeight',
          'Coil top must be at least 0.02 m above the coil bottom, which is at 0.08 m.',
        ],
      ],
    },
    {
      name: '8 mm tube with a 4 mm wall',
      sets: [
        ['coil.tubeOutside', 0.008],
        ['coil.tubeWall', 0.004],
      ],
      gives: [
        [
          'coil.tubeWall',
          'tubeWall',
          'Tube wall must be at most 3.5 mm, or a tube of 8 mm has no bore left.',
        ],
      ],
    },
    {
      name: 'a coil 0.5 m wide in a cylinder 0.45 m wide',
      sets: [['coil.coilDiameter', 0.5]],
      gives: [
        [
          'coil.coilDiameter',
          'coilWidth',
          'Coil diameter must be at most 0.42 m: the cylinder is 0.45 m wide inside and the tube 22 mm.',
        ],
      ],
    },
    {
      name: '0.5 m of tube in a coil of 0.35 m',
      sets: [['coil.length', 0.5]],
      gives: [
        ['coil.length', 'oneTurn', 'Tube length must be at least 1.10 m, one turn of this coil.'],
      ],
    },
    {
      name: '40 m of 22 mm tube between 0.08 m and 0.48 m',
      sets: [['coil.length', 40]],
      gives: [
        [
          'coil.length',
          'tooMuchTube',
          'Tube length is more than fits: 36.4 turns of 22 mm tube stand 0.78 m high, and the coil is 0.40 m from its lowest turn to its highest. Shorten the tube, widen the coil or make it taller.',
        ],
      ],
    },
    {
      name: 'two coils that share 0.18 m',
      sets: [inSeries, ['secondCoil.bottom', 0.3], ['secondCoil.top', 0.6]],
      gives: [
        [
          'secondCoil.bottom',
          'overlap',
          'The two coils overlap between 0.30 m and 0.48 m: put the second coil above 0.48 m or below 0.08 m.',
        ],
      ],
    },
    {
      name: 'two coils that touch at 0.48 m',
      sets: [inSeries, ['secondCoil.bottom', 0.48]],
      gives: [],
    },
    {
      name: 'a second coil at 2 m that is not fitted',
      sets: [
        ['secondCoil.bottom', 1.9],
        ['secondCoil.top', 2],
      ],
      gives: [],
    },
    {
      name: 'a rating of 37 kW from 15 l/min at 80 °C, which can give 38.9 kW',
      sets: [rating, ['coil.ratedOutput', 37_000]],
      gives: [
        [
          'coil.ratedOutput',
          'unreachableRating',
          'Declared rating must be at most 36.9 kW, which is 95 % of what 15 l/min at 80 °C can give a store from 15 °C to 60 °C.',
        ],
      ],
    },
    {
      name: 'a rating of 36.9 kW on the same terms',
      sets: [rating, ['coil.ratedOutput', 36_900]],
      gives: [],
    },
    {
      name: 'a rating at one temperature, 15 °C, of 60 kW',
      sets: [rating, ['coil.ratedTo', 15], ['coil.ratedOutput', 60_000]],
      gives: [],
    },
    {
      name: 'a rating that cools, 60 °C to 50 °C',
      sets: [rating, ['coil.ratedFrom', 60], ['coil.ratedTo', 50]],
      gives: [
        [
          'coil.ratedTo',
          'ratedTo',
          'The rated heat-up ends at 50 °C, below its start at 60 °C: raise the store temperature at its end.',
        ],
      ],
    },
    {
      name: 'a rating to 60 °C with the flow at 60 °C',
      sets: [rating, ['coil.ratedInlet', 60]],
      gives: [
        [
          'coil.ratedInlet',
          'ratedInlet',
          'The rated flow enters at 60 °C and cannot heat a store to 60 °C: raise the flow temperature of the rating.',
        ],
      ],
    },
    {
      name: 'a hot part at 12 °C over cold at 20 °C',
      sets: [
        ['start.hotShare', 0.5],
        ['start.hotTemperature', 12],
        ['draw.incomingCold', 20],
      ],
      gives: [
        [
          'start.hotTemperature',
          'colderThanCold',
          'Hot part at the start must be at least 20 °C, the incoming cold; it is 12 °C.',
        ],
      ],
    },
    {
      name: 'a flow limit of 55 °C under a set-point of 60 °C, which is a finding',
      sets: [['boiler.hotWaterFlow', 55]],
      gives: [],
    },
  ];

  test.each(cases)('$name gives $gives.length problems', ({ sets, gives }) => {
    expect(found(variantWith(...sets))).toEqual(gives);
  });

  test('the limit that is named is accepted: 0.42 m of coil, 1.10 m of tube, 3.5 mm of wall', () => {
    const allowed = variantWith(['coil.coilDiameter', 0.42], ['coil.length', 1.4]);
    expect(found(allowed)).toEqual([]);
    expect(found(variantWith(['coil.length', 1.1]))).toEqual([]);
    const thick = variantWith(['coil.tubeOutside', 0.008], ['coil.tubeWall', 0.0035]);
    expect(found(thick)).toEqual([]);
  });
});
