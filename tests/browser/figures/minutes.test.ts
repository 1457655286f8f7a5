import { describe, expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/app.css';
import type { Change } from '../../../shared/changes.ts';
import { defaultVariant } from '../../../shared/fields.ts';
import type { MinutesByCause as Found } from '../../../shared/minutes.ts';
import { type Variant, withSetting } from '../../../shared/variant.ts';
import WhatToChange from '../../../src/explain/WhatToChange.svelte';
import WhyMinutes from '../../../src/explain/WhyMinutes.svelte';
import MinutesByCause from '../../../src/figures/MinutesByCause.svelte';
import { breaches } from './breaches.ts';

const plain = (text: string | null | undefined) =>
  (text ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();
const variant = defaultVariant('invented');

/** Invented: 30 min at full output, and 11 min by cause, one of which goes back. */
function invented(part: Partial<Found> = {}): Found {
  return {
    whole: 41 * 60,
    ideal: 30 * 60,
    shares: [
      { key: 'sensor', time: -90 },
      { key: 'times', time: 0 },
      { key: 'flowLimit', time: 210 },
      { key: 'coil', time: 540 },
    ],
    absent: ['heating', 'scale'],
    scaleWithCoil: false,
    wouldHelp: [],
    horizon: 6 * 3600,
    counted: null,
    runs: 16,
    of: 16,
    ...part,
  };
}

const change = (key: string, part: Partial<Change>): Change => ({
  key,
  cause: 'coil',
  text: `Change ${key}`,
  variant,
  recovery: 1800,
  saves: 600,
  cautions: [],
  ...part,
});
const invention: readonly Change[] = [
  change('coil', { text: 'Fit a coil half as large again, 18 m of tube' }),
  change('flow', {
    saves: 240,
    cautions: [{ key: 'limesFaster', text: 'Lime settles faster.', source: 'Common practice' }],
  }),
  change('lagging', { saves: 1 }),
  change('boiler', { saves: -60 }),
];

describe.each([320, 390, 1100])('at %i pixels', (width) => {
  test('the stair has 5 steps, each beginning where the one before ends, and breaks 0 rules', async () => {
    await page.viewport(width, 900);
    const { container } = await render(MinutesByCause, { study: invented(), variant });
    await expect.poll(() => container.querySelectorAll('rect.segment').length).toBe(5);
    const [full, back, none, limit, coil] = [...container.querySelectorAll('rect.segment')].map(
      (bar) => {
        const from = Number(bar.getAttribute('x'));
        return { from, to: from + Number(bar.getAttribute('width')) };
      },
    );
    expect(back.to).toBeCloseTo(full.to, 6);
    expect(none.from).toBeCloseTo(back.from, 6);
    expect(limit.from).toBeCloseTo(back.from, 6);
    expect(coil.from).toBeCloseTo(limit.to, 6);
    expect((coil.to - coil.from) / (limit.to - limit.from)).toBeCloseTo(540 / 210, 6);
    expect(container.querySelectorAll('rect.back')).toHaveLength(1);
    expect(await breaches(container, width)).toEqual([]);
  });

  test('what each costs and what to change break 0 rules', async () => {
    await page.viewport(width, 900);
    const one = await render(WhyMinutes, { study: invented({ counted: 4920 }) });
    expect(await breaches(one.container, width)).toEqual([]);
    const other = await render(WhatToChange, { changes: invention, onshow: () => {} });
    expect(await breaches(other.container, width)).toEqual([]);
  });

  test('a stat that is never satisfied is told in words, and breaks 0 rules', async () => {
    await page.viewport(width, 900);
    const study = invented({
      whole: null,
      shares: [],
      wouldHelp: [
        ['sensor', 'coil'],
        ['sensor', 'times'],
      ],
    });
    const { container } = await render(MinutesByCause, { study, variant });
    expect(plain(container.querySelector('h2')?.textContent)).toBe(
      'The stat is not satisfied within 6 h 00 min, where full output would take 30.0 min',
    );
    expect(plain(container.textContent)).toContain(
      'only without several at once: the sensor and the coil; or the sensor and the hot-water times and the valve.',
    );
    expect(container.querySelectorAll('svg')).toHaveLength(0);
    expect(await breaches(container, width)).toEqual([]);
  });
});

test('the heading names the largest, 9.0 of the 41.0 min, and the summary the other 11.0', async () => {
  const { container } = await render(MinutesByCause, { study: invented(), variant });
  expect(plain(container.querySelector('h2')?.textContent)).toBe(
    'The coil costs 9.0 of the 41.0 min',
  );
  expect(plain(container.querySelector('.summary')?.textContent)).toBe(
    'Full boiler output all the way would take 30.0 min; the causes add the other 11.0 min. Each has its mean over all orders in which they could be removed, from 16 runs.',
  );
});

test('an estimate says so in heading, summary and bars', async () => {
  const { container } = await render(MinutesByCause, {
    study: invented({ runs: 10, of: 16 }),
    variant,
  });
  await expect.poll(() => container.querySelectorAll('rect.guess').length).toBe(5);
  expect(plain(container.querySelector('h2')?.textContent)).toContain('costs about 9.0');
  expect(plain(container.querySelector('.summary')?.textContent)).toContain(
    'an estimate from 10 of 16 runs',
  );
});

test('Table opens by keyboard with 2 absent causes at 0.00 and 41.00 in all', async () => {
  const { container } = await render(MinutesByCause, { study: invented(), variant });
  (page.getByRole('button', { name: 'Table' }).element() as HTMLElement).focus();
  await userEvent.keyboard('{Enter}');
  await expect.poll(() => container.querySelectorAll('tbody tr').length).toBe(8);
  const rows = [...container.querySelectorAll('tbody tr')].map((row) =>
    [...row.children].map((cell) => plain(cell.textContent)),
  );
  expect(rows[1]).toEqual(['sensor', '−1.50', '30.00', '28.50']);
  expect(rows[5]).toEqual(['heating', '0.00', 'absent', 'absent']);
  expect(rows[7]).toEqual(['in all', '41.00', '0.00', '41.00']);
});

test('without a part of the boiler the heater of 3 kW is named', async () => {
  const study = invented({ whole: null, ideal: null, shares: [], runs: 0, of: 0 });
  const { container } = await render(MinutesByCause, {
    study,
    variant: withSetting(variant, 'immersion.used', 'insteadOfBoiler'),
  });
  expect(plain(container.querySelector('h2')?.textContent)).toBe(
    'The immersion heater of 3 kW heats this store alone',
  );
});

test('each cause has its sentence: one takes 1.5 min off, one costs less than 3 s', async () => {
  const { container } = await render(WhyMinutes, { study: invented() });
  const sentences = [...container.querySelectorAll('li')].map((li) => plain(li.textContent));
  expect(sentences).toHaveLength(4);
  expect(sentences[0]).toMatch(/^The sensor takes 1\.5 min off\. An ideal one calls at once/);
  expect(sentences[1]).toMatch(/^The hot-water times and the valve cost less than 3 s\./);
  expect(plain(container.textContent)).toContain(
    'has no minutes to lose to the heating or the scale on the coil.',
  );
});

test('2 changes are worth a line, 2 are folded away, and the second brings 1 caution', async () => {
  const { container } = await render(WhatToChange, { changes: invention });
  expect(plain(container.querySelector('h2')?.textContent)).toBe('One change saves up to 10.0 min');
  expect(container.querySelectorAll('ol > li')).toHaveLength(2);
  expect(container.querySelectorAll('.caution')).toHaveLength(1);
  expect(container.querySelectorAll('ol button')).toHaveLength(0);
  expect(plain(container.querySelector('summary')?.textContent)).toBe(
    '2 other changes would save less than 3 s, or nothing at all',
  );
  expect(plain(container.querySelector('details')?.textContent)).toContain('costs 1.0 min');
});

test('a change is shown as variant B by keyboard, and says that it is', async () => {
  const picked: string[] = [];
  const changes = invention.map((each, place) => ({
    ...each,
    variant: withSetting(each.variant, 'boiler.output', 10_000 + 1000 * place),
  }));
  const given = {
    changes,
    nextLetter: 'B',
    onshow: (name: string, { boiler }: Variant) => picked.push(`${name}, ${boiler.output} W`),
  };
  const { container, rerender } = await render(WhatToChange, given);
  const [, second] = [...container.querySelectorAll<HTMLButtonElement>('ol button')];
  second.focus();
  await userEvent.keyboard('{Enter}');
  expect(picked).toEqual(['Change flow, 11000 W']);
  await rerender({
    ...given,
    nextLetter: 'C',
    letterOf: ({ boiler }: Variant) => (boiler.output === 11_000 ? 'B' : null),
  });
  expect(plain(container.querySelector('ol button')?.textContent)).toContain(
    'Show it as variant C',
  );
  expect(plain(second.textContent)).toBe('Shown as variant B: Change flow');
  expect(second.getAttribute('aria-pressed')).toBe('true');
});

test('where the stat was never satisfied a change gets there in 30.0 min', async () => {
  const never = [
    change('sensor', { saves: null }),
    change('coil', { saves: null, recovery: null }),
  ];
  const { container } = await render(WhatToChange, { changes: never });
  expect(plain(container.querySelector('h2')?.textContent)).toBe(
    'With one change the stat is satisfied in 30.0 min',
  );
  expect(plain(container.querySelector('ol')?.textContent)).toContain('gets there in 30.0 min');
  expect(plain(container.querySelector('details')?.textContent)).toContain(
    'does not get there either',
  );
});
