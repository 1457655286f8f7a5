/** Ticks of an axis of days, s, their texts, and the unit said at its end. */
export interface DayAxis {
  readonly ticks: readonly number[];
  readonly text: (seconds: number) => string;
  readonly unit: string;
}

/**
 * Axis of one day or several: hours of the day, midnights named by the day they begin; only those
 * where hours have no room, and only their numbers where names have none.
 * @param days   from the midnight at its left end
 * @param width  pixels of the axis
 */
export function dayAxis(days: number, width: number): DayAxis {
  const perDay = width / days;
  const step = steps.find((hours) => (perDay * hours) / 24 >= gap) ?? 24;
  const count = Math.round((days * 24) / step);
  const ticks = Array.from({ length: count + 1 }, (_, tick) => tick * step * 3600);
  if (days === 1) return { ticks, text: (seconds) => String(seconds / 3600), unit: 'h' };
  const hasNames = perDay >= gap;
  const text = (seconds: number) => {
    const hours = (seconds / 3600) % 24;
    if (hours !== 0) return String(hours);
    const day = seconds / 86_400 + 1;
    return day > days ? '' : hasNames ? `day ${day}` : String(day);
  };
  return { ticks, text, unit: hasNames ? (step < 24 ? 'h' : '') : 'day' };
}

/** Hours between two ticks. */
const steps = [1, 2, 3, 4, 6, 12, 24];
/** Least distance of two ticks, pixels. */
const gap = 40;
