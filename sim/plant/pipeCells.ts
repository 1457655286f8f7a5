import type { Celsius, JoulesPerKelvin, Watts, WattsPerKelvin } from '../../shared/units.ts';

/** A pipe cut into cells, each mixed. Fixed during a run. */
export interface PipeCells {
  readonly cells: number;
  /** Water and metal of the whole pipe, J/K. */
  readonly capacity: JoulesPerKelvin;
  /** Of the whole pipe to its surroundings, W/K. */
  readonly lossConductance: WattsPerKelvin;
  readonly surroundings: Celsius;
}

/**
 * Sends water through a pipe, cell by cell, or lets it stand: writes the rates of the cells, K/s, and returns what the pipe
 * loses, W.
 * @param first     slot of the cell that the water enters
 * @param inlet     °C; of no account while it stands
 * @param heatRate  mass flow times specific heat, W/K; 0 while it stands
 */
export function pipeCellRates(
  pipe: PipeCells,
  first: number,
  inlet: Celsius,
  heatRate: number,
  y: ArrayLike<number>,
  rates: number[],
): Watts {
  const capacity = pipe.capacity / pipe.cells;
  const conductance = pipe.lossConductance / pipe.cells;
  let upstream = inlet;
  let whole = 0;
  for (let slot = first; slot < first + pipe.cells; slot++) {
    const loss = conductance * (y[slot] - pipe.surroundings);
    rates[slot] = (heatRate * (upstream - y[slot]) - loss) / capacity;
    whole += loss;
    upstream = y[slot];
  }
  return whole;
}
