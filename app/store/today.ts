import { dayFromText, type DayNumber } from '../core/days';
import type { MowingsState } from './contract';

/** The garden's own day, else the computer's, as text. */
export const todayTextOf = (
  { garden, about }: Pick<MowingsState, 'garden' | 'about'>,
  computerToday: () => string,
): string => garden?.garden.today ?? about?.today ?? computerToday();

/** The garden's own day, else the computer's. */
export function todayDayOf(
  state: Pick<MowingsState, 'garden' | 'about'>,
  computerToday: () => string,
): DayNumber {
  const day = dayFromText(todayTextOf(state, computerToday));
  if (day === null) throw new Error('The computer has no day');
  return day;
}

/** The computer's civil day where the page runs. */
export function localToday(): string {
  const now = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${String(now.getFullYear())}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
