import { figure } from '../../shared/format.ts';
import type { DelayKey, MinutesByCause } from '../../shared/minutes.ts';
import { delayWord } from '../../shared/sentences/minutes.ts';
import type { CausePatternName } from '../charts/CausePatterns.svelte';
import type { PatternName } from '../charts/Patterns.svelte';
import type { TableOf } from '../charts/table.ts';

/** One step of the stair: where it begins and ends, s from the start of the run. */
export interface CauseBar {
  readonly key: DelayKey | 'ideal';
  readonly word: string;
  readonly pattern: PatternName | CausePatternName;
  readonly from: number;
  readonly to: number;
  /** Signed minutes. */
  readonly minutes: string;
}

/** The steps from nothing to the whole: full output first, then each cause where the one before ended. */
export function causeBars({ ideal, shares, scaleWithCoil }: MinutesByCause): readonly CauseBar[] {
  if (ideal === null) return [];
  const bars: CauseBar[] = [
    {
      key: 'ideal',
      word: 'full output',
      pattern: 'output',
      from: 0,
      to: ideal,
      minutes: figure(ideal / 60, 1),
    },
  ];
  for (const { key, time } of shares) {
    const from = bars[bars.length - 1].to;
    const word = delayWord(key, scaleWithCoil);
    const minutes = figure(time / 60, 1);
    bars.push({ key, word, pattern: patterns[key], from, to: from + time, minutes });
  }
  return bars;
}

/** Beginning and end of each step, in minutes to two decimals; what the installation has not is there with nothing. */
export function causeTable(study: MinutesByCause): TableOf {
  const text = (seconds: number) => figure(seconds / 60, 2);
  const steps = causeBars(study).map(({ word, from, to }) => [
    word,
    text(to - from),
    text(from),
    text(to),
  ]);
  const absent = study.absent.map((key) => [delayWord(key, false), text(0), 'absent', 'absent']);
  return {
    columns: ['cause', 'costs, min', 'from, min', 'to, min'],
    rows: [
      ...steps,
      ...absent,
      ['in all', text(study.whole ?? 0), text(0), text(study.whole ?? 0)],
    ],
  };
}

/** As in the ribbon of the reheat: one cause, one pattern. */
const patterns: Readonly<Record<DelayKey, PatternName | CausePatternName>> = {
  sensor: 'waiting',
  times: 'valve',
  heating: 'rooms',
  boiler: 'resting',
  flowLimit: 'flowLimit',
  primaryFlow: 'stream',
  pipes: 'pipes',
  coil: 'surface',
  scale: 'scale',
};
