import { describe, expect, test, vi } from 'vitest';
import type { Setting } from '../../../../shared/causes.ts';
import { fieldAt } from '../../../../shared/fields.ts';
import { settingText } from '../../../../shared/format.ts';
import { type LessonPart, type Passage, plainPassage } from '../../../../shared/lessons/lesson.ts';
import { lessonNamed, lessons, lessonVariant, moveVariants } from '../../../../shared/lessons.ts';
import { withSettings } from '../../../../shared/presets.ts';
import { limitsOf } from '../../../../shared/problems/ranges.ts';
import { problemsOf } from '../../../../shared/problems.ts';
import { toSI } from '../../../../shared/units.ts';
import {
  type FieldPath,
  settingOf,
  type Variant,
  withSetting,
} from '../../../../shared/variant.ts';
import { simulateToEnd } from '../../../../sim/run/simulate.ts';
import { numbersIn, played, recovery, wordsOf } from '../../../make/lessonMoves.ts';

// runs of up to three days, several to a test, on a machine that may be busy
vi.setConfig({ testTimeout: 60_000 });

const moves = lessons.flatMap((lesson) => lesson.moves.map((move) => ({ lesson, move })));
const rows = moves.map((row) => [row.lesson.key, row.move.key, row] as const);

/** Nothing that is not a word or a number, and whole sentences. */
function expectReadable(passages: readonly Passage[], variant: Variant, where: string) {
  for (const passage of passages) {
    const words = plainPassage(passage, variant);
    expect(words, where).not.toMatch(/NaN|undefined|null|Infinity|–|\[object/);
    expect(words, where).toMatch(/^[A-Z].*\.$/);
    expect(words, where).not.toMatch(/ {2}|\.\.| ,| \./);
  }
}

const adjusts = (parts: readonly LessonPart[]): FieldPath[] =>
  parts.flatMap((part) => (typeof part !== 'string' && 'adjusts' in part ? [part.adjusts] : []));

/** What separates two settings of a move, such as 0.32 m between two heights. */
function differences(before: Variant, after: Variant, settings: readonly Setting[]): string[] {
  return settings.flatMap(([path]) => {
    const [was, is] = [settingOf(before, path), settingOf(after, path)];
    return typeof was === 'number' && typeof is === 'number' ? [Math.abs(is - was).toFixed(2)] : [];
  });
}

describe('the six lessons', () => {
  test('they come in this order, and each is found by its name', () => {
    expect(lessons.map(({ key }) => key)).toEqual([
      'layers',
      'coil',
      'sensor',
      'differential',
      'who-goes-first',
      'standing-loss',
    ]);
    for (const lesson of lessons) expect(lessonNamed(lesson.key)).toBe(lesson);
    expect(lessonNamed('none')).toBeUndefined();
  });

  test.each(lessons.map((lesson) => [lesson.key, lesson] as const))(
    '%s: an aim of one sentence, data said to be invented, 2 or 3 moves with 2 to 4 options each',
    (_key, lesson) => {
      expect(lesson.aim).toMatch(/^[A-Z][^.!?]{40,170}\.$/);
      expect(lesson.description).toMatch(/^Invented: .+\.$/);
      expect([2, 3]).toContain(lesson.moves.length);
      for (const { options, question } of lesson.moves) {
        expect(question).toMatch(/^[A-Z0-9].*\?$/);
        expect(options.length).toBeGreaterThanOrEqual(2);
        expect(options.length).toBeLessThanOrEqual(4);
        expect(new Set(options.map(({ key }) => key)).size).toBe(options.length);
        expect(new Set(options.map(({ text }) => text)).size).toBe(options.length);
      }
    },
  );

  test('every set-up and both sides of all 18 moves have 0 problems', () => {
    expect(moves).toHaveLength(18);
    for (const lesson of lessons) expect(problemsOf(lessonVariant(lesson))).toEqual([]);
    for (const { lesson, move } of moves) {
      const { before, after } = moveVariants(lesson, move);
      expect(problemsOf(before)).toEqual([]);
      expect(problemsOf(after)).toEqual([]);
      expect(before).not.toEqual(after);
    }
  });

  test.each(rows)(
    '%s, %s: the answer is readable, and so is the text after it',
    (key, name, row) => {
      const { after, answer, move } = played(key, name);
      expect(move.options.map((option) => option.key)).toContain(answer.option);
      expectReadable([...answer.passages, answer.look.passage], after.variant, name);
      expectReadable(row.lesson.text(after), after.variant, name);
    },
  );

  test.each(rows)(
    '%s, %s: the numbers of the question are those of its two runs',
    (_k, _n, row) => {
      const { lesson, move } = row;
      const { before, after } = moveVariants(lesson, move);
      const settings = [...lesson.setUp, ...(move.from ?? []), ...move.sets];
      const known = new Set([
        ...settings.flatMap(([path]) =>
          [before, after].flatMap((variant) => [
            ...numbersIn(settingText(path, settingOf(variant, path))),
            ...numbersIn(Number(settingOf(variant, path)).toFixed(2)), // 0.90 m is set as 0.9
          ]),
        ),
        ...differences(before, after, settings),
        '24', // hours, of a loss in 24 h
      ]);
      for (const number of numbersIn(move.question)) expect([...known]).toContain(number);
    },
  );

  test.each(lessons.map((lesson) => [lesson.key, lesson] as const))(
    '%s: at both ends of all that may be adjusted, and of any two at once, the text stays readable',
    (_key, lesson) => {
      const set = lessonVariant(lesson);
      const paths = lesson.text(simulateToEnd(set)).flatMap(({ parts }) => adjusts(parts));
      expect(paths.length).toBeGreaterThan(0);
      const ends = paths.flatMap((path) => {
        const field = fieldAt(path);
        if (field.kind !== 'number') throw new Error(`${path} cannot be adjusted`);
        const { least, most } = limitsOf(field, set);
        return [least, most].map((end) => [path, toSI(end, field.unit)] as const);
      });
      let run = 0;
      for (const [at, [first, one]] of ends.entries()) {
        for (const [second, other] of ends.slice(at)) {
          const variant = withSetting(withSetting(set, first, one), second, other);
          if (problemsOf(variant).length > 0) continue;
          run += 1;
          const passages = lesson.text(simulateToEnd(variant));
          expectReadable(passages, variant, `${first} ${one}, ${second} ${other}`);
          expect(passages.flatMap(({ parts }) => adjusts(parts))).toEqual(paths);
        }
      }
      expect(run).toBeGreaterThanOrEqual(3);
    },
  );

  test.each(rows)('%s, %s: runs too short to get there are told in words', (_k, name, row) => {
    const { lesson, move } = row;
    const { before, after } = moveVariants(lesson, move);
    const short = (variant: Variant) =>
      simulateToEnd(withSettings(variant, [['run.duration', 0.25]]));
    for (const [one, other] of [
      [short(before), short(after)],
      [simulateToEnd(before), short(after)],
      [short(before), simulateToEnd(after)],
    ]) {
      const answer = move.answer(one, other);
      expect(move.options.map((option) => option.key)).toContain(answer.option);
      expectReadable([...answer.passages, answer.look.passage], other.variant, name);
    }
  });
});

describe('words that go with numbers', () => {
  test('"sooner" and "later" of a reheat go the way its minutes go, in 6 moves', () => {
    const told: string[] = [];
    for (const [lesson, move] of rows) {
      if (move === 'in-a-draw') continue; // there it is the call that is told
      const { before, after, answer } = played(lesson, move);
      const words = wordsOf(answer, after).replaceAll('\u00a0', ' ');
      const said = /min (sooner|later)\b/.exec(words)?.[1];
      if (said === undefined) continue;
      told.push(move);
      expect(said, move).toBe(recovery(after) < recovery(before) ? 'sooner' : 'later');
    }
    expect(told).toEqual([
      'coil-higher',
      'larger-boiler',
      'cooler-flow',
      'clean-coil',
      'both-at-once',
      'rooms-first',
    ]);
  });

  test('"more" and "less" of a loss go the way the balance goes, in 3 moves', () => {
    for (const move of ['colder-place', 'twice-the-foam', 'one-hour-a-day']) {
      const { before, after, answer } = played('standing-loss', move);
      const said = /% (more|less)/.exec(wordsOf(answer, after).replaceAll('\u00a0', ' '))?.[1];
      const isMore = after.balance.lostByCylinder > before.balance.lostByCylinder;
      expect(said, move).toBe(isMore ? 'more' : 'less');
    }
  });
});
