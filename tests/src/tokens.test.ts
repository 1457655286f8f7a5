import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const text = readFileSync(fileURLToPath(new URL('../../src/tokens.css', import.meta.url)), 'utf8');
const themes = {
  light: coloursIn(text.slice(0, text.indexOf('prefers-color-scheme: dark'))),
  dark: coloursIn(
    text.slice(text.indexOf('prefers-color-scheme: dark'), text.indexOf(':root[data-theme=')),
  ),
  'dark, chosen': coloursIn(text.slice(text.indexOf(':root[data-theme='))),
};

/** Tokens that are plain colours. */
function coloursIn(css: string): Map<string, string> {
  const found = css.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})\b/gi);
  return new Map([...found].map(([, name, colour]) => [name, colour]));
}

/** Contrast of two colours, WCAG 2.2 (W3C, 2023), "contrast ratio" and "relative luminance". */
function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b);
  return (high + 0.05) / (low + 0.05);
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5]
    .map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4));
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

test('black on white has a contrast of 21', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6); // exact but for rounding of doubles
});

describe.each(Object.entries(themes))('colours in the %s theme', (_name, colours) => {
  const of = (token: string) => {
    const colour = colours.get(token);
    if (colour === undefined) throw new Error(`no token ${token}; expected a colour`);
    return colour;
  };

  test.each(['ink', 'ink-quiet', 'move', 'caution'])(
    'text in %s on paper and on sunk paper has a contrast of 4.5 or more',
    (token) => {
      expect(contrast(of(token), of('paper'))).toBeGreaterThanOrEqual(4.5);
      expect(contrast(of(token), of('paper-sunk'))).toBeGreaterThanOrEqual(4.5);
    },
  );

  test.each(['rule-strong', 'pattern', 'move', 'variant-a', 'variant-b', 'variant-c', 'variant-d'])(
    'marks in %s on paper have a contrast of 3 or more',
    (token) => {
      expect(contrast(of(token), of('paper'))).toBeGreaterThanOrEqual(3);
    },
  );

  test.each([10, 20, 30, 40, 50, 60, 70])(
    'a number printed on the wash of %i °C has a contrast of 4.5 or more',
    (stop) => {
      expect(contrast(of('ink'), of(`wash-${stop}`))).toBeGreaterThanOrEqual(4.5);
    },
  );

  test('text on the green of what can be moved has a contrast of 4.5 or more', () => {
    expect(contrast(of('move-ink'), of('move'))).toBeGreaterThanOrEqual(4.5);
  });
});

test('all 3 themes name the same colours, and the 2 dark ones agree', () => {
  expect([...themes.dark.keys()].sort()).toEqual([...themes.light.keys()].sort());
  expect(themes['dark, chosen']).toEqual(themes.dark);
});
