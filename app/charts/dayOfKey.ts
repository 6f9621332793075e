import type { KeyboardEvent } from 'react';
import type { DayNumber } from '../core/days';

const daysOfKey: Readonly<Record<string, number>> = {
  ArrowLeft: -1,
  ArrowDown: -1,
  ArrowRight: 1,
  ArrowUp: 1,
  PageDown: -7,
  PageUp: 7,
};

/**
 * The day that a key leads to along a chart's days: by one, by a week, or to either end.
 *
 * @returns null for any other key; may lie outside of `span`
 */
export function dayOfKey(
  event: Pick<KeyboardEvent, 'key' | 'altKey' | 'ctrlKey' | 'metaKey'>,
  day: DayNumber,
  span: { readonly from: DayNumber; readonly to: DayNumber },
): DayNumber | null {
  if (event.altKey || event.ctrlKey || event.metaKey) return null;
  const step = daysOfKey[event.key];
  if (step !== undefined) return day + step;
  if (event.key === 'Home') return span.from;
  return event.key === 'End' ? span.to : null;
}
