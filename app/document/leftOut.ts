import { dayOf, type DayNumber } from '../core/days';
import type { Garden, GardenEvent } from './schema';

/** What is written down of a bed and yet not in its sums. */
export type LeftOut =
  | { readonly kind: 'test of the same day'; readonly day: DayNumber }
  | { readonly kind: 'before it was known'; readonly count: number; readonly since: DayNumber }
  | { readonly kind: 'not known yet'; readonly since: DayNumber };

type SoilTest = Extract<GardenEvent, { kind: 'soil test' }>;

const measures = ['nitrateMgPerKg', 'organicMatterPercent'] as const;

/** Whether two tests give a number for the same thing, so that one of them must give way. */
const clash = (one: SoilTest, other: SoilTest): boolean =>
  measures.some((key) => one[key] !== null && other[key] !== null);

/**
 * Entries of a bed that the sums pass over, so that none is dropped unseen: of two soil tests on a
 * day the earlier written, whatever was done before the day from which the bed is known, and that
 * day itself where it is still to come.
 */
export function leftOutOf(garden: Garden, bedId: string, today: DayNumber): readonly LeftOut[] {
  const bed = garden.beds.find(({ id }) => id === bedId);
  if (!bed) return [];
  const found: LeftOut[] = [];
  const tests = garden.events.filter(
    (event): event is SoilTest => event.kind === 'soil test' && event.bedId === bedId,
  );
  const twice = new Set(
    tests
      .filter((one, at) =>
        tests.some((other, place) => place > at && other.date === one.date && clash(one, other)),
      )
      .map(({ date }) => date),
  );
  for (const date of [...twice].sort())
    found.push({ kind: 'test of the same day', day: dayOf(date) });
  const known = bed.ground?.on ?? bed.knownSince;
  if (known === null) return found;
  const since = dayOf(known);
  if (since > today) return [...found, { kind: 'not known yet', since }];
  const done = [
    ...garden.applications,
    ...garden.events.filter(({ kind }) => kind !== 'soil test' && kind !== 'look and dig'),
  ];
  const count = done.filter(
    (one) => 'bedId' in one && one.bedId === bedId && dayOf(one.date) < since,
  ).length;
  if (count > 0) found.push({ kind: 'before it was known', count, since });
  return found;
}
