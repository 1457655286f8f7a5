import { fieldAt } from './fields.ts';
import { type Measures, measureRows, type Quantity, quantities } from './result.ts';
import { fromSI, type UnitName, units } from './units.ts';
import type { FieldPath } from './variant.ts';

// The one place where numbers become text: screen, handout and command line print the same.

/** Keeps a number and its unit on one line. */
const gap = '\u00a0';

/** Stands where there is no number. */
export const dash = '–';

/**
 * A plain number with a true minus sign; a dash when there is none.
 * @param value   the number as it is shown
 * @param digits  decimals; three significant figures when left out
 */
export function figure(value: number | null, digits?: number): string {
  if (value === null || !Number.isFinite(value)) return dash;
  const text = digits === undefined ? significant(value) : value.toFixed(digits);
  return (Number(text) === 0 ? text.replace('-', '') : text).replace('-', '−');
}

/** A count in groups of three figures: `10 000 000`. */
export function spaced(count: number): string {
  return String(count).replace(/\B(?=(\d{3})+$)/g, '\u00a0');
}

/**
 * A quantity with its unit: `24.0 kW`. Times of two hours and more become `2 h 05 min`.
 * @param value   SI; null or NaN gives a dash
 * @param unit    the unit shown
 * @param digits  decimals; three significant figures when left out
 */
export function shown(value: number | null, unit: UnitName, digits?: number): string {
  if (value === null || !Number.isFinite(value)) return dash;
  if (unit === 'minute') return duration(value, digits);
  return withUnit(figure(fromSI(value, unit), digits), unit);
}

/**
 * A time: `33.2 min` under two hours, `2 h 05 min` from there on.
 * @param seconds  s
 * @param digits   decimals of the minutes under two hours
 */
export function duration(seconds: number | null, digits = 1): string {
  if (seconds === null || !Number.isFinite(seconds)) return dash;
  const minutes = Number((seconds / 60).toFixed(digits));
  if (Math.abs(minutes) < 120) return withUnit(figure(minutes, digits), 'minute');
  const whole = Math.round(Math.abs(seconds) / 60);
  const left = String(whole % 60).padStart(2, '0');
  return `${seconds < 0 ? '−' : ''}${Math.floor(whole / 60)}${gap}h${gap}${left}${gap}min`;
}

/** A time of day: `07:30`, with its seconds where it has some: `07:30:15`. @param seconds  after midnight */
export function timeOfDay(seconds: number): string {
  const whole = Math.round(seconds);
  const parts = [Math.floor(whole / 3600), Math.floor(whole / 60) % 60, whole % 60];
  const texts = parts.map((part) => String(part).padStart(2, '0'));
  return (whole % 60 === 0 ? texts.slice(0, 2) : texts).join(':');
}

/** A time in minutes, `33.2 min`, or `2 h 05 min`. @param seconds  s */
export const minutes = (seconds: number | null): string => duration(seconds, 1);

/** Whole litres. @param volume  m³ */
export const litres = (volume: number | null): string => shown(volume, 'litre', 0);

/** A temperature to 0.1 °C. @param temperature  °C */
export const celsius = (temperature: number | null): string => shown(temperature, 'celsius', 1);

/** A heat flow to 0.1 kW. @param heat  W */
export const kilowatts = (heat: number | null): string => shown(heat, 'kilowatt', 1);

/** A share in whole percent. @param share  0 to 1 */
export const percent = (share: number | null): string => shown(share, 'percent', 0);

/** A height to 0.01 m. @param height  m */
export const metres = (height: number | null): string => shown(height, 'metre', 2);

/** A sampled quantity as it is read out. @param value  SI */
export function quantityText(quantity: Quantity, value: number | null): string {
  const { unit, digits } = quantities[quantity];
  return shown(value, unit, digits);
}

/** A measure as it is read out; a dash where it was not reached. @param value  SI */
export function measureText(key: keyof Measures, value: number | null): string {
  const { unit, digits } = measureRows[key];
  return shown(value, unit, digits);
}

/** A measure in words: as `measureText`, with `not reached` in place of the dash. @param value  SI */
export function measureWords(key: keyof Measures, value: number | null): string {
  return value === null || !Number.isFinite(value) ? 'not reached' : measureText(key, value);
}

/** A setting as it was typed, with its unit, or the words of a choice. @param value  SI, or the choice */
export function settingText(path: FieldPath, value: number | string): string {
  const field = fieldAt(path);
  if (field.kind === 'choice') {
    return field.choices.find((choice) => choice.value === value)?.label ?? String(value);
  }
  return plainText(fromSI(Number(value), field.unit), field.unit);
}

/** A number as it was typed, with its unit: limits, steps, defaults. @param value  in the unit */
export function plainText(value: number, unit: UnitName): string {
  return withUnit(String(value).replace('-', '−'), unit);
}

/** A number in words for accessible names: `0.42 metres`. @param value  SI */
export function spoken(value: number | null, unit: UnitName, digits?: number): string {
  if (value === null || !Number.isFinite(value)) return 'not reached';
  const text = figure(fromSI(value, unit), digits).replace('−', 'minus ');
  return units[unit].words === '' ? text : `${text} ${units[unit].words}`;
}

/**
 * The time on a day in use, to the minute: `21:05`; of several days, `day 2, 21:05`.
 * @param seconds  after the midnight that begins the first day
 * @param days     how many there are
 */
export function clock(seconds: number, days = 1): string {
  const whole = Math.round(seconds / 60);
  const day = Math.max(0, Math.min(days - 1, Math.floor(whole / 1440)));
  const minute = whole - 1440 * day;
  const text = [Math.floor(minute / 60), minute % 60]
    .map((part) => String(part).padStart(2, '0'))
    .join(':');
  return days > 1 ? `day${gap}${day + 1}, ${text}` : text;
}

function withUnit(text: string, unit: UnitName): string {
  return units[unit].symbol === '' ? text : `${text}${gap}${units[unit].symbol}`;
}

/** Three significant figures without an exponent: 0.0123, 1.5, 24, 1230. */
function significant(value: number): string {
  if (value === 0) return '0';
  const size = Math.floor(Math.log10(Math.abs(value)));
  const rounded = Number(value.toPrecision(3));
  return String(Number(rounded.toFixed(Math.min(100, Math.max(0, 2 - size)))));
}
