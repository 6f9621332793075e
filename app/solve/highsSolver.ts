import loadHighs from 'highs';
import type { LinearProgramme, Solver } from '../core/plan/linearProgramme';
import { failure, success } from '../core/result';

/** Longest a programme may take [s]. Those of a dozen beds and twenty weeks take a fraction of it. */
export const longestSeconds = 10;

export interface SolverOptions {
  /** address of the solver's code, where it is not found beside its loader */
  readonly locate?: (file: string) => string;
  readonly limit?: SolverLimit;
}

/**
 * When a programme is given up. In seconds for somebody who waits; in branchings of its search where
 * the same must come out however fast the machine is.
 */
export type SolverLimit = { readonly seconds: number } | { readonly branchings: number };

/** No share of the objective is left unproved. Guessing ahead costs more here than it saves. */
const exactly = { mip_rel_gap: 0, mip_abs_gap: 1e-9, mip_heuristic_effort: 0 } as const;

/**
 * Loads the solver. Its solutions are the same for the same programme: one thread, a fixed seed.
 *
 * @returns a solver that never throws; rejects only where the solver itself cannot be had
 */
export async function highsSolver({
  locate,
  limit = { seconds: longestSeconds },
}: SolverOptions = {}): Promise<Solver> {
  const highs = await loadHighs(locate ? { locateFile: locate } : {});
  const { modelStatus } = highs.constants;
  const seconds = 'seconds' in limit ? limit.seconds : Infinity;
  const given =
    'seconds' in limit ? { time_limit: limit.seconds } : { mip_max_nodes: limit.branchings };
  const unsolvable: ReadonlySet<unknown> = new Set([
    modelStatus.infeasible,
    modelStatus.unboundedOrInfeasible,
  ]);
  return (programme) => {
    if (programme.cost.length === 0) return nothingToChoose(programme);
    let model: ReturnType<typeof highs.createModel> | null = null;
    try {
      model = highs.createModel(modelOf(programme));
      const isMixed = programme.isWhole.some((whole) => whole === 1);
      model.options.set({
        output_flag: false,
        random_seed: 1,
        ...given,
        ...(isMixed ? exactly : {}),
      });
      model.run();
      // simplifying first has been seen to call a sound programme of a plan unsolvable
      if (unsolvable.has(model.getModelStatus())) {
        model.options.set({ presolve: 'off' });
        model.clearSolver();
        model.run();
      }
      switch (model.getModelStatus()) {
        case modelStatus.optimal:
          return success({
            objective: model.getObjectiveValue(),
            values: Float64Array.from(model.getSolution().colValue),
          });
        case modelStatus.infeasible:
        case modelStatus.unbounded:
        case modelStatus.unboundedOrInfeasible:
          return failure({ kind: 'no solution' });
        case modelStatus.timeLimit:
          return failure({ kind: 'took too long', seconds });
        default:
          return failure({
            kind: 'solver failed',
            reason: `status ${String(model.getModelStatus())}`,
          });
      }
    } catch (error) {
      return failure({
        kind: 'solver failed',
        reason: error instanceof Error ? error.message : String(error),
      });
    } finally {
      model?.dispose();
    }
  };
}

/** Beds that can take nothing: the solver refuses such a programme, or takes it whatever is asked. */
const nothingToChoose = ({ constant, rowLower, rowUpper }: LinearProgramme): ReturnType<Solver> =>
  rowLower.every((least) => least <= 0) && rowUpper.every((most) => most >= 0)
    ? success({ objective: constant, values: new Float64Array(0) })
    : failure({ kind: 'no solution' });

function modelOf(programme: LinearProgramme) {
  const { rows, cost, rowLower } = programme;
  return {
    numCols: cost.length,
    numRows: rowLower.length,
    offset: programme.constant,
    colCost: cost,
    colLower: programme.columnLower,
    colUpper: programme.columnUpper,
    rowLower,
    rowUpper: programme.rowUpper,
    matrix: {
      format: 'csr' as const,
      numRows: rowLower.length,
      numCols: cost.length,
      starts: rows.starts,
      indices: rows.columns,
      values: rows.values,
    },
    ...(programme.isWhole.some((whole) => whole === 1)
      ? { integrality: Int32Array.from(programme.isWhole) }
      : {}),
  };
}
