import type { DayNumber } from '../days';
import type { LikelyRange } from '../lawn/clippings';
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

/**
 * What is left of what went on a heap.
 *
 *     left = put on x (1 - loss (1 - exp(-age / tau)))
 *
 * The ends of the range take all rows at their far ends at once, and so lie wide: heaps differ by
 * what is in them, by turning and by rain more than any row knows.
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
  const range = (of: (entry: HeapEntry) => number, loss: Cited): LikelyRange => ({
    low: left(of, loss.high, rows.lossDays.low),
    typical: left(of, loss.typical, rows.lossDays.typical),
    high: left(of, loss.low, rows.lossDays.high),
  });
  return {
    dryKilograms: range(({ dryKilograms }) => dryKilograms, rows.dryLost),
    nitrogenGrams: range(({ nitrogenGrams }) => nitrogenGrams, rows.nitrogenLost),
  };
}
