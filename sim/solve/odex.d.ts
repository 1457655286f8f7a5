/** What we use of odex 2.0.4: an explicit extrapolation method. */
export class Solver {
  constructor(n: number);
  absoluteTolerance: number | number[];
  relativeTolerance: number | number[];
  initialStepSize: number;
  maxStepSize: number;
  /** Midpoints of a row at which it looks whether the step is unstable. */
  stabilityCheckCount: number;
  maxSteps: number;
  /** Rows of the table at most, above 2. */
  maxExtrapolationColumns: number;
  /** `outcome` is 0 when it reached the end, 1 out of steps, 2 stopped by the callback. */
  solve(
    f: (x: number, y: number[]) => number[],
    x: number,
    y0: number[],
    xEnd: number,
    /** Called first with the start itself, `n` 1, then after each step; false stops. */
    afterStep: (n: number, xOld: number, x: number, y: number[]) => boolean | undefined,
  ): { y: number[]; outcome: number; nAccept: number; nReject: number; nEval: number };
}
