import { describe, expect, test } from 'vitest';
import { anywhere, OutsideFilm, outsideFilm } from '../../../sim/closures/outsideFilm.ts';
import { tabulatedWater } from '../../../sim/closures/water.ts';

const water = tabulatedWater();
const film = new OutsideFilm(water, 0.022, 1.25);
const resistances = [1e-4, 6e-4, 2e-3, 5e-3]; // m² K/W
const differences = [-30, -5, -0.5, 0.3, 2, 15, 30, 60]; // K

/** h where the heat that arrives leaves, by halving the surface temperature between both ends 200 times. */
function halved(resistance: number, hot: number, tank: number): number {
  const whole = Math.abs(hot - tank);
  const side = hot < tank ? -0.5 : 0.5;
  let low = 0;
  let high = whole;
  for (let round = 0; round < 200; round++) {
    const surplus = (low + high) / 2;
    const h = film.coefficient(tank + side * surplus, surplus);
    if (surplus * (1 + resistance * h) > whole) high = surplus;
    else low = surplus;
  }
  return film.coefficient(tank + side * low, low);
}

describe('the balance at the outside of a coil', () => {
  test('looked for from afar, or beside one at 0.6 to 1.3 times the difference, is within 1e-6 of halving', () => {
    for (const resistance of resistances) {
      for (let tank = 5; tank < 80; tank += 5) {
        for (const difference of differences) {
          const hot = tank + difference;
          if (hot < 2 || hot > 95) continue;
          const found = anywhere();
          const alone = film.balanced(resistance, hot, tank, found);
          expect(Math.abs(alone / halved(resistance, hot, tank) - 1)).toBeLessThan(1e-6); // the stated error
          for (const times of [0.6, 0.8, 0.95, 1.3]) {
            const near = tank + difference * times;
            const beside = film.balanced(resistance, near, tank, { ...found });
            expect(Math.abs(beside / halved(resistance, near, tank) - 1)).toBeLessThan(1e-6);
          }
        }
      }
    }
  });

  test('beside one 3 times as far off is looked for anew: the same bits as from afar', () => {
    const found = anywhere();
    film.balanced(6e-4, 80, 20, found);
    expect(film.balanced(6e-4, 40, 20, { ...found })).toBe(film.balanced(6e-4, 40, 20));
  });

  test('is kept in one table for one tube: asked for twice it is the same, for another diameter another', () => {
    const first = outsideFilm(water, 0.022, 1.25);
    expect(outsideFilm(water, 0.022, 1.25)).toBe(first);
    expect(outsideFilm(water, 0.028, 1.25)).not.toBe(first);
    for (let more = 0; more < 8; more++) outsideFilm(water, 0.03 + more / 1000, 1.25);
    const again = outsideFilm(water, 0.022, 1.25); // made anew: 8 are kept
    expect(again).not.toBe(first);
    expect(again.pieces).toEqual(first.pieces);
  });
});
