import type { Arrangement } from '../arrangements.ts';
import type {
  Celsius,
  CubicMetres,
  Kelvins,
  Pascals,
  PerJoule,
  Seconds,
  SquareMetres,
  Watts,
  WattsPerKelvin,
} from '../units.ts';

export interface Heating {
  readonly arrangement: Arrangement;
  /** Under a time limit: hot water goes first for this long while heating waits. */
  readonly priorityLimit: Seconds;
  /** And then heating has the boiler for this long. */
  readonly heatingTurn: Seconds;
  /** Of all radiators together, at 50 K above the room. */
  readonly radiatorOutput: Watts;
  readonly radiatorExponent: number;
  readonly waterContent: CubicMetres;
  /** Of the heating circuit, at the reference flow of 15 l/min. */
  readonly pressureDrop: Pascals;
  readonly control: 'stat' | 'loadCompensation' | 'weatherCompensation';
  /** Load compensation: rooms this far apart move the flow from its lowest to its highest. */
  readonly loadBand: Kelvins;
  readonly lowestFlow: Celsius;
  /** Weather compensation: outside temperature at which the full heating flow is needed. */
  readonly designOutside: Celsius;
  readonly roomSetPoint: Celsius;
  readonly roomDifferential: Kelvins;
}

export interface House {
  readonly heatLoss: WattsPerKelvin;
  readonly floorArea: SquareMetres;
  readonly mass: 'light' | 'medium' | 'heavy';
  /** Mean of the day. */
  readonly outside: Celsius;
  /** Half the difference between the warmest and the coldest hour. */
  readonly outsideSwing: Kelvins;
}

/** Hot-water and heating times. Times of day in seconds after midnight. */
export interface Programme {
  /** Time of day at which the run starts. */
  readonly startsAt: Seconds;
  readonly hotWater: 'always' | 'timed';
  readonly hotWaterFrom: Seconds;
  readonly hotWaterFor: Seconds;
  readonly hotWaterAgainFrom: Seconds;
  readonly hotWaterAgainFor: Seconds;
  readonly heating: 'always' | 'timed';
  readonly heatingFrom: Seconds;
  readonly heatingFor: Seconds;
  readonly heatingAgainFrom: Seconds;
  readonly heatingAgainFor: Seconds;
}

/** The user's own prices and carbon factors, per joule of fuel (gross) and of electricity. */
export interface Prices {
  readonly fuel: PerJoule;
  readonly electricity: PerJoule;
  readonly fuelCarbon: PerJoule;
  readonly electricityCarbon: PerJoule;
}

export interface RunSettings {
  readonly duration: Seconds;
  readonly layers: number;
  readonly water: 'measured' | 'constant';
}
