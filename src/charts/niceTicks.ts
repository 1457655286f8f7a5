/** Steps a person reads off easily on a time axis, minutes. */
const minuteSteps = [1, 2, 5, 10, 15, 20, 30, 60, 120, 240, 360, 720, 1440];

/**
 * Tick times of an axis, s: whole minutes, at least `gap` pixels apart.
 * @param end    end of the axis, which starts at 0, s
 * @param width  pixels of the axis
 * @param gap    least distance of two ticks, pixels
 */
export function timeTicks(end: number, width: number, gap = 44): number[] {
  const most = Math.max(1, Math.floor(width / gap));
  const minutes = end / 60;
  const step = minuteSteps.find((each) => minutes / each <= most) ?? minuteSteps.at(-1) ?? 1440;
  const count = Math.floor(minutes / step + 1e-9);
  return Array.from({ length: count + 1 }, (_, index) => index * step * 60);
}

/**
 * Ticks, texts and unit of a time axis: minutes, hours on an axis longer than 6 h.
 * @param end    end of the axis, which starts at 0, s
 * @param width  pixels of the axis
 * @param gap    least distance of two ticks, pixels
 */
export function timeAxis(
  end: number,
  width: number,
  gap = 44,
): { ticks: number[]; text: (seconds: number) => string; unit: 'min' | 'h' } {
  const isLong = end > 6 * 3600;
  const text = (seconds: number) => String(Number((seconds / (isLong ? 3600 : 60)).toFixed(2)));
  return { ticks: timeTicks(end, width, gap), text, unit: isLong ? 'h' : 'min' };
}

/**
 * End of a time axis that holds a moment, s: the next whole step of about a tenth of it.
 * @param seconds  what must be on the axis, s
 */
export function niceEnd(seconds: number): number {
  const minutes = Math.max(1, seconds / 60);
  const step = minuteSteps.findLast((each) => each <= minutes / 8) ?? 1;
  return Math.ceil(minutes / step - 1e-9) * step * 60;
}

/**
 * Round ticks of a value axis from its least to its most, at least `gap` pixels apart.
 * @param domain  least and most
 * @param height  pixels of the axis
 * @param gap     least distance of two ticks, pixels
 */
export function valueTicks(
  [least, most]: readonly [number, number],
  height: number,
  gap = 26,
): number[] {
  const rough = ((most - least) * gap) / Math.max(gap, height);
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = [1, 2, 5, 10].map((each) => each * power).find((each) => each >= rough - 1e-12);
  if (step === undefined || !(step > 0)) return [least];
  const first = Math.ceil(least / step - 1e-9);
  const last = Math.floor(most / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, index) =>
    Number(((first + index) * step).toPrecision(12)),
  );
}
