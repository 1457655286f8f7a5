import type { Variant } from '../../shared/variant.ts';
import type { SoFar } from './soFar.ts';

/** A line of the player: its name, its values up to the moment, how it is drawn. */
export interface PlayerLine {
  readonly key: string;
  readonly name: string;
  readonly values: Float64Array;
  readonly kind: string;
}

/** One frame of the player. */
export interface PlayerRow {
  readonly key: 'air' | 'radiators' | 'power' | 'cylinder';
  readonly title: string;
  readonly lines: readonly PlayerLine[];
  readonly domain: readonly [number, number];
  /** A set-point, or null. */
  readonly level: number | null;
  /** Shown per unit of the values. */
  readonly per: number;
  /** Decimals at the end of a line. */
  readonly digits: number;
}

/** The frames from the top down. Their scales know no more than what has been seen, too. */
export function playerRows({ result, of }: SoFar): PlayerRow[] {
  const { variant, trace } = result;
  const line = (key: keyof typeof trace.of, name: string, kind: string): PlayerLine => ({
    key,
    name,
    kind,
    values: of(trace.of[key]),
  });
  const air = line('air', 'air', 'lead');
  const radiator = line('radiator', 'radiators', 'lead');
  const power = [
    line('boilerHeat', 'boiler', 'lead'),
    line('coilHeat', 'coil', 'dashed'),
    line('radiatorHeat', 'radiators', 'dotted'),
  ];
  const cylinder = [
    line('top', 'top', 'dashed'),
    line('sensor', 'sensor', 'lead'),
    line('bottom', 'bottom', 'dotted'),
  ];
  const room = variant.heating.roomSetPoint;
  const { setPoint } = variant.stat;
  return [
    {
      key: 'air',
      title: 'rooms: air, °C',
      lines: [air],
      domain: [Math.floor(least([air], room - 1.5)), Math.ceil(most([air], room + 0.5))],
      level: room,
      per: 1,
      digits: 1,
    },
    {
      key: 'radiators',
      title: 'rooms: radiators, °C',
      lines: [radiator],
      domain: [0, tens(most([radiator], hottestFlow(variant)))],
      level: null,
      per: 1,
      digits: 0,
    },
    {
      key: 'power',
      title: 'heat from boiler, coil and radiators, kW',
      lines: power,
      domain: [Math.min(0, least(power, 0)), most(power, variant.boiler.output)],
      level: null,
      per: 1000,
      digits: 1,
    },
    {
      key: 'cylinder',
      title: 'cylinder, °C',
      lines: cylinder,
      domain: [0, tens(most(cylinder, setPoint + 5))],
      level: setPoint,
      per: 1,
      digits: 1,
    },
  ];
}

function hottestFlow({ boiler }: Variant): number {
  return Math.max(boiler.heatingFlow, boiler.targets === 'shared' ? 0 : 60);
}

const tens = (value: number) => Math.ceil(value / 10) * 10;

function most(lines: readonly PlayerLine[], atLeast: number): number {
  let found = atLeast;
  for (const { values } of lines) for (const value of values) if (value > found) found = value;
  return found;
}

function least(lines: readonly PlayerLine[], atMost: number): number {
  let found = atMost;
  for (const { values } of lines) for (const value of values) if (value < found) found = value;
  return found;
}
