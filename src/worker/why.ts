import { spreadStudy } from '../../sim/run/spread.ts';
import type { StudyOf } from './answer.ts';

/** What says why it takes so long, in the order in which it is wanted. */
export const why: readonly StudyOf[] = [spreadStudy];
