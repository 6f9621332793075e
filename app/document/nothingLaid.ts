import { dayOf, type DayNumber } from '../core/days';
import type { Garden, GardenEvent } from './schema';

type NothingLaid = Extract<GardenEvent, { kind: 'nothing laid' }>;

/** So many days "nothing laid" holds, the day itself included: the plan is one of weeks (ours). */
export const nothingLaidDays = 7;

/** Entries of "nothing laid" that hold on a day, by which the week's plan leaves those beds out. */
export function nothingLaid(garden: Garden, today: DayNumber): readonly NothingLaid[] {
  return garden.events.filter((event): event is NothingLaid => {
    if (event.kind !== 'nothing laid') return false;
    const age = today - dayOf(event.date);
    return age >= 0 && age < nothingLaidDays;
  });
}
