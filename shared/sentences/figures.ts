import { celsius, duration, litres, metres, percent, shown } from '../format.ts';
import type { Result } from '../result.ts';
import { cutIn, headline } from './bench.ts';
import { cycles, minutesOf, paceSaid, paceShares } from './pace.ts';
import { capital, type FigureWords, measured, type Sentence, say } from './sentence.ts';

/** What the reheat curves say: what holds the boiler, then how flow, return and bottom run. */
export function reheatFinding(result: Result): FigureWords {
  return { heading: reheatHeading(result), summary: reheatSummary(result) };
}

function reheatHeading(result: Result): Sentence {
  const { measures } = result;
  if (measures.recovery === null || measures.hotWaterCalls === 0) return headline(result);
  if (result.variant.immersion.used === 'insteadOfBoiler') return headline(result);
  if (cycles(result)) {
    return say`The coil takes less than the boiler’s least output: the burner is at its least for ${measured(measures, 'minimumTime')} and goes on and off.`;
  }
  const [first] = paceShares(result);
  if (first === undefined) return headline(result);
  const whole = measured(measures, 'recovery');
  return say`${capital(paceSaid([first.key]))} for ${minutesOf(result, first)} of the ${whole}.`;
}

function reheatSummary({ measures, trace, outcome }: Result): Sentence[] {
  const gap = Array.from(trace.of.coilInlet, (inlet, i) => inlet - trace.of.coilOutlet[i]);
  const end = measures.recovery ?? outcome.at;
  const heating = gap.filter((apart, i) => apart > 0 && trace.time[i] <= end);
  if (heating.length === 0) return [];
  const apart = (difference: number) => shown(difference, 'kelvin', 1);
  const when = measures.recovery === null ? 'at the end' : 'when the stat is satisfied';
  const last = heating[heating.length - 1];
  const largest = heating.reduce((most, each) => Math.max(most, each));
  const summary = [
    say`Flow and return at the coil stand ${apart(largest)} apart at most and ${apart(last)} ${when}; the gap is the heat.`,
  ];
  if (measures.bottomAtSatisfied !== null) {
    summary.push(say`The bottom is then at ${measured(measures, 'bottomAtSatisfied')}.`);
  }
  return summary;
}

/**
 * What the cylinder cut open says.
 * @param sample  index into the trace; left out: when the stat is satisfied, or at the end of the run
 */
export function sectionFinding(result: Result, sample?: number): FigureWords {
  const { measures, trace, variant } = result;
  const summary = [sensorSentence(result)];
  if (sample === undefined && measures.coldAtSatisfied !== null) {
    const share = measures.coldAtSatisfied / variant.cylinder.volume;
    const cold = measured(measures, 'coldAtSatisfied');
    const usable = measured(measures, 'usableAtSatisfied');
    summary.push(say`Drawn and mixed to 40 °C the store then gives ${usable}.`);
    return {
      heading:
        share < 0.005
          ? say`When the stat is satisfied all ${litres(variant.cylinder.volume)} are at 40 °C or more.`
          : say`When the stat is satisfied ${cold}, ${percent(share)} of the store, are still below 40 °C.`,
      summary,
    };
  }
  const at = sample ?? trace.samples - 1;
  const { top, bottom, usable } = trace.of;
  summary.push(say`Drawn and mixed to 40 °C the store would give ${litres(usable[at])}.`);
  return {
    heading: say`After ${duration(trace.time[at])} the top is at ${celsius(top[at])} and the bottom at ${celsius(bottom[at])}.`,
    summary,
  };
}

function sensorSentence({ variant }: Result): Sentence {
  const { stat, cylinder } = variant;
  const share = percent(stat.sensorHeight / cylinder.height);
  return say`The sensor sits ${metres(stat.sensorHeight)} up, at ${share} of the height, and calls at ${celsius(cutIn(variant))}.`;
}
