import { PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import type { Celsius, JoulesPerKelvin, Watts, WattsPerKelvin } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { volumetricHeat, type Water } from '../closures/water.ts';
import { type CoilRun, passCoil } from './coil.ts';
import { pipeCellRates } from './pipeCells.ts';
import { alongPipe, type Primary, SHORTEST_CELL } from './primary.ts';
import { type RestingCoil, restingHeat } from './restingCoil.ts';

/** The water of a boiler as built, on its way round: boiler, flow pipe, coil, return pipe. Fixed during a run. */
export interface Loop {
  /** Boiler water and metal, and pipes too short to be followed by themselves, J/K. */
  readonly boilerCapacity: JoulesPerKelvin;
  /** Boiler case to its surroundings, W/K. */
  readonly boilerLoss: WattsPerKelvin;
  readonly pipe: Primary;
  readonly coil: RestingCoil;
}

/** Where the cells of a loop stand in the state: boiler, then cells in the order the water flows. */
export interface LoopSlots {
  readonly boilerWater: number;
  /** The first of `pipe.cells` on the way out, and on the way back. */
  readonly out: number;
  readonly back: number;
  /** Halves of the coil where it holds water, else −1. */
  readonly coilIn: number;
  readonly coilOut: number;
}

/** Temperatures and heats of the way through pipes and coil. */
export interface CoilPath {
  coilInlet: Celsius;
  coilOutlet: Celsius;
  /** Into the store, W. */
  coilHeat: Watts;
  pipeLoss: Watts;
  /** At the end of the return pipe, °C. */
  coilReturn: Celsius;
}

/** @param heatRate  the largest flow through the coil times specific heat, W/K */
export function makeLoop(
  { boiler }: Variant,
  water: Water,
  pipe: Primary,
  coil: RestingCoil,
  heatRate: number,
): Loop {
  const content = boiler.waterContent * volumetricHeat(water, PRIMARY_TEMPERATURE);
  // What is emptied faster than it is worth following is warmed with the boiler
  const followsCoil = coil.halfCapacity >= SHORTEST_CELL * heatRate;
  const withBoiler =
    (pipe.cells === 0 ? 2 * pipe.capacity : 0) + (followsCoil ? 0 : 2 * coil.halfCapacity);
  return {
    boilerCapacity: content + withBoiler,
    boilerLoss: CASE_LOSS,
    pipe,
    coil: followsCoil ? coil : { ...coil, halfCapacity: 0 },
  };
}

/**
 * Sends water from the boiler through flow pipe, coil and return pipe, or lets it stand. Writes the rates of the cells, K/s,
 * adds the heat of the coil to `net`, [layer], W, and says what passed.
 * @param run  the coil at its flow, or null when nothing flows there
 */
export function coilPathRates(
  loop: Loop,
  slots: LoopSlots,
  run: CoilRun | null,
  y: ArrayLike<number>,
  net: Float64Array,
  rates: number[],
  path: CoilPath,
): void {
  const { pipe, coil } = loop;
  path.pipeLoss = 0;
  if (run === null) {
    path.pipeLoss += pipeCellRates(pipe, slots.out, pipe.surroundings, 0, y, rates);
    path.pipeLoss += pipeCellRates(pipe, slots.back, pipe.surroundings, 0, y, rates);
    path.coilInlet = Number.NaN;
    path.coilOutlet = Number.NaN;
    path.coilReturn = Number.NaN;
    path.coilHeat = 0;
    if (slots.coilIn < 0) return;
    const entering = restingHeat(coil, 0, y[slots.coilIn], y, net);
    const leaving = restingHeat(coil, 1, y[slots.coilOut], y, net);
    rates[slots.coilIn] = -entering / coil.halfCapacity;
    rates[slots.coilOut] = -leaving / coil.halfCapacity;
    path.coilHeat = entering + leaving;
    return;
  }
  const { heatRate } = run;
  const joined = joins(loop);
  const atCoil = flowing(pipe, slots.out, y[slots.boilerWater], heatRate, y, rates, path);
  let inlet = atCoil;
  if (slots.coilIn >= 0) {
    inlet = y[slots.coilIn];
    if (joined) warmTogether(loop, slots.out, slots.coilIn, rates);
    else rates[slots.coilIn] = (heatRate * (atCoil - inlet)) / coil.halfCapacity;
  }
  const outlet = passCoil(run, inlet, y, net);
  let leaving = outlet;
  if (slots.coilOut >= 0) leaving = y[slots.coilOut];
  path.coilInlet = atCoil;
  path.coilOutlet = leaving;
  path.coilHeat = heatRate * (inlet - outlet);
  const sentBack = joined ? outlet : leaving;
  path.coilReturn = flowing(pipe, slots.back, sentBack, heatRate, y, rates, path);
  if (joined) warmTogether(loop, slots.back, slots.coilOut, rates);
  else if (slots.coilOut >= 0) {
    rates[slots.coilOut] = (heatRate * (outlet - leaving)) / coil.halfCapacity;
  }
}

/**
 * Mixes what is one water as soon as it flows; leaves alone what is mixed, to the last bit. Nothing for an ideal boiler.
 * @param y  written
 */
export function mixAtCoil(loop: Loop | undefined, slots: LoopSlots | null, y: number[]): void {
  if (loop === undefined || slots === null || !joins(loop)) return;
  mix(loop, slots.out, slots.coilIn, y);
  mix(loop, slots.back, slots.coilOut, y);
}

function mix({ pipe, coil }: Loop, cell: number, half: number, y: number[]): void {
  if (y[cell] === y[half]) return;
  const held = pipe.capacity * y[cell] + coil.halfCapacity * y[half];
  y[cell] = held / (pipe.capacity + coil.halfCapacity);
  y[half] = y[cell];
}

/**
 * Whether a pipe short enough for one cell and the half of the coil beside it are one water while it flows: the recovery time
 * is the same within 0.04 %, and the solver's steps are twice as long. While it stands each is by itself, for only the coil
 * lies in the store.
 */
function joins({ pipe, coil }: Loop): boolean {
  return pipe.cells === 1 && coil.halfCapacity > 0;
}

/** The heat that warms a pipe's cell warms the half of the coil with it. @param rates  K/s, written */
function warmTogether({ pipe, coil }: Loop, cell: number, half: number, rates: number[]): void {
  rates[cell] *= pipe.capacity / (pipe.capacity + coil.halfCapacity);
  rates[half] = rates[cell];
}

/** Water on its way through a pipe; returns what comes out, °C. */
function flowing(
  pipe: Primary,
  first: number,
  inlet: Celsius,
  heatRate: number,
  y: ArrayLike<number>,
  rates: number[],
  path: CoilPath,
): Celsius {
  if (pipe.cells === 0) {
    const end = alongPipe(pipe, inlet, heatRate);
    path.pipeLoss += heatRate * (inlet - end);
    return end;
  }
  path.pipeLoss += pipeCellRates(pipe, first, inlet, heatRate, y, rates);
  return y[first + pipe.cells - 1];
}

/**
 * How fast the water settles that goes round, 1/s: at most the root x of Π (x − aᵢ) / rᵢ = g over boiler, pipe cells and coil
 * halves. Each is emptied at rᵢ and settles at aᵢ by itself; round they make each other up to twice as fast, for what one
 * sends on is back after a turn, the part g of it.
 * @param wholeRate   flow through the boiler, W/K
 * @param controller  what a controller adds to how fast the boiler settles, 1/s
 */
export function loopRate(
  loop: Loop,
  run: CoilRun | null,
  wholeRate: number,
  controller: number,
): number {
  const { pipe, coil } = loop;
  const boiler = wholeRate / loop.boilerCapacity;
  if (run === null) return boiler + controller;
  const cell = pipe.cells > 0 ? (run.heatRate * pipe.cells) / pipe.capacity : 0;
  const half = coil.halfCapacity > 0 ? run.heatRate / coil.halfCapacity : 0;
  const joined = joins(loop);
  const apart = joined ? 0 : pipe.cells;
  const atCoil = joined ? 1 / (1 / cell + 1 / half) : half;
  const comesBack = (LEFT_BY_COIL * run.heatRate) / wholeRate;
  const goesRound = (x: number) => {
    let product = (x - boiler - controller) / boiler;
    if (atCoil > 0) product *= (x / atCoil - 1) * (x / atCoil - 1);
    for (let passed = 0; passed < apart; passed++) product *= (x / cell - 1) * (x / cell - 1);
    return product;
  };
  const fastest = Math.max(apart > 0 ? cell : 0, atCoil);
  let low = Math.max(boiler + controller, fastest);
  let high = Math.max(2 * boiler + controller, 2 * fastest);
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (low + high) / 2;
    if (goesRound(middle) < comesBack) low = middle;
    else high = middle;
  }
  return high;
}

const LEFT_BY_COIL = 0.5; // about half of the boiler's warmth comes back from a coil; the root hardly depends on it
const HALVINGS = 8; // within half a per cent
// engineering guess, no source: a warm boiler case loses about 100 W
const CASE_LOSS = 2; // W/K
