import { shown } from '../format.ts';
import type { Variant } from '../variant.ts';
import { type Proposal, type Propose, told, withStep } from './proposal.ts';

/** Boiler: the target it keeps, its least, its rests, its size. */
export const boilerProposals: Propose = (variant) => [
  variant.boiler.targets === 'shared' ? ownTarget(variant) : hotterFlow(variant),
  ...(variant.boiler.model === 'ideal' ? [] : [shorterRest(variant), lowerLeast(variant)]),
  nextSize(variant),
];

function hotterFlow(variant: Variant): Proposal | null {
  const { hotWaterFlow } = variant.boiler;
  if (hotWaterFlow >= HOTTEST) return null;
  const hotter = withStep(
    variant,
    'boiler.hotWaterFlow',
    Math.min(HOTTEST, hotWaterFlow + HOTTER_BY),
  );
  return {
    key: 'flowLimit',
    cause: 'flowLimit',
    text: `Raise the flow limit for hot water to ${told(hotter, 'boiler.hotWaterFlow')}`,
    variant: hotter,
    isHotter: true,
  };
}

function ownTarget(variant: Variant): Proposal | null {
  const { boiler } = variant;
  const target = Math.min(HOTTEST, Math.max(boiler.hotWaterFlow, boiler.heatingFlow + HOTTER_BY));
  if (target <= boiler.heatingFlow) return null;
  const own = withStep(
    { ...variant, boiler: { ...boiler, targets: 'separate' } },
    'boiler.hotWaterFlow',
    target,
  );
  return {
    key: 'ownTarget',
    cause: 'flowLimit',
    text: `Give hot water a flow target of its own, ${told(own, 'boiler.hotWaterFlow')}`,
    variant: own,
    isHotter: true,
  };
}

function shorterRest(variant: Variant): Proposal | null {
  if (variant.boiler.minimumOff <= USUAL_REST) return null;
  const shorter = withStep(variant, 'boiler.minimumOff', USUAL_REST);
  return {
    key: 'minimumOff',
    cause: 'boiler',
    text: `Shorten the minimum off time to ${told(shorter, 'boiler.minimumOff')}, where the maker allows it`,
    variant: shorter,
  };
}

function lowerLeast(variant: Variant): Proposal | null {
  const { output, minimumOutput } = variant.boiler;
  const lower = withStep(variant, 'boiler.minimumOutput', USUAL_LEAST * output);
  if (lower.boiler.minimumOutput >= minimumOutput) return null;
  return {
    key: 'leastOutput',
    cause: 'boiler',
    text: `Let the burner go down to ${told(lower, 'boiler.minimumOutput')}, where the maker allows it`,
    variant: lower,
  };
}

function nextSize(variant: Variant): Proposal | null {
  const { output, minimumOutput } = variant.boiler;
  const size = SIZES.find((each) => each > output);
  if (size === undefined) return null;
  const larger = withStep(
    withStep(variant, 'boiler.output', size),
    'boiler.minimumOutput',
    minimumOutput * (size / output),
  );
  return {
    key: 'output',
    cause: 'output',
    text: `Fit a boiler of ${shown(size, 'kilowatt', 0)}`,
    variant: larger,
  };
}

const HOTTER_BY = 5; // K
const HOTTEST = 80; // °C; common practice, no source: primaries run at 70 to 80 °C, and above that a stat that fails overheats the store
const USUAL_REST = 180; // s; from memory: a lock-out of 3 to 5 min is typical
const USUAL_LEAST = 0.2; // of full output; from memory: 10 to 30 % on domestic boilers
// common practice, no source: sizes of domestic boilers, W
const SIZES = [12, 15, 18, 24, 30, 35, 40, 50, 60].map((kilowatts) => 1000 * kilowatts);
