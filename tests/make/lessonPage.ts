import { expect } from 'vitest';
import { page } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../src/app.css';
import { defaultVariant } from '../../shared/fields.ts';
import { lessonNamed } from '../../shared/lessons.ts';
import { plainPassage } from '../../shared/lessons/lesson.ts';
import type { Variant } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';
import { Bench } from '../../src/state/Bench.svelte.ts';
import { TimeCursor } from '../../src/state/TimeCursor.svelte.ts';
import LessonsView from '../../src/views/LessonsView.svelte';

/** The worker computes, on a machine that may be busy. */
export const soon = { timeout: 20_000 };

/** As it reads, with plain spaces. */
export const plain = (text: string | null | undefined) =>
  (text ?? '').replaceAll('\u00a0', ' ').replace(/\s+/g, ' ').trim();

/** The lesson of a name. */
export function named(key: string) {
  const lesson = lessonNamed(key);
  if (!lesson) throw new Error(`no lesson ${key}`);
  return lesson;
}

/** The text of a lesson about a variant. */
export const told = (key: string, variant: Variant) =>
  named(key)
    .text(simulateToEnd(variant))
    .map((passage) => plain(plainPassage(passage, variant)));

/** The page of a lesson, or the list of them, as it is rendered. */
export async function view(lesson: string | null, width = 1440) {
  await page.viewport(width, 900);
  const bench = new Bench(defaultVariant('mine'));
  const moment = new TimeCursor();
  const went: string[] = [];
  const { container } = await render(LessonsView, {
    lesson,
    bench,
    moment,
    ongo: (fragment: string) => went.push(fragment),
    onbench: () => went.push('bench'),
  });
  const shownText = () =>
    [...container.querySelectorAll('.told > p')].map((p) => {
      const copy = p.cloneNode(true) as HTMLElement;
      for (const button of copy.querySelectorAll('.adjust button')) button.remove();
      return plain(copy.textContent);
    });
  const move = (index: number) => {
    const section = container.querySelectorAll<HTMLElement>('section.move')[index];
    return {
      section,
      radios: () => [...section.querySelectorAll<HTMLInputElement>('input[type=radio]')],
      button: (name: RegExp) =>
        [...section.querySelectorAll('button')].find((one) => name.test(one.textContent ?? '')),
      heading: () => plain(section.querySelector('.answer h3')?.textContent),
      said: () =>
        [...section.querySelectorAll('.answer > p:not(.caution, .sets, .go)')].map((p) =>
          plain(p.textContent),
        ),
    };
  };
  if (lesson !== null && lessonNamed(lesson)) {
    await expect
      .poll(() => container.querySelectorAll('.told > p').length, soon)
      .toBeGreaterThan(0);
  }
  return { container, bench, moment, went, shownText, move };
}
