import { createRequire } from 'node:module';

/** What we use of the package; it ships sources that our compiler settings would not pass. */
interface Solver {
  relativeTolerance: number;
  absoluteTolerance: number;
  initialStepSize: number;
  solve(
    derivative: (x: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { readonly y: number[]; readonly outcome: number };
}
const { Solver, Outcome } = createRequire(import.meta.url)('odex') as {
  Solver: new (size: number) => Solver;
  Outcome: { readonly Converged: number };
};

/**
 * Follows dy/dt = f(y) for a time by a general-purpose solver (extrapolation of the midpoint rule
 * with step and order control) at a tolerance of 1e-12.
 */
export function follow(
  start: readonly number[],
  time: number,
  derivative: (y: readonly number[]) => number[],
): number[] {
  if (time === 0) return [...start];
  const solver = new Solver(start.length);
  solver.relativeTolerance = 1e-12;
  solver.absoluteTolerance = 1e-12;
  solver.initialStepSize = time / 10;
  const { y, outcome } = solver.solve((_, now) => derivative(now), 0, [...start], time);
  if (outcome !== Outcome.Converged) throw new Error('The solver did not arrive');
  return y;
}
