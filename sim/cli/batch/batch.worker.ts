import { computeRows } from './rows.ts';

// What a worker of the pool runs; the task comes in and the rows go out as plain data.
export default computeRows;
