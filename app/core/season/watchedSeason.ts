import type { PlantingResult, SeasonResult } from './result';

/** Where a run's days lie. */
export type RunDays = Pick<SeasonResult, 'firstDay' | 'days'>;

/** What of a planting's run a bed's state rests on. */
export type WatchedPlanting = Pick<
  PlantingResult,
  'id' | 'demand' | 'demandMet' | 'fixed' | 'dailyNeed' | 'dailyUptake' | 'dailyFixed'
>;

/** What of a run a bed's state rests on: a whole `SeasonResult`, or what a draw keeps of one. */
export interface WatchedSeason extends RunDays, Pick<SeasonResult, 'flows' | 'rootReach'> {
  readonly pools: Pick<SeasonResult['pools'], 'mineralTop' | 'mineralLower'>;
  readonly plantings: readonly WatchedPlanting[];
}
