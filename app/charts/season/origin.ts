import type { DayNumber } from '../../core/days';
import { dayKinds } from '../../core/season/input';
import type { dayKindWords } from '../../words/seasonChart';

/** How a day's weather is known, as it is told. */
export type ToldKind = keyof typeof dayKindWords;
/** Where a day's weather is known from. */
export type DayOrigin = Exclude<ToldKind, (typeof dayKinds)[number]>;
export type DayOrigins = ReadonlyMap<DayNumber, DayOrigin>;

/**
 * How a day's weather is told: by where it is from, where somebody knows that. Of a day that was
 * downloaded in part and filled for the rest the first is said.
 *
 * @param kind index into `dayKinds`, of the run
 */
export function toldKind(
  origins: DayOrigins | undefined,
  day: DayNumber,
  kind: number | undefined,
): ToldKind {
  const own = dayKinds[kind ?? 0] ?? 'measured';
  const from = origins?.get(day);
  if (from === 'downloaded') return from;
  return own === 'measured' ? (from ?? own) : own;
}
