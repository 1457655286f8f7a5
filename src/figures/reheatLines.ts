import { figure } from '../../shared/format.ts';
import type { Result, Trace } from '../../shared/result.ts';
import { sampleAt, valueAt } from '../../shared/sampleAt.ts';
import type { Seconds } from '../../shared/units.ts';

/** A line of a figure: its name, its samples, and how it is drawn. */
export interface FigureLine {
  readonly key: string;
  readonly name: string;
  /** [sample], SI */
  readonly values: Float64Array;
  /** Class of `Line.svelte`. */
  readonly kind: string;
  readonly quiet?: boolean;
}

/** The temperatures of the reheat curve: three heights, the reading, and the primary at the coil. */
export function temperatureLines({ trace }: Result): FigureLine[] {
  const { of } = trace;
  return [
    { key: 'flow', name: 'flow', values: of.coilInlet, kind: 'primary', quiet: true },
    { key: 'return', name: 'return', values: of.coilOutlet, kind: 'primary', quiet: true },
    { key: 'top', name: 'top', values: of.top, kind: 'plain' },
    { key: 'middle', name: 'middle', values: middleLayer(trace), kind: 'dashed' },
    { key: 'bottom', name: 'bottom', values: of.bottom, kind: 'dotted' },
    { key: 'sensor', name: 'sensor', values: of.sensor, kind: 'lead' },
  ];
}

/** The heat flows under the reheat curve: the boiler, and the coil where it differs to the eye. */
export function powerLines({ trace }: Result): FigureLine[] {
  return [
    { key: 'boiler', name: 'boiler', values: trace.of.boilerHeat, kind: 'lead' },
    {
      key: 'coil',
      name: 'coil',
      values: whileItFlows(trace.of.coilHeat),
      kind: 'dotted',
      quiet: true,
    },
  ];
}

/** A heat flow with no value where it is nought, so that its line ends there. */
function whileItFlows(heat: Float64Array): Float64Array {
  return heat.map((each) => (Math.abs(each) > 1 ? each : Number.NaN));
}

/** The layer half way up the cylinder, [sample] °C. */
export function middleLayer({ samples, layers, layerTemperature }: Trace): Float64Array {
  const layer = Math.floor(layers / 2);
  return Float64Array.from(
    { length: samples },
    (_, sample) => layerTemperature[sample * layers + layer],
  );
}

/**
 * Where a line ends as far as it is of interest: the last sample on the axis that has a value and,
 * for a heat flow, is not nought.
 * @param end  end of the time axis, s
 */
export function lineEnd(
  trace: Trace,
  values: Float64Array,
  end: Seconds,
  isHeat: boolean,
): { readonly at: Seconds; readonly value: number } | null {
  const last = sampleAt(trace.time, end);
  const isDrawn = (sample: number) =>
    isHeat ? Math.abs(values[sample]) > 1 : !Number.isNaN(values[sample]);
  let sample = last;
  while (sample >= 0 && !isDrawn(sample)) sample -= 1;
  if (sample < 0) return null;
  if (sample < last) return { at: trace.time[sample], value: values[sample] };
  const at = Math.min(end, trace.time[trace.samples - 1]);
  return { at, value: valueAt(trace.time, values, at) };
}

/** Temperature as it stands at a line's end: 60.0. @param value  °C */
export const temperatureAtEnd = (value: number): string => figure(value, 1);

/** Heat flow as it stands at a line's end, kilowatts without their unit. @param value  W */
export const powerAtEnd = (value: number): string => figure(value / 1000, 1);
