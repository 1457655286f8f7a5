import type { DayRun, Warmth } from '../../shared/day.ts';
import { celsius, duration, figure, litres, shown } from '../../shared/format.ts';
import { reductionBand } from '../../shared/sentences/hygiene.ts';
import { copperTubes, tubeContentRecord } from '../../sim/closures/copperTube.ts';
import {
  longestReductionRecord,
  shortestReductionRecord,
} from '../../sim/closures/decimalReduction.ts';
import {
  pipeHeatLossRecord,
  pipeSurfaceCoefficient,
  usualPipe,
} from '../../sim/closures/pipeHeatLoss.ts';
import { PIPE_TEMPERATURE } from '../../shared/conventions.ts';
import { columnStep } from './columnStep.ts';
import { readingAt } from './reading.ts';
import { type DayKey, type Working, worked } from './working.ts';

type HygieneKey = Extract<DayKey, `hygiene.${string}`>;

/** How the numbers of a store kept warm came about; a band and never a verdict. */
export function hygieneWorking(key: HygieneKey, day: DayRun): Working {
  const { hygiene, variant } = day;
  switch (key) {
    case 'hygiene.coldestTenth':
      return warmthWorking('the coldest tenth of the store', hygiene.coldestTenth, 'hygiene.top');
    case 'hygiene.top':
      return warmthWorking('the top of the store', hygiene.top, 'hygiene.coldestTenth');
    case 'hygiene.neverHot': {
      const { volume } = variant.cylinder;
      const reading = readingAt(day, day.measures.leastUsableAt);
      return {
        title: `${litres(hygiene.neverHot)} never reach 60 °C`,
        steps: [columnStep(day, reading)],
        note: `That is ${figure((100 * hygiene.neverHot) / volume, 0)} % of the store. Below the coil only conduction brings heat, and it is slow.`,
        further: [{ label: 'the coldest tenth', key: 'hygiene.coldestTenth' }],
      };
    }
    case 'hygiene.afterMinute': {
      const { pipeSize, pipeLagging } = variant.draw;
      const pipe = usualPipe(copperTubes[pipeSize].outside, pipeLagging);
      const around = variant.cylinder.surroundings;
      return {
        title: `${figure(hygiene.cooler, 0)} of ${figure(hygiene.longDraws, 0)} draws have less than 50 °C after a minute`,
        steps: [
          worked(tubeContentRecord, { bore: copperTubes[pipeSize].bore }),
          worked(pipeHeatLossRecord, {
            outside: pipe.outside,
            lagging: pipeLagging,
            k: pipe.laggingConductivity,
            h: pipeSurfaceCoefficient(pipe, PIPE_TEMPERATURE, around),
          }),
        ],
        note: `${shown(variant.draw.pipeLength, 'metre', 1)} of pipe lead to the tap: what has cooled in them runs off first.`,
        further: [{ label: 'run off while waiting', key: 'day.waitVolume' }],
      };
    }
  }
}

function warmthWorking(what: string, warmth: Warmth, other: HygieneKey): Working {
  const { least, most, hotTime } = warmth;
  const temperature = most;
  return {
    title: `${what} goes from ${celsius(least)} to ${celsius(most)}, tenfold reductions: ${reductionBand(warmth)}`,
    steps: [
      worked(shortestReductionRecord, { temperature }),
      worked(longestReductionRecord, { temperature }),
    ],
    note: `Both times are for its hottest moment. Over the day, of which it spends ${duration(hotTime)} at 60 °C or more, one over each time is added up: a band, and no verdict.`,
    further: [
      {
        label: other === 'hygiene.top' ? 'the top of the store' : 'the coldest tenth',
        key: other,
      },
      { label: 'what never gets hot', key: 'hygiene.neverHot' },
    ],
  };
}
