import { type Quantity, quantities, type Trace } from './result.ts';
import { units } from './units.ts';

/** One column of the traces as files carry it, in the unit its key ends in. */
export interface Column {
  readonly key: string;
  /** The value of one sample, or null where it has none. */
  readonly at: (sample: number) => number | null;
}

/** The key of a quantity in files, with its unit: `boilerHeatKilowatts`. */
export function quantityKey(quantity: Quantity): string {
  return quantity + units[quantities[quantity].unit].suffix;
}

/** The columns of a trace: time, every quantity, then the layers from the bottom. Full precision. */
export function columnsOf(trace: Trace): readonly Column[] {
  const named = (Object.keys(quantities) as Quantity[]).map((quantity) => {
    const { factor } = units[quantities[quantity].unit];
    return column(quantityKey(quantity), (sample) => trace.of[quantity][sample] / factor);
  });
  const layers = Array.from({ length: trace.layers }, (_, layer) =>
    column(
      `layer${layer}Celsius`,
      (sample) => trace.layerTemperature[sample * trace.layers + layer],
    ),
  );
  const time = column('timeMinutes', (sample) => trace.time[sample] / units.minute.factor);
  return [time, ...named, ...layers];
}

function column(key: string, value: (sample: number) => number): Column {
  return {
    key,
    at: (sample) => {
      const number = value(sample);
      return Number.isFinite(number) ? number : null;
    },
  };
}
