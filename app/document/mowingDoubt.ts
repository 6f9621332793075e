import { dayOf, monthOf, seasonStart, type DayNumber } from '../core/days';
import {
  expectedDryKilograms,
  mowingQuestion,
  shareOfYearGrown,
  type MowingQuestion,
} from '../core/lawn/growth';
import { favourableCurves } from '../tables/lawnGrowth';
import { yearlyYieldOf } from '../tables/lawns';
import { mowingMass } from './accounts';
import type { Garden, Mowing } from './schema';
import { recordOf } from './weatherRecord';

/** A mowing that is more than its lawn can well have grown. */
export interface MowingDoubt extends MowingQuestion {
  /** the mowing before it, or the season's first day */
  readonly since: DayNumber;
  readonly dryKilograms: number;
}

/** A lawn mown on neighbouring days was mown in parts: they are weighed together. Our own choice. */
const sameMowingDays = 3;

function meanOf(garden: Garden, days: readonly DayNumber[]): number[] {
  const { minimumCelsius, maximumCelsius } = garden.weather.normals;
  const wanted = new Set(days);
  const byDay = new Map<DayNumber, { readonly low: number | null; readonly high: number | null }>();
  for (const { day, minimumCelsius: low, maximumCelsius: high } of recordOf(garden, Infinity))
    if (wanted.has(day)) byDay.set(day, { low, high });
  return days.map((day) => {
    const month = monthOf(day) - 1;
    const measured = byDay.get(day);
    const low = measured?.low ?? minimumCelsius[month] ?? NaN;
    const high = measured?.high ?? maximumCelsius[month] ?? NaN;
    return (low + high) / 2;
  });
}

/**
 * Whether a mowing (logged or about to be) is over three times what its lawn can have grown since
 * the one before, by the warmth of the days and a good year of its kind (the favourable ends of the rows); null when it is
 * believable. To be asked about, never refused. Mowings up to three days apart count as one.
 *
 * @throws on a mowing that its garden could not hold
 */
export function mowingDoubt(garden: Garden, mowing: Mowing): MowingDoubt | null {
  const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
  if (!lawn) throw new Error(`No lawn ${mowing.lawnId}`);
  const day = dayOf(mowing.date);
  const earlier = garden.mowings
    .filter((one) => one.lawnId === lawn.id && one.id !== mowing.id)
    .map((one) => ({ mowing: one, day: dayOf(one.date) }))
    .filter((one) => one.day <= day)
    .sort((one, other) => other.day - one.day);
  let first = day;
  const together = [mowing];
  let since = seasonStart(day, garden.garden.seasonStartMonth) - 1;
  for (const one of earlier) {
    if (first - one.day > sameMowingDays) {
      since = Math.max(since, one.day);
      break;
    }
    together.push(one.mowing);
    first = one.day;
  }
  const { minimumCelsius, maximumCelsius } = garden.weather.normals;
  const months = minimumCelsius.map((low, month) => (low + (maximumCelsius[month] ?? NaN)) / 2);
  const days = Array.from({ length: day - since }, (_, index) => since + 1 + index);
  const means = meanOf(garden, days);
  // what it can have grown: spring flushes beyond what the likely curve tells, so the most
  // favourable ends of the rows count
  const share = Math.max(
    ...favourableCurves(lawn.grass).map((curve) => shareOfYearGrown(means, months, curve)),
  );
  const dryKilograms = together.reduce((sum, one) => sum + mowingMass(garden, one).dryKilograms, 0);
  const yearly = yearlyYieldOf(mowing.kind ?? lawn.kind).high;
  const question = mowingQuestion(dryKilograms, expectedDryKilograms(lawn.areaM2, yearly, share));
  return question && { ...question, since, dryKilograms };
}
