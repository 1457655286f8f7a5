import { figure } from '../../shared/format.ts';
import {
  coilFriction,
  coilFrictionRecord,
  criticalReynolds,
  criticalReynoldsRecord,
  curvedLaminarRecord,
  curvedTurbulentRecord,
} from '../../sim/closures/coilInside.ts';
import type { CoilParts } from './coilParts.ts';
import { type Step, type Working, worked } from './working.ts';

/** How the flow in the bore of a coil is between its two borders: 0 laminar, 1 turbulent. */
export function turbulence({ Re, curvature }: Pick<CoilParts, 'Re' | 'curvature'>): number {
  const critical = criticalReynolds(curvature);
  return Math.min(1, Math.max(0, (Re - critical) / (TURBULENT - critical)));
}

/** Convection inside the coil: one relation, or in between the two ends of the straight line. */
export function insideSteps(parts: CoilParts): Step[] {
  const { Re, curvature, primaryPr: Pr } = parts;
  const share = turbulence(parts);
  const steps: Step[] = [];
  if (share < 1) {
    const slow = Math.min(Re, criticalReynolds(curvature));
    steps.push(worked(curvedLaminarRecord, { Re: slow, Pr, curvature }));
  }
  if (share > 0) {
    const fast = Math.max(Re, TURBULENT);
    const f = coilFriction(fast, curvature);
    steps.push(worked(curvedTurbulentRecord, { Re: fast, Pr, f }));
  }
  return steps;
}

/** Said beside two ends of a straight line; empty where one relation holds. */
export function regimeNote(parts: Pick<CoilParts, 'Re' | 'curvature'>): string {
  const share = turbulence(parts);
  if (share === 0 || share === 1) return '';
  return `At a Reynolds number of ${rounded(parts.Re)} the flow is between laminar (${rounded(criticalReynolds(parts.curvature))}) and turbulent (${rounded(TURBULENT)}): both ends are shown, and a straight line joins them.`;
}

/** Where the flow in the bore turns turbulent, and the friction that stirs it there. */
export function regimeWorking(parts: CoilParts, when: string): Working {
  const { Re, curvature } = parts;
  const share = turbulence(parts);
  const how = share === 0 ? 'laminar' : share === 1 ? 'turbulent' : 'between laminar and turbulent';
  return {
    title: `${when} the flow in the bore is ${how}, at a Reynolds number of ${rounded(Re)}`,
    steps: [
      worked(criticalReynoldsRecord, { curvature }),
      worked(coilFrictionRecord, { Re: Math.max(Re, TURBULENT), curvature }),
    ],
    note:
      share === 1
        ? ''
        : `The friction factor is only used from ${rounded(TURBULENT)} upwards, and is shown there.`,
    further: [
      { label: 'convection inside', key: 'coil.inside' },
      { label: 'the pressure this costs', key: 'coil.friction' },
    ],
  };
}

const rounded = (value: number): string => figure(value, 0);

/** Where flow in a coil counts as turbulent. Source: vdiCoil, upper border of the transition; from memory. */
export const TURBULENT = 22_000;
