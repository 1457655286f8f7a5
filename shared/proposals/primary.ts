import { pipeSizes } from '../fields/pipeSizes.ts';
import { type Variant, withSetting } from '../variant.ts';
import { type Proposal, type Propose, told, withStep } from './proposal.ts';

/** Circulator, pipes and what stands in their way. */
export const primaryProposals: Propose = (variant) => [
  ...(variant.primary.flowFrom === 'given'
    ? [moreFlow(variant)]
    : [openBranch(variant), largerPipe(variant), higherSetting(variant)]),
  lagging(variant),
  shorterRun(variant),
];

function moreFlow(variant: Variant): Proposal | null {
  const more = withStep(variant, 'primary.flow', variant.primary.flow + MORE_FLOW);
  if (more.primary.flow <= variant.primary.flow) return null;
  return {
    key: 'flow',
    cause: 'primaryFlow',
    text: `Get ${told(more, 'primary.flow')} through the primary, with a higher setting of the circulator or a larger pipe`,
    variant: more,
  };
}

function openBranch(variant: Variant): Proposal | null {
  if (variant.primary.coilBranchDrop <= 0) return null;
  return {
    key: 'coilBranch',
    cause: 'primaryFlow',
    text: 'Open the valve before the coil, and let air and dirt out',
    variant: withSetting(variant, 'primary.coilBranchDrop', 0),
  };
}

function largerPipe(variant: Variant): Proposal | null {
  const at = pipeSizes.findIndex(({ value }) => value === variant.primary.size);
  const next = pipeSizes[at + 1];
  if (next === undefined || variant.primary.length === 0) return null;
  return {
    key: 'pipeSize',
    cause: 'primaryFlow',
    text: `Run the primary in pipe of ${next.label}`,
    variant: withSetting(variant, 'primary.size', next.value),
  };
}

function higherSetting(variant: Variant): Proposal | null {
  const { kind, setHead, shutOffHead, largestFlow } = variant.circulator;
  const key = 'circulator';
  const cause = 'primaryFlow';
  if (kind === 'constantHead') {
    const higher = withStep(variant, 'circulator.setHead', setHead + MORE_HEAD);
    if (higher.circulator.setHead >= shutOffHead) return null;
    const text = `Set the circulator to keep ${told(higher, 'circulator.setHead')} of head`;
    return { key, cause, text, variant: higher };
  }
  const head = Math.min(MOST_HEAD, shutOffHead + MORE_HEAD);
  if (head <= shutOffHead) return null;
  // affinity laws: head goes as the square of the speed, flow as the speed
  const faster = withStep(
    withStep(variant, 'circulator.shutOffHead', head),
    'circulator.largestFlow',
    largestFlow * Math.sqrt(head / shutOffHead),
  );
  const text = `Set the circulator higher, or fit one with ${told(faster, 'circulator.shutOffHead')} of head`;
  return { key, cause, text, variant: faster };
}

function lagging(variant: Variant): Proposal | null {
  const { lossFrom, lagging: present, length } = variant.primary;
  if (lossFrom === 'given' || present >= THICK || length === 0) return null;
  const lagged = withStep(variant, 'primary.lagging', THICK);
  return {
    key: 'lagging',
    cause: 'pipes',
    text: `Lag the primary with ${told(lagged, 'primary.lagging')} of foam`,
    variant: lagged,
  };
}

function shorterRun(variant: Variant): Proposal | null {
  const { length } = variant.primary;
  if (length < LONG) return null;
  const shorter = withStep(variant, 'primary.length', length / 2);
  return {
    key: 'run',
    cause: 'pipes',
    text: `Bring boiler and cylinder nearer: ${told(shorter, 'primary.length')} of primary each way`,
    variant: shorter,
  };
}

const MORE_FLOW = 5 / 60_000; // m³/s
const MORE_HEAD = 1; // m; common practice, no source: settings of domestic circulators are about a metre apart
const MOST_HEAD = 6; // m; from memory: domestic circulators have 5 to 6 m
const THICK = 0.025; // m; common practice, no source: the thicker of the foams that are sold for 22 mm pipe
const LONG = 10; // m
