import { dayOf, type DayNumber } from '../core/days';
import type { Garden, Mowing } from './schema';

/** What tells a mowing from others of its lawn; both null where there is nothing to take it for. */
export interface MowingMark {
  /** its place among those of the lawn on that day, from 1 and in the file's order; null: the only one */
  readonly nth: number | null;
  /** its day, where clippings of other days wait beside it; null: the lawn alone says which */
  readonly day: DayNumber | null;
}

const unmarked: MowingMark = { nth: null, day: null };

/** @returns nothing to tell apart for a mowing that the garden does not have */
export function mowingMark({ mowings }: Pick<Garden, 'mowings'>, mowingId: string): MowingMark {
  const mowing = mowings.find(({ id }) => id === mowingId);
  if (!mowing) return unmarked;
  const ofLawn = mowings.filter(({ lawnId }) => lawnId === mowing.lawnId);
  const ofDay = ofLawn.filter(({ date }) => date === mowing.date);
  const isWaiting = ({ rest }: Mowing): boolean => rest.to === 'undecided';
  const others = ofLawn.some((other) => isWaiting(other) && other.date !== mowing.date);
  return {
    nth: ofDay.length > 1 ? ofDay.indexOf(mowing) + 1 : null,
    day: isWaiting(mowing) && others ? dayOf(mowing.date) : null,
  };
}
