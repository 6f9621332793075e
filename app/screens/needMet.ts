import type { BedResults } from '../store/contract';

/**
 * Share of what the plantings of the season that holds today could use and get, 0-1, as the run
 * has it to their end; null when nothing stands or will stand after today.
 */
export function needMet({ season }: BedResults): number | null {
  const now = season.plantings.filter(
    ({ startDay, clearingDay }) =>
      startDay <= season.today && (clearingDay === null || clearingDay > season.today),
  );
  const demand = now.reduce((sum, planting) => sum + planting.demand, 0);
  if (demand <= 0) return null;
  return now.reduce((sum, planting) => sum + planting.demand * planting.demandMet, 0) / demand;
}
