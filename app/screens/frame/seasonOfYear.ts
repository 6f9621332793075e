import { type DayNumber, partsFromDay } from '../../core/days';

/** Quarters of the year as gardeners count them; what the turf of the window's head looks like. */
export type SeasonOfYear = 'spring' | 'summer' | 'autumn' | 'winter';

const byQuarter: readonly SeasonOfYear[] = ['winter', 'spring', 'summer', 'autumn'];

/**
 * The season a day lies in: whole months, winter from December in the north and from June in the
 * south. For the look of the window only; nothing is reckoned from it.
 */
export function seasonOfYear(day: DayNumber, latitudeDegrees: number): SeasonOfYear {
  const { month } = partsFromDay(day);
  const northern = latitudeDegrees >= 0 ? month : month + 6;
  return byQuarter[Math.floor((northern % 12) / 3)] ?? 'spring';
}
