import { dayOf, type DayNumber } from '../core/days';
import type { Mowing } from './schema';

/** Clippings that nobody found a place for are there to be laid for so many days (ours). */
export const clippingsKeepDays = 7;

/** Whether what was mown can still be laid as the grass it was; later it has dried or rotted. */
export function clippingsKeep({ date }: Pick<Mowing, 'date'>, today: DayNumber): boolean {
  const age = today - dayOf(date);
  return age >= 0 && age < clippingsKeepDays;
}
