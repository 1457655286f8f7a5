import type { Variant } from '../../shared/variant.ts';
import { anyVariant } from './anyVariant.ts';

/** All settings anywhere within their limits, but at most 3 h and 40 layers, so that 200 take seconds. */
export const anyRun = anyVariant.map<Variant>((variant) => ({
  ...variant,
  draw: { ...variant.draw, startsAt: variant.draw.startsAt % 7200 },
  run: {
    ...variant.run,
    duration: Math.min(variant.run.duration, 3 * 3600),
    layers: 10 + (variant.run.layers % 31),
  },
}));
