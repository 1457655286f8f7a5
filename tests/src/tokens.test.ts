import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const text = readFileSync(fileURLToPath(new URL('../../src/tokens.css', import.meta.url)), 'utf8');
const raisedAt = text.indexOf(':root[data-projected]');
const [usual, forARoom] = [text.slice(0, raisedAt), text.slice(raisedAt)].map(themesIn);
const themes = {
  ...usual,
  'light for a room': over(usual.light, forARoom.light),
  'dark for a room': over(usual.dark, forARoom.dark),
};

function themesIn(css: string) {
  const [dark, chosen] = [
    css.indexOf('prefers-color-scheme: dark'),
    css.search(/:root(\[data-projected\])?\[data-theme=/),
  ];
  return {
    light: coloursIn(css.slice(0, dark)),
    dark: coloursIn(css.slice(dark, chosen)),
    'dark, chosen': coloursIn(css.slice(chosen)),
  };
}

function over(below: Map<string, string>, above: Map<string, string>): Map<string, string> {
  return new Map([...below, ...above]);
}

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
  expect(forARoom['dark, chosen']).toEqual(forARoom.dark);
});

test('for a room ink, quiet ink and what can be moved stand out from paper more than they do at a desk', () => {
  for (const [room, desk] of [
    ['light for a room', 'light'],
    ['dark for a room', 'dark'],
  ] as const) {
    for (const token of ['ink', 'ink-quiet', 'move', 'rule-strong']) {
      const of = (theme: keyof typeof themes) =>
        contrast(themes[theme].get(token) ?? '', themes[theme].get('paper') ?? '');
      expect(of(room)).toBeGreaterThan(of(desk));
    }
  }
});
