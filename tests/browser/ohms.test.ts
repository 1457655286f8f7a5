import axe from 'axe-core';
import { afterEach, describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import Ohms from '../../src/explain/Ohms.svelte';

const plain = (text: string | null | undefined) => (text ?? '').replaceAll('\u00a0', ' ').trim();

/** The panel as it opens: a thermistor of 10 kΩ, beta 3435 K, tolerance 1 %. */
async function panel(width = 1440) {
  await page.viewport(width, 900);
  const { container } = await render(Ohms, { r25: 10_000, beta: 3435 });
  const box = (name: RegExp) => page.getByRole('textbox', { name });
  const ohms = box(/^Resistance ?, ohms$/);
  await expect.element(ohms).toHaveValue('');
  return {
    container,
    ohms,
    degrees: box(/^Temperature ?, degrees Celsius$/),
    beta: box(/^Beta/),
    r25: box(/^Resistance at 25 °C/),
    tolerance: box(/^Tolerance/),
    element: page.getByRole('combobox', { name: 'Sensor element' }),
    answers: () => [...container.querySelectorAll('.answer')].map((p) => plain(p.textContent)),
    spoken: () => plain(container.querySelector('[aria-live="polite"]')?.textContent),
  };
}

afterEach(() => {
  delete document.documentElement.dataset.theme;
});

describe('ohms and degrees', () => {
  test('2981 Ω is 60.0 °C, 59.3 to 60.7 °C, while it is typed, and is spoken on Enter only', async () => {
    const { ohms, answers, spoken } = await panel();
    const sentence = '2981 Ω is 60.0 °C; 59.3 °C to 60.7 °C with R25 and beta each within 1 %.';
    await userEvent.fill(ohms, '2981');
    expect(answers()).toEqual([sentence, '–']);
    expect(spoken()).toBe('');
    await userEvent.keyboard('{Enter}');
    expect(spoken()).toBe(sentence);
    await expect.element(ohms).toHaveValue('2981');
  });

  test('60 °C is 2981 Ω, 2916 to 3047 Ω, with a decimal comma 60,0 as well, and stays as typed', async () => {
    const { degrees, answers } = await panel();
    await userEvent.fill(degrees, '60');
    expect(answers()[1]).toBe(
      '60 °C is 2981 Ω; 2916 Ω to 3047 Ω with R25 and beta each within 1 %.',
    );
    await userEvent.fill(degrees, ' 60,0 °C');
    await userEvent.keyboard('{Tab}');
    expect(answers()[1]).toMatch(/^60 °C is 2981 Ω; 2916 Ω to 3047 Ω /);
    await expect.element(degrees).toHaveValue(' 60,0 °C');
  });

  test('2463 Ω of a thermistor of beta 3977 K, exact, is 60.0 °C', async () => {
    const { ohms, beta, tolerance, answers } = await panel();
    await userEvent.fill(ohms, '2463');
    await userEvent.fill(beta, '3977');
    await userEvent.fill(tolerance, '0');
    expect(answers()[0]).toBe('2463 Ω is 60.0 °C if R25 and beta are exact.');
  });

  test('platinum of 1000 Ω hides R25, beta and tolerance; 60 °C is 1232.4 Ω, and 1232.4 Ω 59.4 to 60.6 °C', async () => {
    const { element, ohms, degrees, answers, spoken } = await panel();
    await userEvent.fill(degrees, '60');
    await userEvent.selectOptions(element, 'platinum1000');
    expect(page.getByRole('textbox').elements()).toHaveLength(2);
    const toOhms = '60 °C is 1232.4 Ω; 1230.1 Ω to 1234.7 Ω for class B of IEC 60751.';
    expect(answers()).toEqual(['–', toOhms]);
    expect(spoken()).toBe(toOhms);
    await userEvent.fill(ohms, '1232.4');
    expect(answers()[0]).toBe('1232.4 Ω is 60.0 °C; 59.4 °C to 60.6 °C for class B of IEC 60751.');
  });

  test('100 Ω is no temperature of this thermistor, and says to check element and leads', async () => {
    const { ohms, answers } = await panel();
    await userEvent.fill(ohms, '100');
    expect(answers()[0]).toBe(
      '100 Ω is no temperature from −20 °C to 120 °C for this element; check the element and its leads.',
    );
  });

  test.each([
    ['warm', 'Resistance needs a number, such as 2463 Ω; “warm” is not one.'],
    ['2,981', 'Resistance can be read two ways in “2,981”: write 2981 or 2.981.'],
    ['60 °C', 'Resistance is given in ohms (Ω); “°C” is not read.'],
  ])('“%s” keeps its text and is answered, once left, by: %s', async (text, sentence) => {
    const { ohms, answers, spoken, container } = await panel();
    await userEvent.fill(ohms, text);
    await expect.element(ohms).toHaveAttribute('aria-invalid', 'false');
    await userEvent.keyboard('{Tab}');
    await expect.element(ohms).toHaveAttribute('aria-invalid', 'true');
    await expect.element(ohms).toHaveValue(text);
    const about = ohms.element().getAttribute('aria-describedby') ?? 'none';
    expect(plain(container.querySelector(`[id="${about}"]`)?.textContent)).toBe(sentence);
    expect(spoken()).toBe(sentence);
    expect(answers()).toEqual(['–', '–']);
    await userEvent.fill(ohms, '2981');
    await expect.element(ohms).toHaveAttribute('aria-invalid', 'false');
    expect(answers()[0]).toMatch(/^2981 Ω is 60\.0 °C/);
  });

  test('a beta of 9 K leaves both ways unanswered and says between 2000 and 5500 K', async () => {
    const { ohms, degrees, beta, answers, container } = await panel();
    await userEvent.fill(ohms, '2981');
    await userEvent.fill(degrees, '60');
    await userEvent.fill(beta, '9');
    await userEvent.keyboard('{Enter}');
    expect(answers()).toEqual(['–', '–']);
    expect(plain(container.textContent)).toContain(
      'Beta must be between 2000 K and 5500 K; it is 9 K.',
    );
  });

  test('it says to isolate the electricity before a wiring box is opened', async () => {
    const { container } = await panel();
    expect(plain(container.textContent)).toMatch(/Isolate the electricity.* a wiring box\./);
  });

  test.each([320, 390, 1440])(
    'at %d pixels every control is 44 pixels or more both ways, and nothing is wider than the page',
    async (width) => {
      const { container } = await panel(width);
      const controls = [...container.querySelectorAll('input, select')];
      expect(controls).toHaveLength(6);
      for (const control of controls) {
        const box = control.getBoundingClientRect();
        expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
      }
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    },
  );

  test('an answer in place of the dash moves nothing at 390 pixels', async () => {
    const { container, ohms } = await panel(390);
    const height = () => container.getBoundingClientRect().height;
    const before = height();
    await userEvent.fill(ohms, '2981');
    expect(height()).toBe(before);
  });

  test.each([
    ['light', 1440],
    ['dark', 1440],
    ['light', 390],
    ['dark', 390],
  ])(
    '%s at %d pixels, with an answer and a problem, breaks 0 rules of access',
    async (theme, width) => {
      document.documentElement.dataset.theme = theme;
      const { container, ohms, degrees } = await panel(width);
      await userEvent.fill(ohms, '2981');
      await userEvent.fill(degrees, '200');
      await userEvent.keyboard('{Enter}');
      await expect.element(degrees).toHaveAttribute('aria-invalid', 'true');
      const { violations } = await axe.run(container);
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html.slice(0, 120)}`)).toEqual(
        [],
      );
    },
  );
});
