import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fieldAt, fields } from '../../shared/fields.ts';
import type { NumberField } from '../../shared/fields/row.ts';
import { parseNumber } from '../../shared/problems.ts';
import { fromSI, toSI } from '../../shared/units.ts';
import type { FieldPath } from '../../shared/variant.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('numbers as they are typed', () => {
  const output = fieldAt('boiler.output') as NumberField;
  const read: readonly (readonly [FieldPath, string, number])[] = [
    ['boiler.output', '24', 24_000],
    ['boiler.output', ' 1.5 ', 1500],
    ['boiler.output', '1,5', 1500],
    ['boiler.output', '1.5 kW', 1500],
    ['boiler.output', '1.5kw', 1500],
    ['boiler.output', '12,50', 12_500],
    ['boiler.output', '2.4e1', 24_000],
    ['boiler.output', '24 kilowatts', 24_000],
    ['house.outside', '−5 °C', -5],
    ['house.outside', '-5C', -5],
    ['coil.area', '.85 m2', 0.85],
    ['coil.area', '0,850', 0.85],
    ['primary.heatLoss', '0.25 W/mK', 0.25],
    ['run.layers', '48', 48],
    ['cylinder.standingLoss', '2.4 kWh/24h', 100],
    ['cylinder.declaredPower', '93 W', 93],
  ];
  test.each(read)('%s: %j is %d in SI', (path, text, value) => {
    const answer = parseNumber(text, fieldAt(path) as NumberField);
    // the factors of kilowatts and kilowatt-hours a day may round the 16th figure
    expect('value' in answer && answer.value).toBeCloseTo(value, 9);
  });

  const refused: readonly (readonly [string, string])[] = [
    ['', 'Boiler output needs a number, such as 24 kW.'],
    ['  ', 'Boiler output needs a number, such as 24 kW.'],
    ['kW', 'Boiler output needs a number, such as 24 kW; “kW” is not one.'],
    ['twenty', 'Boiler output needs a number, such as 24 kW; “twenty” is not one.'],
    ['NaN', 'Boiler output needs a number, such as 24 kW; “NaN” is not one.'],
    ['Infinity', 'Boiler output needs a number, such as 24 kW; “Infinity” is not one.'],
    ['1 2', 'Boiler output is given in kilowatts (kW); “2” is not read.'],
    ['24 hp', 'Boiler output is given in kilowatts (kW); “hp” is not read.'],
    ['24000 W', 'Boiler output is given in kilowatts (kW); “W” is not read.'],
    ['1,500', 'Boiler output can be read two ways in “1,500”: write 1500 or 1.5.'],
    ['0x10', 'Boiler output is given in kilowatts (kW); “x10” is not read.'],
    ['240', 'Boiler output must be between 1 kW and 100 kW; it is 240 kW.'],
    ['1e999', 'Boiler output must be between 1 kW and 100 kW; it is beyond all measure.'],
  ];
  test.each(refused)('%j gets: %s', (text, message) => {
    const answer = parseNumber(text, output);
    expect('problem' in answer && plain(answer.problem.message)).toBe(message);
  });

  test('every number within its limits, printed to 12 figures, is read back in 200 cases', () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const numbers = fields.filter((field): field is NumberField => field.kind === 'number');
    fc.assert(
      fc.property(fc.constantFrom(...numbers), share, (field, at) => {
        const most = field.isWhole ? field.least : field.most;
        const value = fromSI(toSI(field.least + at * (most - field.least), field.unit), field.unit);
        const answer = parseNumber(String(value), field);
        expect('value' in answer && fromSI(answer.value, field.unit)).toBe(value);
      }),
      { numRuns: 200 },
    );
  });
});
