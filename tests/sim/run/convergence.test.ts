import { expect, test } from 'vitest';
import { TOLERANCE } from '../../../sim/run/simulate.ts';
import { convergenceVariants, recoveryAt, referenceRecovery } from '../../make/convergence.ts';

test.each(convergenceVariants)(
  '%s: 48 layers and the default tolerance recover within 0.5 % of 192 layers and 1e-6 K',
  (_name, variant) => {
    const finest = referenceRecovery(variant);
    expect(Math.abs(recoveryAt(variant, 48, TOLERANCE).recovery / finest - 1)).toBeLessThan(0.005);
    // and more layers at the same tolerance stay there
    expect(Math.abs(recoveryAt(variant, 96, TOLERANCE).recovery / finest - 1)).toBeLessThan(0.005);
  },
);
