import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromText, toFile, toText } from '../../shared/codec.ts';
import { defaultVariant, fields } from '../../shared/fields.ts';
import { presets, presetVariant } from '../../shared/presets.ts';
import { problemsOf } from '../../shared/problems.ts';
import { groups, type Variant } from '../../shared/variant.ts';
import { anyVariant } from '../make/anyVariant.ts';

function opened(text: string): Variant {
  const reading = fromText(text);
  if ('problems' in reading) throw new Error(JSON.stringify(reading.problems));
  return reading.variant;
}

describe('saving and opening', () => {
  test('save, open and save again gives the same bytes and the same variant for 300 variants', () => {
    fc.assert(
      fc.property(anyVariant, (variant) => {
        expect(problemsOf(variant)).toEqual([]);
        const text = toText(variant);
        const again = opened(text);
        expect(again).toEqual(variant);
        expect(toText(again)).toBe(text);
      }),
      { numRuns: 300 },
    );
  }, 30_000);

  test('a height of 0.1 + 0.2 m, dragged and not typed, is saved as 0.3 and stays there', () => {
    const base = defaultVariant('Dragged');
    const dragged = { ...base, stat: { ...base.stat, sensorHeight: 0.1 + 0.2 } };
    const once = toText(dragged);
    expect(once).toContain('"sensorHeightMetres": 0.3,');
    expect(toText(opened(once))).toBe(once);
  });

  test('a file with 2 keys, format and version, opens as the defaults', () => {
    const text = '{"format": "reheat-bench variant", "version": 3}';
    expect(opened(text)).toEqual(defaultVariant('Cylinder'));
  });

  test('a file of version 1 opens with an ideal boiler, a given 15 l/min, valves without travel and a spread inlet', () => {
    const { boiler, primary, draw, ...others } = opened(
      '{"format": "reheat-bench variant", "version": 1}',
    );
    const defaults = defaultVariant('Cylinder');
    expect(boiler).toEqual({ ...defaults.boiler, model: 'ideal' });
    expect(primary).toEqual({
      ...defaults.primary,
      flowFrom: 'given',
      lossFrom: 'given',
      valveTravel: 0,
    });
    expect(draw).toEqual({ ...defaults.draw, inlet: 'asTyped' });
    const { boiler: asBuilt, primary: network, draw: jet, ...rest } = defaults;
    expect([asBuilt.model, network.flowFrom, jet.inlet]).toEqual([
      'asBuilt',
      'network',
      'deflected',
    ]);
    expect(others).toEqual(rest);
  });

  test('a file of version 2 opens with its cold water spread over 0.05 m and nothing else changed', () => {
    const defaults = defaultVariant('Cylinder');
    expect(opened('{"format": "reheat-bench variant", "version": 2}')).toEqual({
      ...defaults,
      draw: { ...defaults.draw, inlet: 'asTyped', inletMixing: 0.05 },
    });
  });

  test('what a file of version 1 or 2 says stands over what its version meant, and is saved as version 3', () => {
    for (const version of [1, 2]) {
      const said = '"draw": {"inlet": "plain"}, "primary": {"valveTravelSeconds": 12}';
      const variant = opened(`{"format": "reheat-bench variant", "version": ${version}, ${said}}`);
      expect([variant.draw.inlet, variant.primary.valveTravel]).toEqual(['plain', 12]);
      expect(toText(variant)).toContain('"version": 3,');
      expect(opened(toText(variant))).toEqual(variant);
    }
  });

  test('a setting given twice, 20 kW and then 6 kW, stands at 6 kW', () => {
    const twice = file('"boiler": {"outputKilowatts": 20, "outputKilowatts": 6}');
    expect(opened(twice).boiler.output).toBe(6000);
  });

  test('24 kW may be written with its unit, 1,5 m with a comma', () => {
    const text = file(
      '"boiler": {"outputKilowatts": "24 kW"}, "cylinder": {"heightMetres": "1,5 m"}',
    );
    expect(opened(text).boiler.output).toBe(24_000);
    expect(opened(text).cylinder.height).toBe(1.5);
  });

  test('a byte-order mark before the text and 28 presets open as they were saved', () => {
    expect(presets).toHaveLength(28);
    for (const preset of presets) {
      const variant = presetVariant(preset);
      expect(opened(`\ufeff${toText(variant)}`)).toEqual(variant);
    }
  });

  test('every one of the settings is in the file once, with its unit in the key', () => {
    const saved = toFile(defaultVariant('Keys')) as Record<string, Record<string, unknown>>;
    const count = groups.reduce((sum, group) => sum + Object.keys(saved[group]).length, 0);
    expect(count).toBe(fields.length);
    expect(saved.boiler).toHaveProperty('outputKilowatts', 24);
    expect(saved.start).toHaveProperty('hotSharePercent', 0);
  });
});

const heading = '"format": "reheat-bench variant", "version": 3';
const file = (rest: string) => `{${heading}, ${rest}}`;

// text of the file, then the place and the sentence of each problem
type Place = readonly [field: string, sentence: string];
const refused: readonly (readonly [text: string, ...problems: Place[]])[] = [
  ['', ['', 'The file is empty; it must hold one variant as JSON.']],
  [' \n\t', ['', 'The file is empty; it must hold one variant as JSON.']],
  [
    '{\n  "name": "x",\n}',
    ['', 'The file is not JSON: line 3, column 1 has “}” where something else is needed.'],
  ],
  [
    '{"boiler": {"outputKilowatts": NaN}}',
    ['', 'The file is not JSON: line 1, column 32 has “N” where something else is needed.'],
  ],
  ['hello', ['', 'The file is not JSON: line 1, column 1 has “h” where something else is needed.']],
  [
    '{"a": 1',
    [
      '',
      'The file is not JSON: line 1, column 8 has the end of the text where something else is needed.',
    ],
  ],
  ['[1, 2]', ['', 'The file must hold one object in braces; it holds a list.']],
  ['null', ['', 'The file must hold one object in braces; it holds null.']],
  ['42', ['', 'The file must hold one object in braces; it holds the number 42.']],
  [
    '{}',
    [
      'format',
      'This is not a variant of Reheat Bench: its "format" must be "reheat-bench variant".',
    ],
  ],
  [
    '{"format": "reheat-bench result", "version": 1}',
    [
      'format',
      'This is not a variant of Reheat Bench: its "format" must be "reheat-bench variant".',
    ],
  ],
  [
    '{"format": "reheat-bench variant", "version": 4}',
    [
      'version',
      'The file has version 4: it was saved by a newer Reheat Bench, and this one reads versions 1, 2 and 3.',
    ],
  ],
  [
    '{"format": "reheat-bench variant"}',
    ['version', 'The file has version missing: it must be 1, 2 or 3.'],
  ],
  [
    '{"format": "reheat-bench variant", "version": "3"}',
    ['version', 'The file has version "3": it must be 1, 2 or 3.'],
  ],
  [file('"name": 5'), ['name', 'The name must be text in quotes; it holds the number 5.']],
  [
    file(`"name": "${'x'.repeat(121)}"`),
    ['name', 'The name must have at most 120 characters; it has 121.'],
  ],
  [file('"boilr": {}'), ['boilr', 'boilr is not a part of a variant; the nearest is boiler.']],
  [file('"boiler": []'), ['boiler', 'boiler must hold its settings in braces; it holds a list.']],
  [
    file('"cylinder": {"volumeGallons": 46}'),
    [
      'cylinder.volumeGallons',
      'cylinder.volumeGallons is not a setting; the nearest is cylinder.volumeLitres.',
    ],
  ],
  [
    file('"boiler": {"output": 24}'),
    ['boiler.output', 'boiler.output is not a setting; the nearest is boiler.outputKilowatts.'],
  ],
  [
    file('"stat": {"outputKilowatts": 24}'),
    ['stat.outputKilowatts', 'stat.outputKilowatts is not a setting; boiler.outputKilowatts is.'],
  ],
  [
    file('"boiler": {"__proto__": {"output": 1}}'),
    [
      'boiler.__proto__',
      'boiler.__proto__ is not a setting; boiler has model, outputKilowatts, minimumOutputKilowatts, hotWaterFlowCelsius, heatingFlowCelsius, targets and 10 more.',
    ],
  ],
  [
    file('"boiler": {"outputKilowatts": "24 hp"}'),
    ['boiler.outputKilowatts', 'Boiler output is given in kilowatts (kW); “hp” is not read.'],
  ],
  [
    file('"boiler": {"outputKilowatts": "lots"}'),
    [
      'boiler.outputKilowatts',
      'Boiler output needs a number, such as 24\u00a0kW; “lots” is not one.',
    ],
  ],
  [
    file('"boiler": {"outputKilowatts": "1,500"}'),
    ['boiler.outputKilowatts', 'Boiler output can be read two ways in “1,500”: write 1500 or 1.5.'],
  ],
  [
    file('"boiler": {"outputKilowatts": null}'),
    ['boiler.outputKilowatts', 'Boiler output needs a number; it holds null.'],
  ],
  [
    file('"boiler": {"outputKilowatts": true}'),
    ['boiler.outputKilowatts', 'Boiler output needs a number; it holds the boolean true.'],
  ],
  [
    file('"boiler": {"outputKilowatts": 0.5}'),
    [
      'boiler.outputKilowatts',
      'Boiler output must be between 1\u00a0kW and 100\u00a0kW; it is 0.5\u00a0kW.',
    ],
  ],
  [
    file('"boiler": {"outputKilowatts": 1e308}'),
    [
      'boiler.outputKilowatts',
      'Boiler output must be between 1\u00a0kW and 100\u00a0kW; it is beyond all measure.',
    ],
  ],
  [
    file('"stat": {"sensorHeightMetres": 1.5}'),
    [
      'stat.sensorHeightMetres',
      'Sensor height must be between 0.02\u00a0m and 1.32\u00a0m, the height of this cylinder; it is 1.5\u00a0m.',
    ],
  ],
  [file('"run": {"layers": 48.5}'), ['run.layers', 'Layers must be a whole number; it is 48.5.']],
  [
    file('"coil": {"given": "spiral"}'),
    [
      'coil.given',
      'Coil is known by: choose one of geometry, area, rating, conductance; "spiral" is not among them.',
    ],
  ],
  [
    file('"secondCoil": {"fitted": "inSeries", "bottomMetres": 0.3, "topMetres": 0.6}'),
    [
      'secondCoil.bottomMetres',
      'The two coils overlap between 0.30\u00a0m and 0.48\u00a0m: put the second coil above 0.48\u00a0m or below 0.08\u00a0m.',
    ],
  ],
  [
    file('"boiler": {"outputKilowatts": 0}, "stat": {"lagSecs": 5, "setPointCelsius": 90}'),
    ['stat.lagSecs', 'stat.lagSecs is not a setting; the nearest is stat.lagSeconds.'],
    [
      'boiler.outputKilowatts',
      'Boiler output must be between 1\u00a0kW and 100\u00a0kW; it is 0\u00a0kW.',
    ],
    [
      'stat.setPointCelsius',
      'Set-point must be between 35\u00a0°C and 80\u00a0°C; it is 90\u00a0°C.',
    ],
  ],
];

describe('files that are refused', () => {
  test('the table below has at least 25 of them', () => {
    expect(refused.length).toBeGreaterThanOrEqual(25);
  });

  const cases = refused.map(([text, ...expected]) => ({ text, expected }));
  test.each(cases)('$text gets 1 sentence for each problem', ({ text, expected }) => {
    const reading = fromText(text);
    if (!('problems' in reading)) throw new Error('the file was read');
    expect(reading.problems.map(({ field, message }) => [field, message])).toEqual(expected);
  });

  test('a key __proto__ at the top changes no object: 1 problem, no new property', () => {
    expect(fromText(file('"__proto__": {"polluted": 1}'))).toHaveProperty('problems.length', 1);
    expect({}).not.toHaveProperty('polluted');
  });

  test('a text cut off at any of its places is refused with 1 problem and never thrown on', () => {
    const text = toText(defaultVariant('Cut'));
    for (let length = 0; length < text.length - 2; length += 7) {
      expect(fromText(text.slice(0, length))).toHaveProperty('problems.length', 1);
    }
  });

  test('100 000 open brackets get 1 problem', () => {
    expect(fromText('['.repeat(100_000))).toHaveProperty('problems.length', 1);
  });
});
