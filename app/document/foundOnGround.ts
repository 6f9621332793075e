import { dayOf } from '../core/days';
import type { BedSeason, FoundOnGround } from '../core/season/input';
import { looksOf } from './looks';
import { nitrateTests } from './nitrateTests';
import type { Garden } from './schema';

/**
 * What was measured and seen on a bed before it went into another; undefined where nothing was. A
 * test or look of the very day tells of the evening before: the change came after it.
 *
 * @param input the bed's run to that evening
 * @param on the day it went into the other, YYYY-MM-DD
 */
export function foundOnGround(
  garden: Garden,
  { bedId, firstDay, lastDay }: BedSeason,
  on: string,
): FoundOnGround | undefined {
  const eveAtLast = <Found extends { readonly day: number }>(one: Found): Found =>
    one.day > lastDay ? { ...one, day: lastDay } : one;
  const tests = nitrateTests(garden, { bedId, firstDay, today: dayOf(on) }).map(eveAtLast);
  const looks = looksOf(garden, bedId)
    .filter(({ day }) => day >= firstDay && day <= dayOf(on))
    .map(eveAtLast);
  return tests.length + looks.length > 0 ? { tests, looks } : undefined;
}
