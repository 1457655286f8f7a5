import axe from 'axe-core';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { lessons } from '../../../shared/lessons.ts';
import { plain, soon, view } from '../../make/lessonPage.ts';

// every page starts a worker that computes, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

afterEach(() => {
  delete document.documentElement.dataset.theme;
});

describe('the list', () => {
  test('it names 6 lessons with their aims, and goes to the one that is chosen by keyboard', async () => {
    const { container, went } = await view(null);
    const links = [...container.querySelectorAll('li a')];
    expect(links.map((link) => plain(link.textContent))).toEqual(lessons.map(({ title }) => title));
    expect([...container.querySelectorAll('li p')].map((p) => plain(p.textContent))).toEqual(
      lessons.map(({ aim }) => aim),
    );
    expect(links[1].getAttribute('href')).toBe('#lessons/coil');
    (links[1] as HTMLElement).focus();
    await userEvent.keyboard('{Enter}');
    expect(went).toEqual(['lessons/coil']);
  });

  test('a name that is none is said, and the 6 are listed', async () => {
    const { container } = await view('boilers');
    expect(plain(container.textContent)).toContain('There is no lesson of the name “boilers”');
    expect(container.querySelectorAll('li a')).toHaveLength(6);
  });

  test('from lesson 2 of 6 links lead to all of them, to 1 and to 3', async () => {
    const { container, went } = await view('coil');
    expect(plain(container.querySelector('nav')?.textContent)).toContain('Lesson 2 of 6');
    for (const link of container.querySelectorAll<HTMLElement>('nav a')) link.click();
    expect(went).toEqual(['lessons', 'lessons/layers', 'lessons/sensor']);
  });
});

test('lesson 5 leaves a place for the player', async () => {
  const { container } = await view('who-goes-first');
  await expect.poll(() => plain(container.textContent), soon).toContain('When both call:');
});

describe('the page', () => {
  test.each(lessons.flatMap(({ key }) => [320, 390, 1440].map((width) => [key, width] as const)))(
    '%s at %i pixels is no wider than the page',
    async (key, width) => {
      const { move } = await view(key, width);
      move(0).radios()[0].click();
      move(0)
        .button(/See what happens/)
        ?.click();
      await expect.poll(move(0).heading, soon).not.toBe('');
      expect(document.documentElement.scrollWidth).toBeLessThanOrEqual(width);
    },
  );

  test.each([
    ['light', 390],
    ['dark', 390],
    ['light', 1440],
    ['dark', 1440],
  ] as const)(
    '%s at %i pixels, with one answer: 0 rules of access are broken',
    async (theme, width) => {
      document.documentElement.dataset.theme = theme;
      const { container, move } = await view('sensor', width);
      move(2).radios()[0].click();
      move(2)
        .button(/See what happens/)
        ?.click();
      await expect.poll(move(2).heading, soon).not.toBe('');
      const { violations } = await axe.run(container);
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0].html}`)).toEqual([]);
    },
  );

  test('at 390 pixels the drawing moves to the answer that speaks of it', async () => {
    const { container, move } = await view('layers', 390);
    expect(container.querySelectorAll('.picture')).toHaveLength(1);
    expect(container.querySelector('section.move .picture')).toBeNull();
    move(1).radios()[1].click();
    move(1)
      .button(/See what happens/)
      ?.click();
    await expect.poll(move(1).heading, soon).toMatch(/^As you predicted/);
    expect(container.querySelectorAll('.picture')).toHaveLength(1);
    expect(move(1).section.querySelector('.picture')).not.toBeNull();
  });
});
