// The package has no types that our settings accept; ours stand beside this file.
export { Solver } from 'odex';
