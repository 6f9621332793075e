import {
  demandMetOf,
  poolIndex,
  startingState,
  type BedState,
  type GrowingPlanting,
} from './bedState';
import { stepDay } from './day';
import { flowIndex, flowKinds } from './flows';
import type { BedSeason } from './input';
import type { RunPlan } from './runPlan';
import { judgedFlows } from './seasonAccount';
import type { WatchedSeason } from './watchedSeason';

const washedOut = flowIndex('mineralLower', 'leached', 'washed out');

interface PlantingWatch {
  readonly id: string;
  demand: number;
  demandMet: number;
  fixed: number;
  readonly dailyNeed: Float64Array;
  readonly dailyUptake: Float64Array;
  readonly dailyFixed: Float64Array;
}

/**
 * What a draw keeps of a run: what a bed's state is judged by, and no more. One watch serves all
 * draws of a bed, each run writes it anew. The flows of `judgedFlows` are kept, the others are not
 * there.
 */
export interface SeasonWatch extends WatchedSeason {
  readonly plantings: readonly PlantingWatch[];
  /** washed out over the run [g N/m2] */
  leached: number;
  /** days that were stepped by all runs together */
  steps: number;
}

export function newWatch(input: BedSeason): SeasonWatch {
  const days = input.lastDay - input.firstDay + 1;
  const series = (): Float64Array => new Float64Array(days);
  const flows: Float64Array[] = [];
  for (const flow of judgedFlows) flows[flow] = series();
  return {
    firstDay: input.firstDay,
    days,
    pools: { mineralTop: series(), mineralLower: series() },
    rootReach: series(),
    flows,
    plantings: input.plantings.map(({ id }) => ({
      id,
      demand: 0,
      demandMet: 0,
      fixed: 0,
      dailyNeed: series(),
      dailyUptake: series(),
      dailyFixed: series(),
    })),
    leached: 0,
    steps: 0,
  };
}

/**
 * Runs a bed like `runSeason`, by the same day, and keeps only what a watch does.
 *
 * @param today scratch of one place per flow kind
 */
export function watchSeason(
  input: BedSeason,
  plan: RunPlan,
  watch: SeasonWatch,
  today: Float64Array = new Float64Array(flowKinds.length),
): void {
  const state = startingState(input, plan.lowerDepth, plan, false);
  let leached = 0;
  for (let index = 0; index < watch.days; index++) {
    today.fill(0);
    stepDay(input, state, today, index);
    leached += today[washedOut]!;
    keepDay(watch, state, today, index);
  }
  watch.leached = leached;
  watch.steps += watch.days;
  for (let at = 0; at < watch.plantings.length; at++)
    keepTotals(watch.plantings[at]!, state.plantings[at]!);
}

function keepDay(
  watch: SeasonWatch,
  { nitrogen, plantings }: BedState,
  today: Float64Array,
  index: number,
): void {
  watch.pools.mineralTop[index] = nitrogen[poolIndex.mineralTop]!;
  watch.pools.mineralLower[index] = nitrogen[poolIndex.mineralLower]!;
  for (let at = 0; at < judgedFlows.length; at++) {
    const flow = judgedFlows[at]!;
    watch.flows[flow]![index] = today[flow]!;
  }
  let reach = 0;
  for (let at = 0; at < plantings.length; at++) {
    const plant = plantings[at]!;
    const kept = watch.plantings[at]!;
    kept.dailyNeed[index] = plant.needToday;
    kept.dailyUptake[index] = plant.uptakeToday;
    kept.dailyFixed[index] = plant.fixedToday;
    if (plant.standing) reach = Math.max(reach, plant.fullReach);
  }
  watch.rootReach[index] = reach;
}

function keepTotals(kept: PlantingWatch, plant: GrowingPlanting): void {
  kept.demand = plant.needSoFar;
  kept.demandMet = demandMetOf(plant);
  kept.fixed = plant.fixed;
}
