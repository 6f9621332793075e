import { dayOf, textFromDay, type DayNumber } from '../core/days';
import type { Planting } from './schema';

export type MovedDates = Partial<Pick<Planting, 'started' | 'firstHarvest' | 'cleared'>>;

/**
 * A planting's typed dates after it, its start or its end was moved by some days. A start stays
 * before what follows it and an end after what comes before it; of a planting that is moved whole only
 * typed days are written, the others follow by themselves.
 *
 * @param shownEnd the day it ends as it is shown, where none is typed; null: it has no end to move
 * @returns no dates where nothing moves
 */
export function movedPlanting(
  planting: Pick<Planting, 'started' | 'firstHarvest' | 'cleared'>,
  part: 'whole' | 'start' | 'end',
  by: number,
  shownEnd: DayNumber | null,
): MovedDates {
  const { started, firstHarvest, cleared } = planting;
  const later = (date: string): string => textFromDay(dayOf(date) + by);
  if (by === 0) return {};
  if (part === 'whole')
    return {
      started: later(started),
      ...(firstHarvest === null ? {} : { firstHarvest: later(firstHarvest) }),
      ...(cleared === null ? {} : { cleared: later(cleared) }),
    };
  if (part === 'start') {
    const latest = Math.min(
      firstHarvest === null ? Infinity : dayOf(firstHarvest),
      cleared === null ? Infinity : dayOf(cleared) - 1,
    );
    const start = Math.min(dayOf(started) + by, Math.max(latest, dayOf(started)));
    return start === dayOf(started) ? {} : { started: textFromDay(start) };
  }
  const before = cleared === null ? shownEnd : dayOf(cleared);
  if (before === null) return {};
  const earliest = Math.max(
    dayOf(started) + 1,
    firstHarvest === null ? -Infinity : dayOf(firstHarvest),
  );
  const end = Math.max(before + by, Math.min(earliest, before));
  return end === before ? {} : { cleared: textFromDay(end) };
}
