import { unitsIn } from './headers';
import type { ColumnRole } from './weatherTypes';

/** A number with its unit behind it, as tables on pages have it: "6 °C", "0.31 in". */
const numberAndUnit = /^[-+\u2212]?(?:\d[\d.,]*|[.,]\d+)\s*([^\d\s.,].{0,11})$/;

const known = (unit: string, role: ColumnRole): ReturnType<typeof unitsIn> | null => {
  const found = unitsIn(`(${unit})`, role);
  const saysMuch = found.temperature ?? found.rain ?? found.unit;
  return saysMuch || unit === '%' || unit === '\u00B0' ? found : null;
};

/** A number without the sign or word behind it; a cell without one as it is. */
export const withoutUnit = (cell: string, unit: string | null): string =>
  unit !== null && cell.toLowerCase().endsWith(unit)
    ? cell.slice(0, cell.length - unit.length).trimEnd()
    : cell;

/** Whether a number has its decimals behind a comma, with or without a unit after them. */
export const isCommaNumber = (cell: string): boolean =>
  /^[-+\u2212]?\d+,\d+(?:\s*[^\d\s.,][^\d]{0,11})?$/.test(cell);

/**
 * The unit that most cells of a column write behind their numbers, where it is one of its role and
 * does not gainsay the header; null where they write none. A cell with another one stays no number.
 */
export function unitOfCells<Column extends ReturnType<typeof unitsIn>>(
  cells: readonly string[],
  role: ColumnRole,
  column: Column,
): { readonly cellUnit: string | null; readonly column: Column } {
  const counts = new Map<string, number>();
  for (const cell of cells) {
    const unit = numberAndUnit.exec(cell)?.[1]?.toLowerCase();
    if (unit !== undefined) counts.set(unit, (counts.get(unit) ?? 0) + 1);
  }
  const [best] = [...counts].sort((one, other) => other[1] - one[1]);
  const none = { cellUnit: null, column };
  if (!best || 2 * best[1] < cells.filter((cell) => /\d/.test(cell)).length) return none;
  const [cellUnit] = best;
  const found = known(cellUnit, role);
  if (!found) return none;
  const gainsays =
    (column.temperature && found.temperature && column.temperature !== found.temperature) ||
    (column.rain && found.rain && column.rain !== found.rain) ||
    (column.unit && found.unit && column.unit.factor !== found.unit.factor);
  if (gainsays) return none;
  return {
    cellUnit,
    column: {
      ...column,
      temperature: column.temperature ?? found.temperature,
      rain: column.rain ?? found.rain,
      unit: column.unit ?? found.unit,
    },
  };
}
