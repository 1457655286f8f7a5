import { cautionsOf } from '../../shared/cautions.ts';
import { duration, measureWords, shown } from '../../shared/format.ts';
import { constraints } from '../../shared/pace.ts';
import { type Balance, type Measures, measureRows, type Result } from '../../shared/result.ts';
import { findingOf, limitWords, plain } from '../../shared/sentences.ts';
import { paceShares } from '../../shared/sentences/pace.ts';
import { lossRows } from '../../shared/sentences/standingLoss.ts';
import { lossStanding } from '../closures/storeLoss.ts';
import { closing } from './closing.ts';
import { columns, paragraph } from './layout.ts';

/** What a run found, as text for a terminal. */
export function report(result: Result): string {
  const sections = [
    result.variant.name,
    paragraph(findingOf(result).map(plain).join(' ')),
    `Measures\n${columns(measureLines(result.measures))}`,
    `Standing loss of the cylinder\n${columns(lossRows(lossStanding(result.variant.cylinder)))}`,
    `What set the pace\n${columns(paceLines(result))}`,
    `What held the boiler\n${columns(phaseLines(result))}`,
    `Energy over the run of ${duration(result.outcome.at)}\n${columns(balanceLines(result.balance))}`,
    ...closing(cautionsOf(result.variant, result)),
  ];
  return `${sections.join('\n\n')}\n`;
}

function measureLines(measures: Measures): string[][] {
  const keys = Object.keys(measureRows) as (keyof Measures)[];
  return keys.map((key) => [measureRows[key].label, measureWords(key, measures[key])]);
}

/** One line for each constraint that set the pace until the stat was satisfied, the longest first. */
function paceLines(result: Result): string[][] {
  return paceShares(result).map(({ key, time }) => [constraints[key].words[0], duration(time)]);
}

/** Neighbouring stretches with the same answer are one line. */
function phaseLines({ phases }: Result): string[][] {
  const lines: { from: number; to: number; words: string }[] = [];
  for (const phase of phases) {
    const running = [
      phase.coilRuns ? 'cylinder' : '',
      phase.radiatorsRun ? 'radiators' : '',
      phase.draws ? 'water drawn' : '',
    ].filter((word) => word !== '');
    const words = [limitWords[phase.limit], ...running].join(', ');
    const last = lines.at(-1);
    if (last?.words === words) last.to = phase.to;
    else lines.push({ from: phase.from, to: phase.to, words });
  }
  return lines.map(({ from, to, words }) => [`${duration(from)} to ${duration(to)}`, words]);
}

function balanceLines(balance: Balance): string[][] {
  const energy = (joules: number) => shown(joules, 'kilowattHour', 3);
  return [
    ['from the boiler', energy(balance.fromBoiler)],
    ['from the immersion heater', energy(balance.fromImmersion)],
    ['gained by the water of boiler, pipes and coil', energy(balance.gainedByPrimary)],
    ['gained by the store', energy(balance.gainedByStore)],
    ['gained by house and radiators', energy(balance.gainedByHouse)],
    ['lost by the cylinder', energy(balance.lostByCylinder)],
    ['lost by boiler case and primary pipes', energy(balance.lostByPipes)],
    ['lost by the house', energy(balance.lostByHouse)],
    ['gained by the pipe to the tap', energy(balance.gainedByTapPipe)],
    ['lost by the pipe to the tap', energy(balance.lostByTapPipe)],
    ['drawn off', energy(balance.drawn)],
    ['does not add up, of the energy moved', balance.relative.toExponential(1)],
  ];
}
