import { incomingCold } from '../../shared/coldWater.ts';
import type { PatternDraw } from '../../shared/drawPattern.ts';
import type { LoadProfileName } from '../../shared/loadProfileNames.ts';
import { loadProfiles } from '../../shared/loadProfiles.ts';
import type { CubicMetres } from '../../shared/units.ts';
import type { Variant } from '../../shared/variant.ts';
import { MIXED } from '../closures/mixedLitres.ts';
import { householdDraws } from './householdDraws.ts';

/**
 * The draws of one day, from midnight, in any order.
 * @param waterHeat  heat held by the water of one cubic metre and kelvin, J/(m³ K)
 * @param pipe       water in the pipe to the tap, which runs off first
 */
export function dayDraws(
  variant: Variant,
  waterHeat: number,
  pipe: CubicMetres,
): readonly PatternDraw[] {
  const { pattern } = variant.day;
  if (pattern === 'household') return householdDraws(variant);
  if (pattern === 'own') return variant.ownDraws;
  return profileDraws(pattern, incomingCold(variant.draw), waterHeat, pipe);
}

/**
 * A load profile as draws that end once their useful heat is delivered. No draw takes more water than it would at Tm, or at
 * 40 °C where a peak is wanted, and what stands in the pipe: a bath is full however cool it is.
 */
function profileDraws(
  name: LoadProfileName,
  cold: number,
  waterHeat: number,
  pipe: CubicMetres,
): PatternDraw[] {
  return loadProfiles[name].draws.map(
    ({ at, energy, leastFlow, leastTemperature, peakTemperature }) => {
      const wanted = Math.max(leastTemperature, Math.min(peakTemperature ?? 0, MIXED));
      const difference = Math.max(wanted - cold, LEAST_DIFFERENCE);
      return {
        at,
        flow: leastFlow,
        volume: energy / (waterHeat * difference) + pipe,
        name: `${(energy / 3.6e6).toFixed(3)} kWh`,
        useful: { energy, leastTemperature, peakTemperature },
      };
    },
  );
}

const LEAST_DIFFERENCE = 15; // K, of the least Tm of the profiles, 25 °C, over their cold water of 10 °C
