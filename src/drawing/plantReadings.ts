import { arrangementOf } from '../../shared/arrangements.ts';
import { figure, quantityText } from '../../shared/format.ts';
import { type Quantity, quantities, type Result } from '../../shared/result.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import { fromSI, units } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import type { TableOf } from '../charts/table.ts';

/** Where in the plant a number belongs. */
export type PlantPlace = 'boiler' | 'primary' | 'coil' | 'cylinder' | 'rooms' | 'outside';

/** A number of the plant at one moment. */
export interface PlantReading {
  readonly key: Quantity;
  readonly place: PlantPlace;
  /** What it is, short, as it stands beside the number. */
  readonly name: string;
  readonly text: string;
  readonly symbol: string;
  /** The unit as it is read aloud after the number; none for one without a value. */
  readonly words: string;
  /** Number and unit together, for a table. */
  readonly whole: string;
}

interface Row {
  readonly key: Quantity;
  readonly place: PlantPlace;
  readonly name: string;
  readonly when?: (variant: Variant) => boolean;
}

const isHeated = ({ heating }: Variant) => arrangementOf(heating.arrangement).heated;

/** In the order the heat travels. */
const rows: readonly Row[] = [
  { key: 'fuel', place: 'boiler', name: 'burns', when: ({ boiler }) => boiler.model === 'asBuilt' },
  { key: 'boilerHeat', place: 'boiler', name: 'gives' },
  { key: 'flow', place: 'primary', name: 'flow' },
  { key: 'flowTarget', place: 'primary', name: 'aims at' },
  { key: 'returnTemperature', place: 'primary', name: 'return' },
  { key: 'coilInlet', place: 'coil', name: 'in' },
  { key: 'coilFlow', place: 'coil', name: 'coil' },
  { key: 'coilOutlet', place: 'coil', name: 'out' },
  { key: 'coilHeat', place: 'cylinder', name: 'coil passes' },
  {
    key: 'immersionHeat',
    place: 'cylinder',
    name: 'heater',
    when: ({ immersion }) => immersion.used !== 'no',
  },
  { key: 'top', place: 'cylinder', name: 'top' },
  { key: 'sensor', place: 'cylinder', name: 'sensor' },
  { key: 'bottom', place: 'cylinder', name: 'bottom' },
  { key: 'drawFlow', place: 'cylinder', name: 'drawn', when: ({ draw }) => draw.volume > 0 },
  { key: 'radiatorFlow', place: 'rooms', name: 'radiators', when: isHeated },
  { key: 'radiator', place: 'rooms', name: 'water', when: isHeated },
  { key: 'radiatorHeat', place: 'rooms', name: 'give', when: isHeated },
  { key: 'air', place: 'rooms', name: 'room', when: isHeated },
  { key: 'outside', place: 'outside', name: 'outside', when: isHeated },
];

/** Every number of the plant drawing, at a moment. @param seconds  from the start of the run, s */
export function plantReadings(result: Result, seconds: number): PlantReading[] {
  return rows
    .filter(({ when }) => when?.(result.variant) ?? true)
    .map(({ key, place, name }) => {
      const { unit, digits } = quantities[key];
      const value = valueAt(result.trace.time, result.trace.of[key], seconds);
      return {
        key,
        place,
        name,
        text: figure(fromSI(value, unit), digits),
        symbol: units[unit].symbol,
        words: Number.isFinite(value) ? units[unit].words : 'none',
        whole: quantityText(key, value),
      };
    });
}

const places: Readonly<Record<PlantPlace, string>> = {
  boiler: 'boiler',
  primary: 'primary',
  coil: 'at the coil',
  cylinder: 'cylinder',
  rooms: 'rooms',
  outside: 'outside',
};

/** The drawing as rows of text: its states in words, then its numbers. */
export function plantTable(
  readings: readonly PlantReading[],
  states: readonly (readonly [place: PlantPlace, what: string, state: string])[],
): TableOf {
  return {
    columns: ['where', 'what', 'now'],
    rows: [
      ...states.map(([place, what, state]) => [places[place], what, state]),
      ...readings.map(({ key, place, whole }) => [places[place], quantities[key].label, whole]),
    ],
  };
}
