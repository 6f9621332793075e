import type { TableData } from './tableData';

/** What makes a spreadsheet take a cell for a sum to be worked out. */
const startsASum = /^[=+\-@\t\r\n＝＋－＠]/u;

/**
 * One cell. Words that a spreadsheet could take for a sum get an apostrophe before them, after which
 * it takes them for words; numbers are written with a point and to six digits.
 */
function cell(value: string | number | null): string {
  if (value === null) return '';
  if (typeof value === 'number')
    return Number.isFinite(value) ? String(Number(value.toPrecision(6)) + 0) : '';
  const safe = startsASum.test(value.trimStart()) || startsASum.test(value) ? `'${value}` : value;
  return /[",;\r\n\t]|^\s|\s$/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/**
 * A table as comma-separated text: UTF-8 with its mark, so that every spreadsheet reads ² and ’
 * aright; lines end as RFC 4180 says.
 */
export function csvOf({ head, rows }: TableData): string {
  const lines = [head, ...rows].map((row) => row.map(cell).join(','));
  return `\uFEFF${lines.join('\r\n')}\r\n`;
}
