/**
 * The candidate that is fewest single-letter changes from a word, or undefined when none is near.
 * Capitals do not count.
 */
export function nearest(word: string, candidates: readonly string[]): string | undefined {
  const short = word.slice(0, 60).toLowerCase();
  let best: string | undefined;
  let fewest = Math.max(2, Math.ceil(short.length / 3)) + 1;
  for (const candidate of candidates) {
    const changes = changesBetween(short, candidate.toLowerCase());
    if (changes < fewest) [best, fewest] = [candidate, changes];
  }
  return best;
}

/** Letters to put in, leave out or replace to make one word the other. */
function changesBetween(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index);
  for (let i = 1; i <= from.length; i += 1) {
    const next = [i];
    for (let j = 1; j <= to.length; j += 1) {
      const replaced = row[j - 1] + (from[i - 1] === to[j - 1] ? 0 : 1);
      next.push(Math.min(replaced, row[j] + 1, next[j - 1] + 1));
    }
    row = next;
  }
  return row[to.length];
}
