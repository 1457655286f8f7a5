/**
 * The value of every set of players shared out over them (Shapley value): the mean, over all orders in which they can come
 * in, of what each adds when it comes. The shares add up to the value of all less the value of none; players that always add
 * the same have the same share, and one that never adds anything has none.
 *
 * Where not all values are known yet, an estimate with the same sum: what a player adds to sets of one size is the mean of
 * what is known; sizes of which nothing is known lie on a straight line between their neighbours.
 * @param players  how many there are
 * @param value    [set] a set is a number whose bit p says whether player p is in it; NaN where not yet known. Known at
 *                 least of none, of all, and of every set of one or of all but one.
 * @returns [player] in the unit of the values
 */
export function shapley(players: number, value: ArrayLike<number>): number[] {
  const all = 2 ** players - 1;
  if (value.length !== all + 1) {
    throw new Error(`${value.length} values of ${players} players; expected ${all + 1}`);
  }
  const shares = Array.from({ length: players }, (_, player) => meanAdded(players, value, player));
  return summingTo(value[all] - value[0], shares);
}

/** Mean over sizes of what a player adds to sets of that size. */
function meanAdded(players: number, value: ArrayLike<number>, player: number): number {
  const bit = 2 ** player;
  const sum = new Float64Array(players);
  const known = new Int32Array(players);
  for (let set = 0; set < value.length; set++) {
    if (set & bit) continue;
    const added = value[set | bit] - value[set];
    if (Number.isNaN(added)) continue;
    const size = countOf(set);
    sum[size] += added;
    known[size]++;
  }
  const bySize = Array.from(sum, (each, size) => (known[size] > 0 ? each / known[size] : NaN));
  if (Number.isNaN(bySize[0]) || Number.isNaN(bySize[players - 1])) {
    throw new Error(`player ${player} is not known alone and last; expected both`);
  }
  return filledIn(bySize).reduce((whole, each) => whole + each, 0) / players;
}

/** The same with gaps on a straight line between their neighbours; both ends are there. */
function filledIn(values: readonly number[]): number[] {
  const filled = [...values];
  for (let at = 0; at < filled.length; at++) {
    if (!Number.isNaN(filled[at])) continue;
    let next = at + 1;
    while (Number.isNaN(filled[next])) next++;
    filled[at] = filled[at - 1] + (filled[next] - filled[at - 1]) / (next - at + 1);
  }
  return filled;
}

/** Shares that add up: what is missing is spread in proportion to their size. Nothing is missing but rounding once all is known. */
function summingTo(whole: number, shares: readonly number[]): number[] {
  const size = shares.reduce((sum, share) => sum + Math.abs(share), 0);
  const missing = whole - shares.reduce((sum, share) => sum + share, 0);
  if (size === 0) return shares.map((share) => share + missing / shares.length);
  return shares.map((share) => share + (missing * Math.abs(share)) / size);
}

/** Players in a set. */
export function countOf(set: number): number {
  let count = 0;
  for (let left = set; left > 0; left >>= 1) count += left & 1;
  return count;
}
