import fc from 'fast-check';
import { plainVariant } from './plainVariant.ts';
import type { Variant } from '../../shared/variant.ts';
import { makePlant } from '../../sim/plant/plant.ts';
import { marchToEnd } from './marchToEnd.ts';

const share = fc.double({ min: 0, max: 1, noNaN: true });
const BOUNDARY = 0.1; // m

/**
 * Invented reheats for laws that compare two runs: hot water only, a coil of known conductance at the
 * base that the flow enters from below, a sensor above it. 16 layers, for speed.
 */
export const anyReheat: fc.Arbitrary<Variant> = fc
  .record({
    volume: share,
    output: share,
    flowLimit: share,
    flow: share,
    conductance: share,
    coilTop: share,
    sensor: share,
    cold: share,
    setPoint: share,
    lag: share,
    hotShare: fc.oneof(
      fc.constant(0),
      share.map((x) => 0.1 + 0.5 * x),
    ),
  })
  .map((part) => {
    const base = plainVariant('any reheat');
    const top = 0.3 + 0.4 * part.coilTop;
    return {
      ...base,
      boiler: {
        ...base.boiler,
        output: 5000 + 35_000 * part.output,
        hotWaterFlow: 68 + 17 * part.flowLimit,
      },
      primary: { ...base.primary, flow: (5 + 20 * part.flow) / 60_000 },
      coil: {
        ...base.coil,
        given: 'conductance',
        conductance: 200 + 2000 * part.conductance,
        bottom: 0,
        top,
        flowEnters: 'bottom',
      },
      cylinder: { ...base.cylinder, volume: 0.1 + 0.2 * part.volume, height: 1.2 },
      stat: {
        ...base.stat,
        sensorHeight: top + (1.1 - top) * part.sensor,
        setPoint: 52 + 8 * part.setPoint, // less 6 K still above the hot part: it calls at once
        lag: 120 * part.lag,
      },
      draw: { ...base.draw, incomingCold: 5 + 15 * part.cold },
      // the hot part above the coil: primary water that has cooled below it would carry heat out of it, the more the better
      // the coil conducts
      start: {
        hotShare: Math.min(part.hotShare, (1.2 - BOUNDARY / 2 - top) / 1.2),
        hotTemperature: 45,
        boundary: BOUNDARY,
      },
      heating: { ...base.heating, arrangement: 'hotWaterOnly' },
      run: { duration: 24 * 3600, layers: 16, water: 'measured' },
    } satisfies Variant;
  });

/** Time until the stat is first satisfied, s; infinite when it never is within the run. */
export function recoveryOf(variant: Variant): number {
  const { marks } = marchToEnd(makePlant(variant), {
    until: ({ kind }) => kind === 'statSatisfied',
  });
  return (
    marks.find(({ mark }) => mark.kind === 'statSatisfied')?.mark.at ?? Number.POSITIVE_INFINITY
  );
}
