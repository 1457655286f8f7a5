import { PIPE_TEMPERATURE, PRIMARY_TEMPERATURE } from '../../shared/conventions.ts';
import { figure, shown } from '../../shared/format.ts';
import { airViscosityRecord } from '../../sim/closures/air.ts';
import { copperTubes } from '../../sim/closures/copperTube.ts';
import { criticalReynolds } from '../../sim/closures/coilInside.ts';
import {
  curvedFriction,
  curvedLaminarFrictionRecord,
  curvedTurbulentFrictionRecord,
} from '../../sim/closures/curvedFriction.ts';
import { equivalentLength, equivalentLengthRecord } from '../../sim/closures/fitting.ts';
import {
  boreVelocity,
  COPPER_ROUGHNESS,
  pipeFriction,
  pipeFrictionRecord,
  pipePressureDropRecord,
} from '../../sim/closures/pipeFriction.ts';
import {
  pipeHeatLossRecord,
  pipeSurfaceCoefficient,
  usualPipe,
} from '../../sim/closures/pipeHeatLoss.ts';
import { radiationRecord } from '../../sim/closures/radiation.ts';
import { coilLength } from './coilContent.ts';
import { regimeNote, turbulence, TURBULENT } from './insideWorkings.ts';
import { type Sampled, waterOf } from './reading.ts';
import { type Step, type Working, worked } from './working.ts';

/** Pressure lost along flow and return. @param flow  through the coil, m³/s */
export function pipeFrictionWorking(run: Sampled, flow: number): Working {
  const { size, length, bends } = run.variant.primary;
  const { bore } = copperTubes[size];
  const { density, velocity, Re } = inBore(run, bore, flow);
  const isTurbulent = Re >= TURBULENT_PIPE;
  return {
    title: `a straight pipe of this bore at ${shown(flow, 'litrePerMinute', 1)}`,
    steps: [
      worked(pipePressureDropRecord, {
        f: flow > 0 ? pipeFriction(Re, COPPER_ROUGHNESS / bore) : Number.NaN,
        length: 2 * length + bends * equivalentLength('elbow', bore),
        bore,
        density,
        velocity,
      }),
      // below its range the formula does not give what the line above has
      worked(pipeFrictionRecord, {
        Re: isTurbulent ? Re : Number.NaN,
        roughness: COPPER_ROUGHNESS / bore,
      }),
      worked(equivalentLengthRecord, { bore }),
    ],
    note: isTurbulent
      ? usedNote(run)
      : `At a Reynolds number of ${figure(Re, 0)} the flow is not turbulent, so the formula is left open and 64 / Re or the straight line stands in its place. ${usedNote(run)}`,
    further: [
      { label: 'the coil', key: 'coil.friction' },
      { label: 'the flow', key: 'measure.coilFlow' },
    ],
  };
}

/** Pressure lost along the first coil. @param flow  through the coil, m³/s */
export function coilFrictionWorking(run: Sampled, flow: number): Working {
  const { coil } = run.variant;
  const bore = coil.tubeOutside - 2 * coil.tubeWall;
  const curvature = bore / coil.coilDiameter;
  const { density, velocity, Re } = inBore(run, bore, flow);
  const f = curvedFriction(Re, curvature);
  const isRated = coil.given === 'rating';
  return {
    title: `the coil at ${shown(flow, 'litrePerMinute', 1)}`,
    steps: [
      worked(pipePressureDropRecord, { f, length: coilLength(coil), bore, density, velocity }),
      ...frictionSteps(Re, curvature),
    ],
    note: [
      coil.given === 'conductance'
        ? 'A coil known by its UA has no tube, so it costs nothing.'
        : '',
      isRated ? 'A rating says nothing of the length of the tube, so that is left open here.' : '',
      regimeNote({ Re, curvature }),
      usedNote(run),
    ]
      .filter((one) => one !== '')
      .join(' '),
    further: [
      { label: 'the pipes', key: 'pipe.friction' },
      { label: 'the flow', key: 'measure.coilFlow' },
    ],
  };
}

/** What a metre of the primary loses. */
export function pipeLossWorking({ variant }: Pick<Sampled, 'variant'>): Working {
  const { size, lagging, lossFrom, heatLoss } = variant.primary;
  const around = variant.cylinder.surroundings;
  const pipe = usualPipe(copperTubes[size].outside, lagging);
  const h = pipeSurfaceCoefficient(pipe, PIPE_TEMPERATURE, around);
  const lost = worked(pipeHeatLossRecord, {
    outside: pipe.outside,
    lagging,
    k: pipe.laggingConductivity,
    h,
  });
  // what passes the lagging leaves its surface
  const perMetre = (lost.values.result ?? Number.NaN) * (PIPE_TEMPERATURE - around);
  const surface = around + perMetre / (Math.PI * (pipe.outside + 2 * lagging) * h);
  return {
    title: `a metre of pipe at ${shown(PIPE_TEMPERATURE, 'celsius', 0)} loses ${shown(perMetre, 'watt', 1)}`,
    steps: [
      lost,
      worked(radiationRecord, { emissivity: pipe.emissivity, surface, around }),
      worked(airViscosityRecord, { temperature: (surface + around) / 2 }),
    ],
    note:
      lossFrom === 'given'
        ? `The loss is set here, ${shown(heatLoss, 'wattPerMetreKelvin')}; this is what such a pipe would lose.`
        : `Its surface is at ${shown(surface, 'celsius', 1)}; the rest of what leaves it goes with the air that rises.`,
    further: [{ label: 'flow at the coil', key: 'moment.coilInlet' }],
  };
}

/** One relation of the friction in a coil, or in between the two ends of the straight line. */
function frictionSteps(Re: number, curvature: number): Step[] {
  const share = turbulence({ Re, curvature });
  const slow = Math.min(Re, criticalReynolds(curvature));
  const fast = Math.max(Re, TURBULENT);
  return [
    ...(share < 1 ? [worked(curvedLaminarFrictionRecord, { Re: slow, curvature })] : []),
    ...(share > 0 ? [worked(curvedTurbulentFrictionRecord, { Re: fast, curvature })] : []),
  ];
}

function inBore(run: Sampled, bore: number, flow: number) {
  const water = waterOf(run);
  const density = water.density(PRIMARY_TEMPERATURE);
  const velocity = boreVelocity(bore, flow);
  return {
    density,
    velocity,
    Re: (density * velocity * bore) / water.viscosity(PRIMARY_TEMPERATURE),
  };
}

const usedNote = ({ variant }: Sampled): string =>
  variant.primary.flowFrom === 'given'
    ? 'The flow is set here, so the run asks nothing of the pressure.'
    : `Water is taken at ${shown(PRIMARY_TEMPERATURE, 'celsius', 0)} throughout.`;

const TURBULENT_PIPE = 4000; // source: practice, as the friction of a straight pipe has it
