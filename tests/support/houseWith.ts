import type { Setting } from '../../shared/causes.ts';
import { defaultVariant } from '../../shared/fields.ts';
import { presetNamed, presetVariant, withSettings } from '../../shared/presets.ts';
import { problemsOf } from '../../shared/problems.ts';
import type { Measures, Quantity, Result } from '../../shared/result.ts';
import type { FieldPath, Variant } from '../../shared/variant.ts';
import { simulateToEnd } from '../../sim/run/simulate.ts';

/** Settings in their shown units. */
export type Settings = Partial<Record<FieldPath, number | string>>;

/** The healthy house in a few layers with some settings changed. */
export function houseWith(settings: Settings = {}): Variant {
  return sound(withSettings(defaultVariant('Healthy house'), inFewLayers(settings)));
}

/** The house of a preset in a few layers with some settings changed. */
export function presetWith(key: string, settings: Settings = {}): Variant {
  const preset = presetNamed(key);
  if (!preset) throw new Error(`${key} is no preset; expected one`);
  return sound(withSettings(presetVariant(preset), inFewLayers(settings)));
}

/** Which way something goes shows in 16 layers as in the usual 48, in a third of the time. */
function inFewLayers(settings: Settings): Setting[] {
  return Object.entries({ 'run.layers': 16, ...settings }) as Setting[];
}

/** A variant that the app would run. */
function sound(variant: Variant): Variant {
  const [problem] = problemsOf(variant);
  if (problem) throw new Error(problem.message);
  return variant;
}

const done = new Map<string, Result>();

/** One run of a variant; the same variant is run once. */
export function runOf(variant: Variant): Result {
  const key = JSON.stringify(variant);
  const known = done.get(key);
  if (known) return known;
  const result = simulateToEnd(variant);
  done.set(key, result);
  return result;
}

/** One run of the healthy house with some settings changed. */
export function runWith(settings: Settings = {}): Result {
  return runOf(houseWith(settings));
}

/** What a run of the healthy house with some settings changed came to. */
export function measuresWith(settings: Settings = {}): Measures {
  return runWith(settings).measures;
}

/** Recovery, s; without end when the stat is never satisfied. */
export function recoveryWith(settings: Settings = {}): number {
  return measuresWith(settings).recovery ?? Number.POSITIVE_INFINITY;
}

/** A quantity of a run at the sample next after a moment. @param at  s */
export function sampled({ trace }: Result, quantity: Quantity, at: number): number {
  return trace.of[quantity][trace.time.findIndex((time) => time >= at)];
}
