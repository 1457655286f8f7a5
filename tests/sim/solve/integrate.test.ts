import { describe, expect, test } from 'vitest';
import { type IntegrateSettings, integrate } from '../../../sim/solve/integrate.ts';

const settings: IntegrateSettings = {
  absoluteTolerance: [1e-8],
  relativeTolerance: 1e-8,
  firstStep: 1,
  longestStep: 100,
  budget: 10_000,
};
const goOn = () => null;

/** T' = −T / 100 s: falls to 1/e in 100 s. */
const decay = (y: ArrayLike<number>) => [-y[0] / 100];

describe('integration', () => {
  test('of a decay of 100 s leaves 1/e of 60 K after 100 s', () => {
    const piece = integrate(decay, 0, [60], 100, settings, goOn);
    expect(piece.end).toBe('reached');
    expect(piece.time).toBe(100);
    expect(Math.abs(piece.state[0] - 60 / Math.E)).toBeLessThan(1e-5); // some ten steps at 1e-8 of 60
  });

  test('stops at an event at 42 s with the state it was handed', () => {
    const piece = integrate(decay, 0, [60], 100, settings, (from, to) =>
      from <= 42 && to > 42 ? { time: 42, state: [39.4] } : null,
    );
    expect([piece.end, piece.time, piece.state]).toEqual(['event', 42, [39.4]]);
  });

  test('out of its 50 calls it says so, with the time it got to', () => {
    const piece = integrate(decay, 0, [60], 1e6, { ...settings, budget: 50 }, goOn);
    expect(piece.end).toBe('budget');
    expect(piece.time).toBeLessThan(1e6);
  });

  test('of a rate that is no number ends as not finite or out of calls, never as reached', () => {
    const piece = integrate(() => [Number.NaN], 0, [60], 100, settings, goOn);
    expect(['notFinite', 'budget']).toContain(piece.end);
  });

  test('leaves the state it was given as it was', () => {
    const y = [60];
    integrate(decay, 0, y, 100, settings, goOn);
    expect(y).toEqual([60]);
  });

  test('keeps a fault thrown by the derivative a fault', () => {
    const broken = () => {
      throw new Error('coil has 0 turns; expected 1 or more');
    };
    expect(() => integrate(broken, 0, [60], 100, settings, goOn)).toThrow('0 turns');
  });
});
