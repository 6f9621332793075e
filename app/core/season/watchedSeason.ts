import { flowIndex, type FlowIndex } from './flows';
import type { PlantingResult, SeasonResult } from './result';

/** Where a run's days lie. */
export type RunDays = Pick<SeasonResult, 'firstDay' | 'days'>;

/** What of a planting's run a bed's state rests on. */
export type WatchedPlanting = Pick<
  PlantingResult,
  | 'id'
  | 'takenBefore'
  | 'demand'
  | 'demandMet'
  | 'fixed'
  | 'dailyNeed'
  | 'dailyUptake'
  | 'dailyFixed'
>;

/** What of a run a bed's state rests on, by day [g N/m2 of bed]: all that a draw keeps. */
export interface WatchedSeason extends RunDays, Pick<SeasonResult, 'rootReach'> {
  readonly pools: Pick<SeasonResult['pools'], 'mineralTop' | 'mineralLower'>;
  /** released into 0-30 cm, washed in from the cover included */
  readonly released: Float64Array;
  /** taken out of 0-30 cm by what rots in and on the soil */
  readonly tiedUp: Float64Array;
  /** luxury uptake of all plantings */
  readonly luxury: Float64Array;
  readonly plantings: readonly WatchedPlanting[];
}

/** The flows that are summed into each of the three. */
export const watchedFlows = {
  released: [
    flowIndex('soilOrganic', 'mineralTop', 'released by the soil'),
    flowIndex('youngHumus', 'mineralTop', 'released by last year’s humus'),
    flowIndex('dugMicrobes', 'mineralTop', 'released'),
    flowIndex('slow', 'mineralTop', 'released from compost'),
    flowIndex('coverFree', 'mineralTop', 'washed in'),
    flowIndex('coverFree', 'mineralTop', 'cover dug in'),
  ],
  tiedUp: [
    flowIndex('mineralTop', 'dugMicrobes', 'held back'),
    flowIndex('mineralTop', 'coverMicrobes', 'held back from the soil'),
  ],
  luxury: [flowIndex('mineralTop', 'crop', 'luxury'), flowIndex('mineralLower', 'crop', 'luxury')],
} as const satisfies Readonly<Record<'released' | 'tiedUp' | 'luxury', readonly FlowIndex[]>>;

/** Sum of some flows of a run on each of its days. */
export function flowsByDay(result: SeasonResult, flows: readonly FlowIndex[]): Float64Array {
  const sum = new Float64Array(result.days);
  for (const flow of flows) {
    const series = result.flows[flow] ?? [];
    for (let index = 0; index < sum.length; index++) sum[index]! += series[index] ?? 0;
  }
  return sum;
}

/** A whole run as a draw would have kept it. */
export function watchedOf(result: SeasonResult): WatchedSeason {
  const { firstDay, days, pools, rootReach, plantings } = result;
  return {
    firstDay,
    days,
    pools,
    rootReach,
    plantings,
    released: flowsByDay(result, watchedFlows.released),
    tiedUp: flowsByDay(result, watchedFlows.tiedUp),
    luxury: flowsByDay(result, watchedFlows.luxury),
  };
}
