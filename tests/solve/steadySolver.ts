import type { Solver } from '../../app/core/plan/linearProgramme';
import { highsSolver } from '../../app/solve/highsSolver';

/** A plan's programme takes one to some hundred branchings. */
const branchings = 100_000;

/** The solver as the program has it, that gives up by work instead of by the clock. */
export const steadySolver = (): Promise<Solver> => highsSolver({ limit: { branchings } });
