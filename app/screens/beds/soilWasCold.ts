import type { DayNumber } from '../../core/days';
import type { BedResults } from '../../store/contract';
import { limits } from '../../tables/thresholds';

/** Whether the soil was colder on a day than a standing crop wants it, or than seeds do. */
export function soilWasCold({ season, input }: BedResults, day: DayNumber): boolean {
  const celsius = season.soilTemperature[day - season.firstDay];
  if (celsius === undefined) return false;
  const wanted = input.plantings
    .filter(
      ({ startDay, clearingDay }) => startDay <= day && (clearingDay === null || clearingDay > day),
    )
    .map(({ crop }) => crop.warmSoilCelsius ?? limits.numbers['seed fly soil']);
  return wanted.length > 0 && celsius < Math.max(...wanted);
}
