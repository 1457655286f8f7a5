import type { Variant } from '../../shared/variant.ts';
import { makePlant } from '../../sim/plant/plant.ts';
import { idealVariant } from './idealVariant.ts';
import { marchToEnd } from './marchToEnd.ts';

/** A boundary between 10 and 60 °C after it was drawn up a 210 l store of 1.32 m. SI. */
export interface Front {
  /** [layer] °C */
  readonly T: readonly number[];
  readonly layerHeight: number;
  /** Molecular times stirring, m²/s. */
  readonly alpha: number;
  /** m/s */
  readonly speed: number;
  readonly time: number;
  /** From 10 to 90 % of the step, m. */
  readonly thickness: number;
  /** Standard deviation of where the step lies, m. */
  readonly deviation: number;
}

interface Wish {
  /** m³/s */
  readonly flow: number;
  readonly layers: number;
  /** Part of the store drawn. */
  readonly share?: number;
  /** Thickness at the start of a front a quarter up the store, m; 0 for all hot and cold coming in. */
  readonly boundary?: number;
  readonly stirring?: number;
  /** s, for a front that is not drawn. */
  readonly time?: number;
}

const VOLUME = 0.21; // m³
const HEIGHT = 1.32; // m

/** The front as the model draws it: no wall, no loss, no heat. */
export function drawnFront(wish: Wish): Front {
  const { flow, layers, share = 0.6, boundary = 0, stirring = 1 } = wish;
  const time = wish.time ?? (share * VOLUME) / flow;
  const ideal = idealVariant({
    C: VOLUME * 4.18e6,
    height: HEIGHT,
    layers,
    setPoint: 0,
    duration: time,
  });
  const variant: Variant = {
    ...ideal,
    cylinder: { ...ideal.cylinder, stirring },
    start: { hotShare: boundary > 0 ? 0.75 : 1, hotTemperature: 60, boundary },
  };
  const plant = makePlant(variant);
  const draws = flow > 0 ? [{ at: 0, volume: flow * time * 2, flow, name: 'front' }] : [];
  const T = marchToEnd(plant, { draws }).end.state.slice(0, layers);
  return front(T, alphaOf(variant), flow, time);
}

/**
 * The same step by plain first-order upwind with the same conduction, a separate small calculation in
 * small explicit steps.
 */
export function upwindFront({ flow, layers }: { flow: number; layers: number }): Front {
  const time = (0.6 * VOLUME) / flow;
  const spacing = HEIGHT / layers;
  const speed = (flow * HEIGHT) / VOLUME;
  const alpha = alphaOf(idealVariant({ C: VOLUME * 4.18e6, height: HEIGHT, layers }));
  const steps = 20_000;
  const step = time / steps;
  const T = new Array<number>(layers).fill(60);
  for (let n = 0; n < steps; n++) {
    const old = [...T];
    for (let i = 0; i < layers; i++) {
      const below = i > 0 ? old[i - 1] : 10;
      const lower = i > 0 ? old[i - 1] - old[i] : 0;
      const upper = i < layers - 1 ? old[i + 1] - old[i] : 0;
      T[i] +=
        step * ((speed * (below - old[i])) / spacing + (alpha * (lower + upper)) / spacing ** 2);
    }
  }
  return front(T, alpha, flow, time);
}

/** The diffusivity that would make a step as thick as this front in its time, over the molecular one. */
export function apparentDiffusivity({ thickness, time, alpha }: Front): number {
  // source: carslawJaeger, 10 to 90 % of erf: 3.6245 √(α t)
  return (thickness / 3.6245) ** 2 / time / alpha;
}

/** Diffusivity of the variant's own water column, m²/s. */
function alphaOf(variant: Variant): number {
  const { conductance, layerHeight, layerCapacity } = makePlant(variant).cylinder;
  return (conductance * layerHeight ** 2) / layerCapacity;
}

function front(T: readonly number[], alpha: number, flow: number, time: number): Front {
  const layerHeight = HEIGHT / T.length;
  const height = (wanted: number) => {
    const i = T.findIndex((t) => t >= wanted);
    return (i - 0.5 + (wanted - T[i - 1]) / (T[i] - T[i - 1])) * layerHeight;
  };
  return {
    T,
    layerHeight,
    alpha,
    speed: (flow * HEIGHT) / VOLUME,
    time,
    thickness: height(55) - height(15),
    deviation: Math.sqrt(moment(T, 2) - moment(T, 1) ** 2) * layerHeight,
  };
}

/** Moment of where the rise of a profile lies, in layers. */
function moment(T: readonly number[], power: number): number {
  let sum = 0;
  for (let i = 1; i < T.length; i++) sum += (T[i] - T[i - 1]) * i ** power;
  return sum / (T[T.length - 1] - T[0]);
}
