import fc from 'fast-check';

// The same random cases every time, so that a commit passes or fails for itself; REHEAT_SEED picks others: a whole number, or
// `any` for new ones each time
const asked = process.env.REHEAT_SEED ?? '1';
if (asked !== 'any') {
  const seed = Number(asked);
  if (!Number.isInteger(seed)) {
    throw new Error(`REHEAT_SEED is "${asked}"; expected a whole number, or any`);
  }
  fc.configureGlobal({ seed });
}
