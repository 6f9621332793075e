import { flowKinds } from './flows';
import type { BedSeason } from './input';
import type { RunPlan } from './runPlan';
import { watchDays, type SeasonWatch } from './seasonWatch';
import { startingState } from './startingState';

export { newWatch, type LookWatch, type SeasonWatch } from './seasonWatch';

/**
 * Runs a bed like `runSeason`, by the same day, and keeps only what a watch does.
 *
 * @param flows scratch of one place per flow kind
 */
export function watchSeason(
  input: BedSeason,
  plan: RunPlan,
  watch: SeasonWatch,
  flows: Float64Array = new Float64Array(flowKinds.length),
): void {
  watchDays(input, startingState(input, plan.lowerDepth, plan, false), watch, flows);
}
