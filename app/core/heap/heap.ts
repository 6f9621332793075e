import type { DayNumber } from '../days';
import { drawAmount, drawShare, likelyRange } from '../drawRow';
import type { LikelyRange } from '../lawn/clippings';
import { seeded } from '../random';
import type { Cited } from '../reference';

/** Something that went on a heap, as it was then. */
export interface HeapEntry {
  readonly day: DayNumber;
  readonly dryKilograms: number;
  readonly nitrogenGrams: number;
}

/** How a heap shrinks; each a row with its range. */
export interface HeapRows {
  /** share of dry matter that is gone in the end */
  readonly dryLost: Cited;
  /** share of nitrogen that is gone in the end, to the air and down */
  readonly nitrogenLost: Cited;
  /** days in which all but 37 % of that loss has come */
  readonly lossDays: Cited;
}

export interface HeapNow {
  readonly dryKilograms: LikelyRange;
  readonly nitrogenGrams: LikelyRange;
}

/** Draws behind a range of a heap, and one fixed seed: the same heap always shows the same range. */
const drawCount = 200;
const fixedSeed = 21;

/**
 * What is left of what went on a heap.
 *
 *     left = put on x (1 - loss (1 - exp(-age / tau)))
 *
 * Low and high are the 10 and 90 per cent points of 200 seeded draws of the rows together; the likely
 * value is the sum at likely values, and the range reaches to it.
 *
 * @param day entries of later days are not there yet
 * @validity heaps of a garden, not turned to a plan; the warmth of the season is not asked
 * @source a loss that dies away (assumed); rows: `app/tables/heap`
 */
export function heapOn(entries: readonly HeapEntry[], day: DayNumber, rows: HeapRows): HeapNow {
  const left = (of: (entry: HeapEntry) => number, loss: number, days: number): number =>
    entries.reduce((sum, entry) => {
      const age = day - entry.day;
      return age < 0 ? sum : sum + of(entry) * (1 - loss * -Math.expm1(-age / days));
    }, 0);
  const random = seeded(fixedSeed);
  const draws = Array.from({ length: drawCount }, () => ({
    days: drawAmount(rows.lossDays, random),
    dryLost: drawShare(rows.dryLost, random),
    nitrogenLost: drawShare(rows.nitrogenLost, random),
  }));
  const range = (of: (entry: HeapEntry) => number, which: 'dryLost' | 'nitrogenLost') => {
    const typical = left(of, rows[which].typical, rows.lossDays.typical);
    const { low, high } = likelyRange(draws.map((draw) => left(of, draw[which], draw.days)));
    return { low: Math.min(low, typical), typical, high: Math.max(high, typical) };
  };
  return {
    dryKilograms: range(({ dryKilograms }) => dryKilograms, 'dryLost'),
    nitrogenGrams: range(({ nitrogenGrams }) => nitrogenGrams, 'nitrogenLost'),
  };
}
