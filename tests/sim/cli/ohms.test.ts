import { describe, expect, test } from 'vitest';
import { answer } from '../../../sim/cli/run.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ').replace(/\s+/g, ' ');
const said = async (...args: string[]) => {
  const { out, problems, exitCode } = await answer(args);
  return { out: plain(out), problems: problems.map(plain), exitCode };
};

describe('--ohms and --degrees', () => {
  test('2981 Ω at beta 3435 K is 60.0 °C, 59.3 to 60.7 °C with both 1 % off', async () => {
    const { out, problems, exitCode } = await said('--ohms', '2981', '--beta', '3435');
    expect([problems, exitCode]).toEqual([[], 0]);
    expect(out).toMatch(/^Thermistor of 10000 Ω at 25 °C, beta 3435 K /);
    // by hand: R25 is worth 0.32 K and beta 0.39 K, 0.71 K together
    expect(out).toContain(
      '2981 Ω is 60.0 °C; 59.3 °C to 60.7 °C with R25 and beta each within 1 %.',
    );
  });

  test('60 °C at beta 3435 K is 2981 Ω, 2916 to 3047 Ω, the corners worked by hand', async () => {
    const { out } = await said('--degrees', '60', '--beta=3435', '--tolerance', '1 %');
    expect(out).toContain('60 °C is 2981 Ω; 2916 Ω to 3047 Ω with R25 and beta each within 1 %.');
  });

  test.each([
    [['--degrees', '-20'], '−20 °C is'],
    [['--degrees=-20'], '−20 °C is'],
    [['--ohms', '2,5 kΩ'], '2500 Ω is 59.6 °C;'],
    [['--ohms', '5k', '--r25', '5k'], '5000 Ω is 25.0 °C;'],
    [['--ohms', '10000', '--tolerance', '0'], '10000 Ω is 25.0 °C if R25 and beta are exact.'],
  ])('%j says: %s', async (args, words) => {
    expect((await said(...args)).out).toContain(words);
  });

  test('both at once are 2 lines and lead back: 60 °C is 2463 Ω, 2463 Ω is 60.0 °C', async () => {
    const { out } = await said('--ohms', '2463', '--degrees', '60', '--tolerance', '0');
    expect(out).toContain('2463 Ω is 60.0 °C if R25 and beta are exact.');
    expect(out).toContain('60 °C is 2463 Ω if R25 and beta are exact.');
  });

  test.each(['1', '100', '250000'])(
    '%s Ω is no temperature of a 10 kΩ thermistor from −20 to 120 °C, and 1 sentence says so',
    async (ohms) => {
      const { out, exitCode } = await said('--ohms', ohms);
      expect(exitCode).toBe(0);
      expect(out).toContain(
        `${ohms} Ω is no temperature from −20 °C to 120 °C for this element; check the element and its leads.`,
      );
    },
  );

  test('every answer says to isolate the electricity before opening a wiring box', async () => {
    for (const args of [
      ['--ohms', '2463'],
      ['--degrees', '60'],
      ['--ohms', '1'],
    ]) {
      expect((await said(...args)).out).toMatch(/Isolate the electricity, .* a wiring box\./);
    }
  });

  const refused: readonly (readonly [string[], string])[] = [
    [['--ohms'], '--ohms needs a number after it.'],
    [['--ohms', 'warm'], '--ohms: Resistance needs a number, such as 2463 Ω; “warm” is not one.'],
    [
      ['--ohms', '2,463'],
      '--ohms: Resistance can be read two ways in “2,463”: write 2463 or 2.463.',
    ],
    [['--ohms', '60 °C'], '--ohms: Resistance is given in ohms (Ω); “°C” is not read.'],
    [
      ['--degrees', '200'],
      '--degrees: Temperature must be between −20 °C and 120 °C; it is 200 °C.',
    ],
    [
      ['--degrees', '1e999'],
      '--degrees: Temperature must be between −20 °C and 120 °C; it is beyond all measure.',
    ],
    [
      ['--ohms', '9', '--tolerance', '21'],
      '--tolerance: Tolerance must be between 0 % and 20 %; it is 21 %.',
    ],
    [['--ohms', '9', '--beta', '3'], '--beta: Beta must be between 2000 K and 5500 K; it is 3 K.'],
    [['--r25', '5000'], '--r25 goes with --ohms or --degrees; give one of them too.'],
    [['--ohms', '9', 'a.json'], '--ohms is answered without a file; leave out a.json.'],
    [['--degrees', '9', '--json'], '--degrees is answered without a file; leave out --json.'],
    [['--ohm', '9'], '--ohm is not an option; the nearest is --ohms.'],
  ];
  test.each(refused)('%j is refused with 1 sentence and exit code 2', async (args, sentence) => {
    expect(await said(...args)).toEqual({ out: '', problems: [sentence], exitCode: 2 });
  });

  test('2 options that are wrong are 2 sentences', async () => {
    const { problems, exitCode } = await said('--ohms', 'x', '--beta', '9');
    expect(exitCode).toBe(2);
    expect(problems.map((line) => line.slice(0, line.indexOf(':')))).toEqual(['--beta', '--ohms']);
  });

  test('--help names all 5 options', async () => {
    const { out } = await said('--help');
    for (const option of ['ohms', 'degrees', 'r25', 'beta', 'tolerance']) {
      expect(out).toContain(`--${option} N`);
    }
  });
});
