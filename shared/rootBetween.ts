/**
 * Where a function passes through zero between two places at which its signs differ. Each step tries a
 * curve through the last three points where they are shaped for it and halves the gap where they are
 * not, so it is quick on smooth functions and safe on any, also on one that jumps or is infinite at
 * an end. Plain arithmetic: the same bits in every engine.
 * @param f          at any place from low to high; may be infinite but must be a number
 * @param low        one end
 * @param high       the other
 * @param closeness  how far from the zero the answer may be, above 0, in the unit of the ends; no closer
 *                   than a double can tell
 */
export function rootBetween(
  f: (x: number) => number,
  low: number,
  high: number,
  closeness: number,
): number {
  if (!(closeness > 0)) throw new Error(`closeness is ${closeness}; expected above 0`);
  // source: chandrupatla, from memory. The zero lies between `newest` and `across`; `spare` is the
  // third point
  let newest = low;
  let across = high;
  let atNewest = f(newest);
  let atAcross = f(across);
  if (!(Math.sign(atNewest) * Math.sign(atAcross) <= 0)) {
    throw new Error(
      `f is ${atNewest} at ${low} and ${atAcross} at ${high}; expected opposite signs`,
    );
  }
  let share = 0.5; // of the way from newest to across

  for (;;) {
    const next = newest + share * (across - newest);
    const atNext = f(next);
    if (Number.isNaN(atNext)) throw new Error(`f is NaN at ${next}; expected a number`);
    let spare = newest;
    let atSpare = atNewest;
    if (Math.sign(atNext) !== Math.sign(atNewest)) {
      spare = across;
      atSpare = atAcross;
      across = newest;
      atAcross = atNewest;
    }
    newest = next;
    atNewest = atNext;

    const best = Math.abs(atNewest) < Math.abs(atAcross) ? newest : across;
    const gap = Math.abs(across - newest);
    const allowed = 2 * Number.EPSILON * Math.abs(best) + closeness;
    if (atNewest === 0) return newest;
    if (atAcross === 0) return across;
    if (gap <= allowed) return best;

    // Inverse quadratic through the three points, if it runs one way between them
    const place = (newest - across) / (spare - across);
    const height = (atNewest - atAcross) / (atSpare - atAcross);
    const shaped = height * height < place && (1 - height) * (1 - height) < 1 - place;
    const least = (0.5 * allowed) / gap;
    share = shaped
      ? (atNewest / (atAcross - atNewest)) * (atSpare / (atAcross - atSpare)) +
        ((spare - newest) / (across - newest)) *
          (atNewest / (atSpare - atNewest)) *
          (atAcross / (atSpare - atAcross))
      : 0.5;
    share = Math.min(1 - least, Math.max(least, share));
  }
}
