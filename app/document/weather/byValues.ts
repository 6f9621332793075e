import type { ColumnRole } from './weatherTypes';

/** One column of a table, as far as its values can be read. */
export interface ColumnOfValues {
  /** null where a cell holds no number */
  readonly values: readonly (number | null)[];
  /** share of cells that are dates */
  readonly dates: number;
}

const mostly = 0.9;

type Known = readonly (number | null)[];

/** Share of rows with both values on which `holds`. */
function share(one: Known, other: Known, holds: (a: number, b: number, row: number) => boolean) {
  let [held, both] = [0, 0];
  one.forEach((a, row) => {
    const b = other[row] ?? null;
    if (a === null || b === null) return;
    both++;
    if (holds(a, b, row)) held++;
  });
  return both > 0 ? held / both : 0;
}

const isAbove = (one: Known, other: Known): boolean =>
  share(one, other, (a, b) => a >= b) >= mostly && share(one, other, (a, b) => a > b) > 0;

/** A mean lies near the middle of the day's ends; humidity or wind does not. */
const isMean = (middle: Known, low: Known, high: Known): boolean =>
  share(low, high, (a, b, row) => {
    const value = middle[row] ?? null;
    return value !== null && Math.abs(value - (a + b) / 2) <= 0.25 * (b - a) + 0.5;
  }) >= mostly;

/**
 * Which columns hold what, told by the values alone: a column of dates; a column of rain, never
 * below nought and nought on many days; and, when just two columns are left of which one is never
 * below the other (or three, the third being their mean), highest and lowest. With anything else
 * besides, nothing but the date is told: the person has to say.
 *
 * @returns column numbers from 0; roles that cannot be told are absent
 */
export function rolesByValues(columns: readonly ColumnOfValues[]): ReadonlyMap<ColumnRole, number> {
  const date = columns.findIndex((column) => column.dates >= mostly);
  if (date < 0) return new Map();
  const onlyDate = new Map<ColumnRole, number>([['date', date]]);
  const numeric = columns.flatMap(({ values }, index) => {
    const known = values.filter((value) => value !== null);
    return index !== date && known.length > 0 && known.length >= mostly * values.length
      ? [{ index, values, known }]
      : [];
  });
  const noughts = (known: readonly number[]): number =>
    known.filter((value) => value === 0).length / known.length;
  const [rain] = numeric
    .filter(({ known }) => known.every((value) => value >= 0) && noughts(known) >= 0.2)
    .sort((one, other) => noughts(other.known) - noughts(one.known));
  const roles = new Map(onlyDate);
  if (rain) roles.set('rain', rain.index);
  const rest = numeric.filter(({ index }) => index !== rain?.index);
  if (rest.length === 0) return roles;
  const pairs = rest.flatMap((high) =>
    rest.flatMap((low) => {
      if (low === high || !isAbove(high.values, low.values)) return [];
      const others = rest.filter((one) => one !== low && one !== high);
      const isPair = others.every((one) => isMean(one.values, low.values, high.values));
      return isPair ? [{ high: high.index, low: low.index }] : [];
    }),
  );
  const [pair, second] = pairs;
  if (rest.length > 3 || !pair || second) return onlyDate;
  return roles.set('highest', pair.high).set('lowest', pair.low);
}
