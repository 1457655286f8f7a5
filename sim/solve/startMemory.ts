import { arrangementOf, modeFor } from '../../shared/arrangements.ts';
import { isAllowed } from '../../shared/programme.ts';
import type { SensorChain } from '../control/sensorChain.ts';
import { offScale, shownReading } from '../control/shownReading.ts';
import { callsAtStart } from '../control/stat.ts';
import type { Plant } from '../plant/plant.ts';
import { beforeRun, type Memory, noTimers } from './control.ts';
import type { Slots } from './slots.ts';

/** What the controls remember as a run starts: stats as if last satisfied, valves where heating needs them. */
export function startMemory(
  { variant, immersion }: Plant,
  chain: SensorChain,
  state: readonly number[],
  slots: Slots,
): Memory {
  const { heating, programme, sensor, stat } = variant;
  const clock = state[slots.clock];
  const reading = chain.reading(state[slots.bead]);
  const heated = arrangementOf(heating.arrangement).heated;
  const heats = heated && isAllowed(programme, 'heating', clock);
  const faults = sensor.fault !== 'none' && sensor.element !== 'true';
  return {
    ...beforeRun,
    calls: { hotWater: callsAtStart(stat, shownReading(reading)), heating: heated },
    immersionCalls: immersion !== null && callsAtStart(variant.immersion, state[immersion.layer]),
    mode: modeFor(heating.arrangement, { hotWater: false, heating: heats }),
    timers: {
      ...noTimers,
      fault: offScale(reading) > 0 ? clock : faults ? clock + sensor.faultAt : noTimers.fault,
    },
  };
}
