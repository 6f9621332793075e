import type { DayNumber } from '../../core/days';
import { mgPerKgFromGramsPerM2 } from '../../core/units';
import type { BedResults } from '../../store/contract';

/**
 * What a laboratory's nitrate does to the sums, and what they had on its day: the likely course is
 * not bent to it, its odds and ranges are weighed by it, and the distance between the two says how
 * far to trust either.
 */
export function nitrateTestWords({ season, input }: BedResults, day: DayNumber): string {
  if (day <= season.firstDay)
    return input.soil.startingMineralTop === null
      ? 'It is too old for the sums, which began later.'
      : 'It is what the sums began with.';
  const ready = season.pools.mineralTop[day - season.firstDay];
  if (ready === undefined) return '';
  const reckoned = mgPerKgFromGramsPerM2(ready, input.soil.bulkDensityKgPerL, 30);
  return `The sums had ${Math.round(reckoned)} mg/kg that evening. The test leaves that line as it is; odds and ranges lean to the test.`;
}
