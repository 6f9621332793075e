import { coverStateOn } from '../../../core/season/coverState';
import { lastDayOf, nitrateMgPerKg } from '../../../core/season/seasonAccount';
import type { CoverState } from '../../../core/season/verdict';
import type { DayNumber } from '../../../core/days';
import type { BedResults } from '../../../store/contract';
import { limits } from '../../../tables/thresholds';

export interface HighestNitrate {
  readonly mgPerKg: number;
  readonly day: DayNumber;
}

/** The most nitrogen ready in the top layer from today to the season's end, and when. */
export function highestNitrate({ input, season }: BedResults): HighestNitrate {
  let highest: HighestNitrate = {
    mgPerKg: nitrateMgPerKg(input, season, season.today),
    day: season.today,
  };
  for (let day = season.today + 1; day <= lastDayOf(season); day++) {
    const mgPerKg = nitrateMgPerKg(input, season, day);
    if (mgPerKg > highest.mgPerKg) highest = { mgPerKg, day };
  }
  return highest;
}

/** How well the ground is covered on the evening of a day. */
export const coverOn = ({ season }: BedResults, day: DayNumber): CoverState =>
  coverStateOn(season, day, limits);
