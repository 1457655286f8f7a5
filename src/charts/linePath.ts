/** A point of a drawn line, pixels. */
export type Point = readonly [x: number, y: number];

/**
 * The drawn points of a sampled line, at most two for each pixel of width: the lowest and the
 * highest of the samples that fall on it, in the order they came. A gap (NaN) parts the line.
 * @param xs  [sample]
 * @param ys  [sample], NaN where there is no value
 * @param x   xs to pixels
 * @param y   ys to pixels
 */
export function linePieces(
  xs: ArrayLike<number>,
  ys: ArrayLike<number>,
  x: (value: number) => number,
  y: (value: number) => number,
): Point[][] {
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  let column: Point[] = [];
  const closeColumn = () => {
    piece.push(...extremes(column));
    column = [];
  };
  for (let sample = 0; sample < xs.length; sample += 1) {
    if (Number.isNaN(ys[sample])) {
      closeColumn();
      if (piece.length > 0) pieces.push(piece);
      piece = [];
      continue;
    }
    const point: Point = [x(xs[sample]), y(ys[sample])];
    if (column.length > 0 && Math.floor(column[0][0]) !== Math.floor(point[0])) closeColumn();
    column.push(point);
  }
  closeColumn();
  if (piece.length > 0) pieces.push(piece);
  return pieces;
}

/** Path data of the pieces of a line. */
export function pathOf(pieces: readonly (readonly Point[])[]): string {
  return pieces
    .map((piece) => `M${piece.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}`)
    .join('');
}

/** Path data of the area between the pieces of a line and a level, pixels. */
export function areaOf(pieces: readonly (readonly Point[])[], level: number): string {
  return pieces
    .filter((piece) => piece.length > 1)
    .map((piece) => {
      const end = piece[piece.length - 1][0].toFixed(1);
      const start = piece[0][0].toFixed(1);
      return `${pathOf([piece])}L${end} ${level}L${start} ${level}Z`;
    })
    .join('');
}

/**
 * Path data of the area between two sampled lines; a gap in either (NaN) parts it.
 * @param xs  [sample]
 */
export function bandOf(
  xs: ArrayLike<number>,
  low: ArrayLike<number>,
  high: ArrayLike<number>,
  x: (value: number) => number,
  y: (value: number) => number,
): string {
  const parted = Float64Array.from(high, (value, sample) =>
    Number.isNaN(low[sample]) ? Number.NaN : value,
  );
  const lower = Float64Array.from(low, (value, sample) =>
    Number.isNaN(high[sample]) ? Number.NaN : value,
  );
  const back = linePieces(xs, lower, x, y);
  return linePieces(xs, parted, x, y)
    .map((piece, index) => `${pathOf([[...piece, ...[...back[index]].reverse()]])}Z`)
    .join('');
}

function extremes(column: readonly Point[]): readonly Point[] {
  if (column.length < 3) return column;
  let low = 0;
  let high = 0;
  for (let index = 1; index < column.length; index += 1) {
    if (column[index][1] < column[low][1]) low = index;
    if (column[index][1] > column[high][1]) high = index;
  }
  if (low === high) return [column[0]];
  return [column[Math.min(low, high)], column[Math.max(low, high)]];
}
