import { describe, expect, test } from 'vitest';
import { Destination } from '../../../src/state/Destination.svelte.ts';

const at = (fragment: string) => new Destination(['lessons', 'physics'], fragment);

describe('where the fragment of the address leads', () => {
  test.each([
    ['', '', null],
    ['#', '', null],
    ['#physics', 'physics', null],
    ['#lessons/', 'lessons', null],
    ['#lessons/turn-down', 'lessons', 'turn-down'],
    ['#lessons/a/b', 'lessons', 'a/b'],
    ['#nowhere', '', null],
    ['#nowhere/lessons', '', null],
    ['#Physics', '', null],
    ['#%E0%A4%A', '', null], // half a letter
  ])('%s leads to "%s" and %s', (fragment, key, rest) => {
    const destination = at(fragment);
    expect([destination.key, destination.rest]).toEqual([key, rest]);
  });

  test('from 1 lesson to another the view stays, and from a lesson to the bench nothing is left', () => {
    const destination = at('#lessons/one');
    destination.read('#lessons/two');
    expect([destination.key, destination.rest]).toEqual(['lessons', 'two']);
    destination.read('');
    expect([destination.key, destination.rest]).toEqual(['', null]);
  });
});
