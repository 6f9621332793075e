import type { AmountReading, ReadingContext } from '../../amounts/amount';
import { readAmount } from '../../amounts/readAmount';
import type { Trouble } from '../../controls/Field';
import { textFromDay, type DayNumber } from '../../core/days';
import type { LawnKind, Mowing, Wetness } from '../../document/schema';
import { amountFailureSentence } from '../../words/messages';
import { isBareNumber } from './layRows';

/** A mowing as it is being entered: one line, and what was chosen beside it. */
export interface MowingEntry {
  readonly text: string;
  /** null: as the line says, else the usual */
  readonly lawnId: string | null;
  readonly date: string | null;
  readonly wetness: Wetness | null;
  readonly kind: LawnKind | null;
}

export const emptyEntry: MowingEntry = {
  text: '',
  lawnId: null,
  date: null,
  wetness: null,
  kind: null,
};

/** Something was chosen by hand that is not as usual. */
export const isChanged = ({ lawnId, date, wetness, kind }: MowingEntry): boolean =>
  [lawnId, date, wetness, kind].some((choice) => choice !== null);

export interface ReadEntry {
  readonly reading: AmountReading | null;
  /** a number alone was typed, and taken for the usual container */
  readonly isBare: boolean;
  readonly trouble: Trouble | null;
  readonly lawnId: string;
  readonly date: string;
  readonly wetness: Wetness;
  /** as it would be logged; null while the line cannot be read */
  readonly mowing: Omit<Mowing, 'id' | 'rest'> | null;
}

/**
 * What an entry means. What was chosen by hand outranks the line, the line outranks the usual:
 * the first lawn, today, damp.
 */
export function readEntry(
  entry: MowingEntry,
  context: ReadingContext,
  today: DayNumber,
  usual: { readonly lawnId: string; readonly wetness: Wetness },
): ReadEntry {
  const said = readAmount(entry.text, 'mowing', {
    ...context,
    lawnId: entry.lawnId ?? usual.lawnId,
    today,
    // a bare number is so many of the usual container; the form shows that it was taken so
    bareNumber: true,
  });
  const reading = said.ok ? said.value : null;
  const lawnId = entry.lawnId ?? reading?.lawnId ?? usual.lawnId;
  const date =
    entry.date ??
    (typeof reading?.day === 'number' ? textFromDay(reading.day) : textFromDay(today));
  const wetness = entry.wetness ?? reading?.wetness ?? usual.wetness;
  return {
    reading,
    isBare: reading !== null && isBareNumber(entry.text),
    trouble: said.ok
      ? null
      : { sentence: amountFailureSentence(said.error), suggestion: said.error.suggestion },
    lawnId,
    date,
    wetness,
    mowing: reading ? { date, lawnId, amount: reading.amount, wetness, kind: entry.kind } : null,
  };
}
