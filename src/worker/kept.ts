import type { Study } from '../../shared/study.ts';
import type { Variant } from '../../shared/variant.ts';
import type { StudyOf } from './answer.ts';

/**
 * The same study that remembers what it last found, so that what is undone shows at once. Not for studies that hand over the
 * memory of their arrays (`buffersOf.ts`).
 * @param matters  what the study reads of a variant
 */
export function kept(study: StudyOf, matters: (variant: Variant) => unknown): StudyOf {
  const found = new Map<string, Study>();
  return function* keptStudy(variant) {
    const key = JSON.stringify(matters(variant));
    const before = found.get(key);
    if (before !== undefined) return before;
    const now = yield* study(variant);
    found.set(key, now);
    const [oldest] = found.keys();
    if (found.size > MOST) found.delete(oldest);
    return now;
  };
}

const MOST = 12; // variants: as many steps back as are taken in one go
