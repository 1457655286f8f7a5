import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ohmsAsked, type OhmsKey, readOhms } from '../../shared/ohmsAsked.ts';
import { readQuantity } from '../../shared/problems/readQuantity.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('ohms, degrees and percent as they are typed', () => {
  const read: readonly (readonly [OhmsKey, string, number])[] = [
    ['ohms', '2463', 2463],
    ['ohms', ' 2463,5 Ω ', 2463.5],
    ['ohms', '2463 \u2126', 2463], // the ohm sign, a letter of its own
    ['ohms', '2.463k', 2463],
    ['ohms', '2,46 kΩ', 2460],
    ['ohms', '10 kohm', 10_000],
    ['r25', '10 kilohms', 10_000],
    ['degrees', '−20', -20],
    ['degrees', '60,5 °C', 60.5],
    ['degrees', '60 degrees', 60],
    ['tolerance', '1 %', 0.01],
    ['tolerance', '0', 0],
    ['beta', '3977 K', 3977],
  ];
  test.each(read)('%s: %j is %d in SI', (key, text, value) => {
    const answer = readQuantity(text, ohmsAsked[key]);
    expect('value' in answer && answer.value).toBeCloseTo(value, 9); // rounding
  });

  const refused: readonly (readonly [OhmsKey, string, string])[] = [
    ['ohms', '', 'Resistance needs a number, such as 2463 Ω.'],
    ['ohms', 'OL', 'Resistance needs a number, such as 2463 Ω; “OL” is not one.'],
    ['ohms', '2,463', 'Resistance can be read two ways in “2,463”: write 2463 or 2.463.'],
    ['ohms', '2463 V', 'Resistance is given in ohms (Ω); “V” is not read.'],
    ['ohms', '0', 'Resistance must be between 1 Ω and 10000000 Ω; it is 0 Ω.'],
    ['degrees', '140 F', 'Temperature is given in degrees Celsius (°C); “F” is not read.'],
    ['degrees', '120.1', 'Temperature must be between −20 °C and 120 °C; it is 120.1 °C.'],
    ['tolerance', '-1', 'Tolerance must be between 0 % and 20 %; it is −1 %.'],
  ];
  test.each(refused)('%s: %j gets: %s', (key, text, sentence) => {
    const answer = readQuantity(text, ohmsAsked[key]);
    expect('problem' in answer && plain(answer.problem)).toBe(sentence);
  });

  test('any of 300 texts is read within its limits or gets 1 sentence, and nothing else', () => {
    const keys = fc.constantFrom(...(Object.keys(ohmsAsked) as OhmsKey[]));
    const text = fc.oneof(fc.string(), fc.double().map(String), fc.integer().map(String));
    fc.assert(
      fc.property(keys, text, (key, typed) => {
        const { values, problems } = readOhms({ [key]: typed });
        const value = values[key];
        expect(Object.keys({ ...values, ...problems })).toEqual([key]);
        if (value === undefined) expect(problems[key]).toMatch(/^[A-Z].*\.$/s);
        else expect(Number.isFinite(value) && problems[key] === undefined).toBe(true);
      }),
      { numRuns: 300 },
    );
  });

  test('of 5 entries 1 left out and 1 null are not asked for', () => {
    const { values, problems } = readOhms({ r25: '10k', beta: 'x', tolerance: '2', ohms: null });
    expect(values).toEqual({ r25: 10_000, tolerance: 0.02 });
    expect(Object.keys(problems)).toEqual(['beta']);
  });
});
