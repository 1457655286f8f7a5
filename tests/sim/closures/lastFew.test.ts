import { expect, test } from 'vitest';
import { lastFew } from '../../../sim/closures/lastFew.ts';

function counting(most: number) {
  const made: string[] = [];
  const make = lastFew(most, (one: string, other: number) => {
    made.push(`${one}${other}`);
    return { one, other };
  });
  return { made, make };
}

test('the same things are made once, others each anew', () => {
  const { made, make } = counting(3);
  const first = make('a', 1);
  expect(make('a', 1)).toBe(first);
  expect(make('a', 2)).toEqual({ one: 'a', other: 2 });
  expect(make('a', 1)).toBe(first);
  expect(made).toEqual(['a1', 'a2']);
});

test('of more than are kept, the one that was asked for longest ago is made again', () => {
  const { made, make } = counting(2);
  make('a', 1);
  make('b', 1);
  make('a', 1); // now b is the older
  make('c', 1);
  make('a', 1);
  make('b', 1);
  expect(made).toEqual(['a1', 'b1', 'c1', 'b1']);
});
