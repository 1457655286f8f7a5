// What takes and checks what is typed, and computes other variants. The first result needs none of it, so it is fetched in one piece beside it.
export { default as ProblemList } from '../fields/ProblemList.svelte';
export { Entries } from '../state/Entries.svelte.ts';
export { VariantRuns } from '../state/VariantRuns.svelte.ts';
export { default as SensorStepper } from './SensorStepper.svelte';
export { default as SettingsPanel } from './SettingsPanel.svelte';
