/** Value of one component inside the step just taken; good only during the callback it was handed to. */
export type Dense = (component: number, x: number) => number;

/** What we use of odex 2.0.4: an explicit extrapolation method with dense output. */
export class Solver {
  constructor(n: number);
  denseOutput: boolean;
  absoluteTolerance: number | number[];
  relativeTolerance: number | number[];
  initialStepSize: number;
  maxStepSize: number;
  maxSteps: number;
  /** `outcome` is 0 when it reached the end, 1 out of steps, 2 stopped by the callback. */
  solve(
    f: (x: number, y: number[]) => number[],
    x: number,
    y0: number[],
    xEnd: number,
    afterStep: (
      n: number,
      xOld: number,
      x: number,
      y: number[],
      dense?: Dense,
    ) => boolean | undefined,
  ): { y: number[]; outcome: number; nAccept: number; nReject: number; nEval: number };
}
