import { contours } from 'd3';
import { type Box, freeSpot } from '../charts/clearSpot.ts';
import { textWidth } from '../charts/endLabels.ts';
import type { Point } from '../charts/linePath.ts';
import { valueTicks } from '../charts/niceTicks.ts';
import { type MapGrid, NONE, VALUE } from '../state/mapGrid.ts';

/** Where a map is drawn: places of the grid to pixels. */
export interface MapPlan {
  /** Position along the axis, 0 to columns − 1, to pixels. */
  readonly x: (column: number) => number;
  /** 0 to rows − 1 to pixels, upwards. */
  readonly y: (row: number) => number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** The part of a map at or above one value. */
export interface Contour {
  readonly value: number;
  /** Of the area, which is closed outside the frame; path data, pixels. */
  readonly path: string;
  /** The line itself where it runs inside the frame, pixels. */
  readonly pieces: readonly (readonly Point[])[];
}

/** A value printed on its line: the middle of the text, pixels. */
export interface ContourLabel {
  readonly value: number;
  readonly x: number;
  readonly y: number;
}

/**
 * Round values for the lines of a map, about ten; closer together where much of the map lies between two of them. None where
 * the map has one value only.
 * @param grid    of which every place is filled
 * @param factor  of the shown unit
 */
export function contourValues(grid: MapGrid, factor: number): number[] {
  const shown = grid.values
    .filter((value, place) => grid.states[place] === VALUE && Number.isFinite(value))
    .map((value) => value / factor)
    .sort();
  if (shown.length === 0 || shown[0] === shown[shown.length - 1]) return [];
  const [least, most] = [shown[0], shown[shown.length - 1]];
  const even = valueTicks([least, most], LINES, 1);
  const edges = [least, ...even.filter((tick) => tick > least && tick < most), most];
  const finer = edges.slice(1).flatMap((to, index) => {
    const from = edges[index];
    const share = shown.filter((value) => value >= from && value < to).length / shown.length;
    return share < CROWDED ? [] : valueTicks([from, to], Math.round(share * LINES), 1);
  });
  return [...new Set([...even, ...finer])].sort((a, b) => a - b).map((tick) => tick * factor);
}

/** Lines of equal value, from the least up. @param grid  of which every place is filled */
export function contoursOf(grid: MapGrid, values: readonly number[], plan: MapPlan): Contour[] {
  const { columns, rows } = grid;
  const [wide, tall] = [columns + 2, rows + 2];
  // the rim repeats the edge, so that the closing side of an area lies outside the frame
  const rimmed = new Array<number>(wide * tall);
  for (let row = 0; row < tall; row += 1) {
    const from = Math.min(rows - 1, Math.max(0, row - 1)) * columns;
    for (let column = 0; column < wide; column += 1) {
      const place = from + Math.min(columns - 1, Math.max(0, column - 1));
      rimmed[row * wide + column] = grid.values[place];
    }
  }
  const pixels = ([column, row]: readonly number[]): Point => [
    plan.x(column - 1.5),
    plan.y(row - 1.5),
  ];
  return contours()
    .size([wide, tall])
    .thresholds([...values])(rimmed)
    .map(({ value, coordinates }) => {
      const rings = coordinates.flatMap((polygon) => polygon.map((ring) => ring.map(pixels)));
      return {
        value,
        path: rings.map(closed).join(''),
        pieces: rings.flatMap((ring) => visible(ring, plan)),
      };
    });
}

const closed = (ring: readonly Point[]) =>
  `M${ring.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}Z`;

/** The stretches of a closed line that run inside the frame. */
function visible(ring: readonly Point[], plan: MapPlan): Point[][] {
  const isInside = ([x, y]: Point) =>
    x >= plan.left - 0.01 &&
    x <= plan.right + 0.01 &&
    y >= plan.top - 0.01 &&
    y <= plan.bottom + 0.01;
  const start = ring.findIndex((point) => !isInside(point));
  // a line that never leaves the frame is one stretch
  if (start < 0) return [[...ring]];
  const turned = [...ring.slice(start), ...ring.slice(1, start + 1)];
  const pieces: Point[][] = [];
  let piece: Point[] = [];
  for (const point of turned) {
    if (isInside(point)) {
      piece.push(point);
      continue;
    }
    if (piece.length > 1) pieces.push(piece);
    piece = [];
  }
  if (piece.length > 1) pieces.push(piece);
  return pieces;
}

/**
 * Where the value of each line is printed: on it, clear of other texts and of what has no value; left out where there is no
 * room.
 * @param text   of a value
 * @param taken  what must stay free, pixels
 */
export function contourLabels(
  lines: readonly Contour[],
  grid: MapGrid,
  plan: MapPlan,
  text: (value: number) => string,
  taken: readonly Box[],
): ContourLabel[] {
  const boxes = [...taken];
  const labels: ContourLabel[] = [];
  for (const { value, pieces } of lines) {
    const longest = pieces.toSorted((one, other) => lengthOf(other) - lengthOf(one))[0];
    if (longest === undefined || lengthOf(longest) < SHORTEST) continue;
    const width = textWidth(text(value)) + 6;
    const places = ALONG.map((share) => longest[Math.round(share * (longest.length - 1))])
      .map(([x, y]) => ({ x: x - width / 2, y: y - 8, width, height: 16 }))
      .filter(
        (box) =>
          box.x >= plan.left + 1 &&
          box.x + box.width <= plan.right - 1 &&
          box.y >= plan.top + 1 &&
          box.y + box.height <= plan.bottom - 1 &&
          stateAt(grid, plan, box.x + box.width / 2, box.y + 8) !== NONE,
      );
    const spot = freeSpot(places, [], boxes);
    if (spot === null) continue;
    boxes.push(spot);
    labels.push({ value, x: spot.x + spot.width / 2, y: spot.y + 8 });
  }
  return labels;
}

/** The state of the place nearest to a pixel. */
export function stateAt(grid: MapGrid, plan: MapPlan, x: number, y: number): number {
  return grid.states[placeAt(grid, plan, x, y)];
}

/** The place nearest to a pixel. */
export function placeAt({ columns, rows }: MapGrid, plan: MapPlan, x: number, y: number): number {
  const along = (pixel: number, from: number, to: number, count: number) =>
    Math.min(count - 1, Math.max(0, Math.round(((pixel - from) / (to - from)) * (count - 1))));
  const column = along(x, plan.left, plan.right, columns);
  const row = along(y, plan.bottom, plan.top, rows);
  return row * columns + column;
}

function lengthOf(piece: readonly Point[]): number {
  let length = 0;
  for (let index = 1; index < piece.length; index += 1) {
    length += Math.hypot(
      piece[index][0] - piece[index - 1][0],
      piece[index][1] - piece[index - 1][1],
    );
  }
  return length;
}

/** Lines on a map, about: steps of 1, 2 or 5 give from half as many to as many. */
const LINES = 10;
/** More of the map than this between two lines is worth lines of its own. */
const CROWDED = 0.25;
/** Where along a line its value is tried, in order. */
const ALONG = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8, 0.1, 0.9];
/** A line shorter than this is not labelled, pixels. */
const SHORTEST = 36;
