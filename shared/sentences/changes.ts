import type { Change } from '../changes.ts';
import { minutes, plainText } from '../format.ts';

/** The changes that are worth a line, soonest first, and how many are not. */
export interface ChangesTold {
  readonly worth: readonly Change[];
  readonly others: readonly Change[];
}

/** Parts what saves something from what does not. @param changes  soonest first */
export function changesTold(changes: readonly Change[]): ChangesTold {
  const worth = changes.filter(isWorth);
  return { worth, others: changes.filter((change) => !isWorth(change)) };
}

function isWorth({ saves, recovery }: Change): boolean {
  return saves === null ? recovery !== null : saves >= LEAST;
}

/** What a change buys: `saves 7.5 min`, or where the stat was not satisfied before, `gets there in 38.0 min`. */
export function changeBuys({ saves, recovery }: Change): string {
  if (recovery === null) return 'does not get there either';
  if (saves === null) return `gets there in ${minutes(recovery)}`;
  if (Math.abs(saves) < LEAST) return 'saves nothing worth saying';
  return saves > 0 ? `saves ${minutes(saves)}` : `costs ${minutes(-saves)}`;
}

/** Of the list: with a verb and a number. */
export function changesHeading(changes: readonly Change[]): string {
  const { worth } = changesTold(changes);
  if (changes.length === 0) return 'There is nothing practical to change: 0 changes were found';
  if (worth.length === 0) return `None of ${changes.length} practical changes saves time here`;
  const [best] = worth;
  return best.saves === null
    ? `With one change the stat is satisfied in ${minutes(best.recovery)}`
    : `One change saves up to ${minutes(best.saves)}`;
}

/** What is left out. */
export function othersSentence(others: readonly Change[]): string {
  if (others.length === 0) return '';
  const many = others.length === 1 ? '1 other change' : `${others.length} other changes`;
  return `${many} would save less than ${plainText(LEAST, 'second')}, or nothing at all`;
}

const LEAST = 3; // s, 0.05 min
