/** How dates such as 3/4/2013 are meant; null: such dates are refused and asked about. */
export type DateOrder = 'day first' | 'month first';

export interface PastedRow {
  /** counted from 1, as the person sees it in the paste */
  readonly number: number;
  readonly cells: readonly string[];
  /** where the row begins and ends in the text, its line end left out */
  readonly from: number;
  readonly to: number;
}

/** A cell in quotes may hold line ends, and a quote doubled; no cell is longer than this. */
const quotedCell = /"((?:[^"]|""){0,2000})"[ \u00A0]*(?=[\t;,\r\n]|$)/y;

/**
 * The rows of a text copied from a spreadsheet: cells parted by tabs, or by semicolons or commas
 * where there is no tab. Rows without a word are left out. A quote that nothing closes is a sign like
 * any other.
 */
export function pastedRows(text: string): PastedRow[] {
  const separator = text.includes('\t') ? '\t' : text.includes(';') ? ';' : ',';
  const rows: PastedRow[] = [];
  let [number, rowNumber, from, cell] = [1, 1, 0, ''];
  let cells: string[] = [];
  const endRow = (to: number): void => {
    cells.push(cell.trim());
    if (cells.some((one) => one !== '')) rows.push({ number: rowNumber, cells, from, to });
    cells = [];
    cell = '';
  };
  let at = 0;
  while (at < text.length) {
    const sign = text[at] ?? '';
    if (sign === '"' && cell.trim() === '') {
      quotedCell.lastIndex = at;
      const found = quotedCell.exec(text);
      const next = found ? text[at + found[0].length] : undefined;
      if (found && (next === undefined || next === separator || /[\r\n]/.test(next))) {
        cell = (found[1] ?? '').replaceAll('""', '"');
        number += cell.split(/\r\n|\n|\r/).length - 1;
        at += found[0].length;
        continue;
      }
    }
    if (sign === separator) {
      cells.push(cell.trim());
      cell = '';
    } else if (sign === '\n' || sign === '\r') {
      endRow(at);
      if (sign === '\r' && text[at + 1] === '\n') at++;
      number++;
      [rowNumber, from] = [number, at + 1];
    } else cell += sign;
    at++;
  }
  endRow(text.length);
  return rows;
}

const monthNames = ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun'].concat(
  ['Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'], // as `readDay` reads them
);
const weekdayAhead =
  /^(?:mon|tue(?:s)?|wed(?:nes)?|thu(?:rs?)?|fri|sat(?:ur)?|sun)(?:day)?[.,]?\s+(?=.*\d)/i;
const timeBehind = /(?<=\d)(?:T|,?\s+)\d{1,2}:\d{2}(?::\d{2}(?:[.,]\d+)?)?\s*(?:[ap]\.?m\.?|Z)?$/i;
const numbersAlone = /^(\d{1,2})[/.-](\d{1,2})(?:[/.-](\d{4}|\d{2}))?$/;

/** The first two numbers of a date such as 27/4/2013, which tell which way round it is; else null. */
export function dayNumbers(text: string): readonly [number, number] | null {
  const bare = text.replace(weekdayAhead, '').replace(timeBehind, '').trim();
  const [, first, second, year] = numbersAlone.exec(bare) ?? [];
  return year === undefined ? null : [Number(first), Number(second)];
}

const wholeYear = (year: string): string => (year.length === 2 ? `20${year}` : year);

/**
 * A date as spreadsheets write it, in words that a date field reads: without its weekday and time of
 * day; numbers alone by `order`. What is no such date stays as it is.
 */
export function plainDate(text: string, order: DateOrder | null): string {
  const bare = text.replace(weekdayAhead, '').replace(timeBehind, '').trim();
  const yearFirst =
    /^(\d{4})[/.](\d{1,2})[/.](\d{1,2})$/.exec(bare) ??
    /^((?:19|20)\d{2})(\d{2})(\d{2})$/.exec(bare);
  if (yearFirst) return yearFirst.slice(1).join('-');
  const named = /^(\d{1,2})[-. ]([a-z]{3,9})[-. ](\d{4}|\d{2})$/i.exec(bare);
  if (named) return `${named[1] ?? ''} ${named[2] ?? ''} ${wholeYear(named[3] ?? '')}`;
  const found = numbersAlone.exec(bare);
  if (!found) return bare;
  const [, first = '', second = '', year] = found;
  if (order === null) return [first, second, ...(year === undefined ? [] : [year])].join('/');
  const [day, month] = order === 'day first' ? [first, second] : [second, first];
  if (year !== undefined)
    return `${wholeYear(year)}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
  return `${day} ${monthNames[Number(month) - 1] ?? month}`;
}
