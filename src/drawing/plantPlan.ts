import { arrangementOf } from '../../shared/arrangements.ts';
import { fittedCoils } from '../../shared/fittedCoils.ts';
import type { Quantity } from '../../shared/result.ts';
import type { Variant } from '../../shared/variant.ts';
import { spread } from '../charts/endLabels.ts';

/** Where a number stands, pixels: the end of it that is held, and the middle of its line. */
export interface NumberPlace {
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
}

interface Rect {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

/** Where a valve stands, which way its pipe runs, and what it opens. */
export interface ValvePlace {
  readonly x: number;
  readonly y: number;
  readonly isUpright: boolean;
  readonly opens: 'coil' | 'radiators' | 'either';
  readonly word: NumberPlace;
  /** Whether there is room for its word only. */
  readonly isShort?: boolean;
}

/** Where everything of the plant drawing stands, pixels. */
export interface PlantPlan {
  readonly isWide: boolean;
  readonly height: number;
  readonly boiler: Rect;
  readonly flame: { readonly x: number; readonly y: number };
  readonly burnerWord: NumberPlace;
  /** Pipes as path data, the way the water goes. */
  readonly pipes: Readonly<Record<'common' | 'coil' | 'radiators', readonly string[]>>;
  readonly pump: { readonly x: number; readonly y: number; readonly turn: number };
  readonly cylinder: Rect;
  /** Height above the base, as a share of the whole, to pixels. */
  readonly level: (share: number) => number;
  /** From the wall to the coils. */
  readonly stubs: readonly string[];
  readonly windings: readonly string[];
  readonly sensor: { readonly x: number; readonly y: number };
  readonly heater: { readonly x: number; readonly y: number };
  readonly house: { readonly path: string; readonly radiator: Rect } | null;
  readonly valves: readonly ValvePlace[];
  readonly numbers: Readonly<Partial<Record<Quantity, NumberPlace>>>;
}

/** From this width on boiler, cylinder and rooms stand beside each other, pixels. */
export const wideFrom = 640;

/** Heights of the coils as shares of the cylinder, and where the water goes in and comes out. */
export function coilLevels(variant: Variant): {
  readonly coils: readonly { readonly bottom: number; readonly top: number }[];
  readonly into: number;
  readonly out: number;
} {
  const { cylinder } = variant;
  const sorted = [...fittedCoils(variant)].sort((one, other) => one.bottom - other.bottom);
  const [lowest, highest] = [sorted[0], sorted[sorted.length - 1]];
  const isFromTop = lowest.flowEnters === 'top';
  const [top, bottom] = [highest.top / cylinder.height, lowest.bottom / cylinder.height];
  return {
    coils: sorted.map((one) => ({
      bottom: one.bottom / cylinder.height,
      top: one.top / cylinder.height,
    })),
    into: isFromTop ? top : bottom,
    out: isFromTop ? bottom : top,
  };
}

/** Which valves there are: one in each circuit, one with three ports, one in the way of the coil, or none worth drawing. */
export function valveKind({
  heating,
  primary,
}: Variant): 'zones' | 'threePort' | 'twoPort' | 'none' {
  const { heated, both, sharedValve } = arrangementOf(heating.arrangement);
  if (!heated) return primary.valveTravel === 0 ? 'none' : 'twoPort';
  return both.coilRuns && both.radiatorsRun && sharedValve === undefined ? 'zones' : 'threePort';
}

/**
 * A coil as a zigzag between two heights, path data.
 * @param ends  whether it goes in and comes out on one side
 */
export function zigzag(
  left: number,
  right: number,
  top: number,
  bottom: number,
  ends: 'oneSide' | 'bothSides',
): string {
  const wanted = Math.max(1, Math.round((bottom - top) / PITCH));
  const isOdd = wanted % 2 === 1;
  const runs = isOdd === (ends === 'bothSides') ? wanted : wanted + 1;
  const step = (bottom - top) / runs;
  const points = Array.from(
    { length: runs + 1 },
    (_, run) => `${run % 2 === 0 ? left : right} ${(top + run * step).toFixed(1)}`,
  );
  return `M${points.join('L')}`;
}

/** Numbers under each other, as near to where they belong as lets them stand clear. */
export function column(
  wishes: readonly (readonly [Quantity, number])[],
  x: number,
  anchor: NumberPlace['anchor'],
  band: { readonly top: number; readonly bottom: number },
  rowHeight: number,
): Partial<Record<Quantity, NumberPlace>> {
  const places = spread(
    wishes.map(([, y]) => y),
    rowHeight,
    band.top,
    band.bottom,
  );
  return Object.fromEntries(wishes.map(([key], index) => [key, { x, y: places[index], anchor }]));
}

const PITCH = 9; // pixels from one run of a zigzag to the next
