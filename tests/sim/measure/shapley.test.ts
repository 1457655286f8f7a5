import { describe, expect, test } from 'vitest';
import { countOf, shapley } from '../../../sim/measure/shapley.ts';

/** Values of every set of players, from a rule that is told who is in it. */
function game(players: number, value: (isIn: readonly boolean[]) => number): number[] {
  return Array.from({ length: 2 ** players }, (_, set) =>
    value(Array.from({ length: players }, (__, player) => (set & (2 ** player)) !== 0)),
  );
}

/** The same by its definition: the mean over all orders. */
function byOrders(players: number, value: readonly number[]): number[] {
  const shares = new Array<number>(players).fill(0);
  let orders = 0;
  const go = (set: number, added: readonly (readonly [number, number])[]) => {
    if (set === 2 ** players - 1) {
      orders++;
      for (const [player, gain] of added) shares[player] += gain;
      return;
    }
    for (let player = 0; player < players; player++) {
      const bit = 2 ** player;
      if (set & bit) continue;
      go(set | bit, [...added, [player, value[set | bit] - value[set]]]);
    }
  };
  go(0, []);
  return shares.map((share) => share / orders);
}

describe('known games', () => {
  test('1 left glove and 2 right ones make a pair worth 1: 2/3 for the left, 1/6 for each right', () => {
    const shares = shapley(
      3,
      game(3, ([left, one, other]) => (left && (one || other) ? 1 : 0)),
    );
    expect(shares[0]).toBeCloseTo(2 / 3, 12);
    expect(shares[1]).toBeCloseTo(1 / 6, 12);
    expect(shares[2]).toBeCloseTo(1 / 6, 12);
  });

  test('a runway of 1, 2 and 3 is paid for with 1/3, 5/6 and 11/6', () => {
    const shares = shapley(
      3,
      game(3, (isIn) => Math.max(0, ...isIn.map((each, i) => (each ? i + 1 : 0)))),
    );
    [1 / 3, 5 / 6, 11 / 6].forEach((share, i) => {
      expect(shares[i]).toBeCloseTo(share, 12);
    });
  });

  test('one who adds nothing has nothing, and what adds up by itself is each its own', () => {
    const own = [5, 0, -2, 7];
    const shares = shapley(
      4,
      game(4, (isIn) => own.reduce((sum, each, i) => sum + (isIn[i] ? each : 0), 3)),
    );
    own.forEach((each, i) => {
      expect(shares[i]).toBeCloseTo(each, 12);
    });
    expect(shares[1]).toBe(0);
  });

  test('5 players of any game have what the mean over their 120 orders gives them, and it adds up', () => {
    const values = game(5, (isIn) =>
      isIn.reduce((sum, each, i) => (each ? sum * 1.7 + ((i * 37) % 11) : sum - i), 1),
    );
    const shares = shapley(5, values);
    byOrders(5, values).forEach((share, i) => {
      expect(shares[i]).toBeCloseTo(share, 9);
    });
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(values[31] - values[0], 9);
  });

  test('8 players of whom only the number counts have the same eighth', () => {
    const shares = shapley(
      8,
      game(8, (isIn) => isIn.filter(Boolean).length ** 2),
    );
    for (const share of shares) expect(share).toBeCloseTo(64 / 8, 12);
  });
});

describe('an estimate from the sets of 0, 1, all but 1 and all', () => {
  const fromEnds = (players: number, values: readonly number[]) =>
    values.map((value, set) => {
      const count = countOf(set);
      return count <= 1 || count >= players - 1 ? value : Number.NaN;
    });

  test('adds up, and is exact where each adds more the more are there in a straight line', () => {
    // what i adds to a set of k others is i + 2k
    const values = game(6, (isIn) => {
      const count = isIn.filter(Boolean).length;
      return isIn.reduce((sum, each, i) => sum + (each ? i : 0), 0) + count * (count - 1);
    });
    const exact = shapley(6, values);
    shapley(6, fromEnds(6, values)).forEach((share, i) => {
      expect(share).toBeCloseTo(exact[i], 12);
    });
  });

  test('adds up also where it is not exact', () => {
    const values = game(6, (isIn) => (isIn[0] && isIn[3] ? 10 : 0) + (isIn[5] ? -4 : 0));
    const shares = shapley(6, fromEnds(6, values));
    expect(shares.reduce((sum, share) => sum + share, 0)).toBeCloseTo(6, 12);
    expect(shares[1]).toBe(0);
  });
});

test('7 values of 3 players, and a player who is not known alone, are faults', () => {
  expect(() => shapley(3, [0, 1, 1, 2, 1, 2, 2])).toThrow('7 values of 3 players; expected 8');
  expect(() => shapley(2, [0, Number.NaN, 1, 2])).toThrow('player 0 is not known alone');
});
