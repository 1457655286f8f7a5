/** Inside the simulation every quantity is SI: metres, seconds, kilograms, watts, joules, kelvins;
 * temperatures are in degrees Celsius. These names say which quantity a number is. */
export type Celsius = number;
export type Kelvins = number;
export type Watts = number;
export type WattsPerKelvin = number;
export type WattsPerMetreKelvin = number;
export type Joules = number;
export type JoulesPerKelvin = number;
export type Metres = number;
export type SquareMetres = number;
export type CubicMetres = number;
export type CubicMetresPerSecond = number;
export type KilogramsPerSecond = number;
export type Seconds = number;
export type Share = number;
export type Pascals = number;
export type Ohms = number;
export type MetresPerSecond = number;
/** Money, in the user's own currency, or kilograms of carbon dioxide, for each joule. */
export type PerJoule = number;

/** A unit as people meet it: `shown = SI / factor`. */
export interface Unit {
  /** Behind a number on screen, after a space; empty for a pure number. */
  readonly symbol: string;
  /** Spoken, for accessible names: "litres per minute". */
  readonly words: string;
  /** Ending of a key in files, CSV headers and JSON: `flowLitresPerMinute`. */
  readonly suffix: string;
  /** SI value of one shown unit. */
  readonly factor: number;
}

export const units = {
  watt: { symbol: 'W', words: 'watts', suffix: 'Watts', factor: 1 },
  kilowatt: { symbol: 'kW', words: 'kilowatts', suffix: 'Kilowatts', factor: 1000 },
  celsius: { symbol: '°C', words: 'degrees Celsius', suffix: 'Celsius', factor: 1 },
  kelvin: { symbol: 'K', words: 'kelvins', suffix: 'Kelvins', factor: 1 },
  litrePerMinute: {
    symbol: 'l/min',
    words: 'litres per minute',
    suffix: 'LitresPerMinute',
    factor: 1 / 60_000,
  },
  litre: { symbol: 'l', words: 'litres', suffix: 'Litres', factor: 1 / 1000 },
  metre: { symbol: 'm', words: 'metres', suffix: 'Metres', factor: 1 },
  millimetre: { symbol: 'mm', words: 'millimetres', suffix: 'Millimetres', factor: 1 / 1000 },
  metrePerSecond: {
    symbol: 'm/s',
    words: 'metres per second',
    suffix: 'MetresPerSecond',
    factor: 1,
  },
  kilopascal: { symbol: 'kPa', words: 'kilopascals', suffix: 'Kilopascals', factor: 1000 },
  ohm: { symbol: 'Ω', words: 'ohms', suffix: 'Ohms', factor: 1 },
  squareMetre: { symbol: 'm²', words: 'square metres', suffix: 'SquareMetres', factor: 1 },
  wattPerKelvin: {
    symbol: 'W/K',
    words: 'watts per kelvin',
    suffix: 'WattsPerKelvin',
    factor: 1,
  },
  wattPerMetreKelvin: {
    symbol: 'W/(m K)',
    words: 'watts per metre and kelvin',
    suffix: 'WattsPerMetreKelvin',
    factor: 1,
  },
  kilowattHour: {
    symbol: 'kWh',
    words: 'kilowatt-hours',
    suffix: 'KilowattHours',
    factor: 3_600_000,
  },
  kilowattHourPerDay: {
    symbol: 'kWh/24 h',
    words: 'kilowatt-hours in 24 hours',
    suffix: 'KilowattHoursPerDay',
    factor: 3_600_000 / 86_400,
  },
  second: { symbol: 's', words: 'seconds', suffix: 'Seconds', factor: 1 },
  minute: { symbol: 'min', words: 'minutes', suffix: 'Minutes', factor: 60 },
  hour: { symbol: 'h', words: 'hours', suffix: 'Hours', factor: 3600 },
  percent: { symbol: '%', words: 'percent', suffix: 'Percent', factor: 1 / 100 },
  perKilowattHour: {
    symbol: 'per kWh',
    words: 'of your currency per kilowatt-hour',
    suffix: 'PerKilowattHour',
    factor: 1 / 3_600_000,
  },
  kilogramPerKilowattHour: {
    symbol: 'kg/kWh',
    words: 'kilograms per kilowatt-hour',
    suffix: 'KilogramsPerKilowattHour',
    factor: 1 / 3_600_000,
  },
  kilogram: { symbol: 'kg', words: 'kilograms', suffix: 'Kilograms', factor: 1 },
  money: { symbol: '', words: 'of your currency', suffix: 'Money', factor: 1 },
  thousandth: { symbol: '× 10⁻³', words: 'thousandths', suffix: 'Thousandths', factor: 1e-3 },
  tenMillionth: {
    symbol: '× 10⁻⁷',
    words: 'ten-millionths',
    suffix: 'TenMillionths',
    factor: 1e-7,
  },
  times: { symbol: '×', words: 'times', suffix: 'Times', factor: 1 },
  number: { symbol: '', words: '', suffix: '', factor: 1 },
} as const satisfies Record<string, Unit>;

/** 0 °C in kelvins, by definition of the degree Celsius. */
export const ZERO_CELSIUS = 273.15;

export type UnitName = keyof typeof units;

/** SI value of a shown number, e.g. 24 kW → 24000 W. */
export function toSI(shown: number, unit: UnitName): number {
  return shown * units[unit].factor;
}

/**
 * Shown number of an SI value, e.g. 24000 W → 24 kW. Rounded to twelve figures, so that a number
 * that was typed comes back as it was typed.
 */
export function fromSI(value: number, unit: UnitName): number {
  return Number((value / units[unit].factor).toPrecision(12));
}
