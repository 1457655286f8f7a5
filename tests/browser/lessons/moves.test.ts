import { describe, expect, test, vi } from 'vitest';
import { userEvent } from 'vitest/browser';
import { plainPassage } from '../../../shared/lessons/lesson.ts';
import { moveVariants } from '../../../shared/lessons.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';
import { named, plain, soon, view } from '../../make/lessonPage.ts';

// every page starts a worker that computes, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

describe('a move', () => {
  test('predicted by arrow keys and seen by Enter: right, with the sentences of its two runs', async () => {
    const { container, move, moment } = await view('coil');
    const first = move(0);
    first.radios()[0].focus();
    await userEvent.keyboard('{ArrowDown}');
    expect(first.radios().map(({ checked }) => checked)).toEqual([false, true, false]);
    await userEvent.keyboard('{Tab}{Enter}');
    await expect.poll(first.heading, soon).toBe('As you predicted. By a little.');
    const lesson = named('coil');
    const { before, after } = moveVariants(lesson, lesson.moves[0]);
    const answer = lesson.moves[0].answer(simulateToEnd(before), simulateToEnd(after));
    expect(first.said()).toEqual(
      [...answer.passages, answer.look.passage].map((one) => plain(plainPassage(one, after))),
    );
    expect(document.activeElement).toBe(first.section.querySelector('h3'));
    expect(moment.seconds).toBe(answer.look.at);
    expect(plain(first.section.querySelector('.sets')?.textContent)).toBe(
      'The move sets Boiler output: 35 kW.',
    );
    // the numbers in the prose follow
    const slider = container.querySelector('[role=slider][aria-label^="Boiler output"]');
    expect(slider?.getAttribute('aria-valuenow')).toBe('35');
  });

  test('predicted otherwise: it says so in words, marks both options in words, and can be predicted again', async () => {
    const { move } = await view('coil');
    const second = move(1);
    second.radios()[0].click();
    second.button(/See what happens/)?.click();
    await expect
      .poll(second.heading, soon)
      .toBe('It goes another way. It takes much longer than that.');
    const labels = [...second.section.querySelectorAll('label')].map((label) =>
      plain(label.textContent),
    );
    expect(labels[0]).toMatch(/– your prediction$/);
    expect(labels[1]).not.toMatch(/–/);
    expect(labels[2]).toMatch(/– this is what happens$/);
    second.button(/Predict again/)?.click();
    await expect.poll(() => second.section.querySelector('.answer'), soon).toBeNull();
    await expect.poll(() => document.activeElement, soon).toBe(second.radios()[0]);
    expect(second.radios().map(({ checked, disabled }) => checked || disabled)).toEqual([
      false,
      false,
      false,
    ]);
  });

  test('seen without a prediction it asks for one, and the first option has the focus', async () => {
    const { move } = await view('coil');
    const first = move(0);
    first.button(/See what happens/)?.click();
    await expect
      .poll(() => plain(first.section.querySelector('[role=status]')?.textContent))
      .toBe('Choose what you expect first.');
    expect(document.activeElement).toBe(first.radios()[0]);
    expect(first.section.querySelector('.answer')).toBeNull();
  });

  test('two moves in turn: each keeps its answer, and the first can be shown in the picture again', async () => {
    const { container, move } = await view('coil');
    for (const index of [0, 2]) {
      move(index).radios()[1].click();
      move(index)
        .button(/See what happens/)
        ?.click();
      await expect.poll(move(index).heading, soon).toMatch(/^As you predicted/);
    }
    const scale = () =>
      container.querySelector('[role=slider][aria-label^="Scale"]')?.getAttribute('aria-valuenow');
    expect(scale()).toBe('0');
    expect(move(2).button(/Show it/)).toBeUndefined();
    move(0)
      .button(/Show it in the picture/)
      ?.click();
    await expect.poll(() => move(0).button(/Show it/), soon).toBeUndefined();
    expect(scale()).toBe('1');
    expect(move(2).button(/Show it/)).not.toBeUndefined();
  });

  test('the sensor below the coil brings up the caution on an overheated top', async () => {
    const { move } = await view('sensor');
    const third = move(2);
    third.radios()[1].click();
    third.button(/See what happens/)?.click();
    await expect.poll(third.heading, soon).toMatch(/^As you predicted/);
    const cautions = [...third.section.querySelectorAll('.caution')].map((p) =>
      plain(p.textContent),
    );
    expect(cautions).toHaveLength(1);
    expect(cautions[0]).toMatch(/^Caution: The sensor sits below the coil/);
  });

  test('a number of its first run opens the working of that run by keyboard', async () => {
    const { move } = await view('coil');
    const first = move(0);
    first.radios()[1].click();
    first.button(/See what happens/)?.click();
    await expect.poll(first.heading, soon).toMatch(/^As you predicted/);
    const number = [...first.section.querySelectorAll<HTMLElement>('button.live')].find(
      (button) => plain(button.textContent) === '42.9 min',
    );
    number?.focus();
    await userEvent.keyboard('{Enter}');
    await expect
      .poll(() => plain(first.section.querySelector('.working h3')?.textContent), soon)
      .toMatch(/^Working: .*42\.9 min/);
  });
});

test('"Put this on the bench" puts the lesson there in one step, and one undo brings back what stood there', async () => {
  const { bench, went, move, container } = await view('coil');
  const before = bench.variant;
  move(2).radios()[0].click();
  move(2)
    .button(/See what happens/)
    ?.click();
  await expect.poll(move(2).heading, soon).not.toBe('');
  const button = [...container.querySelectorAll('button')].find(
    (one) => one.textContent === 'Put this on the bench',
  );
  button?.focus();
  await userEvent.keyboard('{Enter}');
  const lesson = named('coil');
  expect(bench.variant).toEqual(moveVariants(lesson, lesson.moves[2]).after);
  expect(bench.undoes).toBe('lesson What a coil can give');
  expect(went).toEqual(['bench']);
  bench.undo();
  expect(bench.variant).toEqual(before);
  expect(bench.undoes).toBeNull();
});
