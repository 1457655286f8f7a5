import { PRIMARY_TEMPERATURE, REFERENCE_FLOW } from '../../shared/conventions.ts';
import { arrangementOf } from '../../shared/arrangements.ts';
import { copperTubes } from '../../sim/closures/copperTube.ts';
import {
  equivalentLength,
  equivalentLengthRecord,
  quadraticDropRecord,
} from '../../sim/closures/fitting.ts';
import {
  boreVelocity,
  COPPER_ROUGHNESS,
  pipeFriction,
  pipePressureDropRecord,
} from '../../sim/closures/pipeFriction.ts';
import { circulatorRecord } from '../../sim/closures/pumpCurve.ts';
import { type Sampled, waterOf } from './reading.ts';
import { boreSpeed } from './relations/pipes.ts';
import { type Step, worked } from './working.ts';

/** What a flow through one circuit costs, and what the circulator has for it. */
export interface CircuitFlow {
  /** Through the circuit and through the boiler, m³/s. */
  readonly flow: number;
  readonly whole: number;
  /** Whether both circuits are open. */
  readonly isShared: boolean;
}

/** The working of a flow: circulator against resistances, or a speed where the flow was set. */
export function flowSteps(result: Sampled, circuit: 'coil' | 'radiators', at: CircuitFlow): Step[] {
  const { primary } = result.variant;
  if (primary.flowFrom === 'given') return [speedStep(result, at.flow)];
  return [circulatorStep(result, at.whole), ...resistances(result, circuit, at)];
}

/** Speed in the primary pipe. */
export function speedStep({ variant }: Sampled, flow: number): Step {
  return worked(boreSpeed, { flow, bore: copperTubes[variant.primary.size].bore });
}

/** Said beside the formulas: a set flow has none, and a circulator may hold its head. */
export function flowNote({ variant }: Sampled): string {
  const { primary, circulator } = variant;
  if (primary.flowFrom === 'given') return 'The flow is set, not computed; this is its speed.';
  const held =
    circulator.kind === 'constantHead' ? ' The circulator holds its set head below its curve.' : '';
  return `The flow settles where what circulator adds is what all resistances lose: boiler, pipes and bends, coil, valve.${held}`;
}

function circulatorStep(result: Sampled, flow: number): Step {
  const { shutOffHead, largestFlow } = result.variant.circulator;
  const density = waterOf(result).density(PRIMARY_TEMPERATURE);
  return worked(circulatorRecord, { density, shutOffHead, flow, largestFlow });
}

function resistances(
  result: Sampled,
  circuit: 'coil' | 'radiators',
  { flow, isShared }: CircuitFlow,
): Step[] {
  const { primary, heating } = result.variant;
  const share = isShared ? (arrangementOf(heating.arrangement).sharedValve ?? 1) : 1;
  const valve = share * primary.valveDrop;
  const fixed = valve + (circuit === 'coil' ? primary.coilBranchDrop : heating.pressureDrop);
  const inTheWay = worked(quadraticDropRecord, {
    pressure: fixed,
    flow,
    reference: REFERENCE_FLOW,
  });
  if (circuit === 'radiators') return [inTheWay];
  const { bore } = copperTubes[primary.size];
  const water = waterOf(result);
  const density = water.density(PRIMARY_TEMPERATURE);
  const velocity = boreVelocity(bore, flow);
  const Re = (density * velocity * bore) / water.viscosity(PRIMARY_TEMPERATURE);
  return [
    worked(pipePressureDropRecord, {
      f: flow > 0 ? pipeFriction(Re, COPPER_ROUGHNESS / bore) : Number.NaN,
      length: 2 * primary.length + primary.bends * equivalentLength('elbow', bore),
      bore,
      density,
      velocity,
    }),
    worked(equivalentLengthRecord, { bore }),
    inTheWay,
  ];
}
