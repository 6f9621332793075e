export interface StockLine {
  /** "Wheat straw" */
  readonly name: string;
  /** what was there as it was typed: "47 kg", "nothing" */
  readonly start: string;
  /** "1 March" */
  readonly day: string;
  /** all three measured as the start is, or null: nothing of the kind */
  readonly added: string | null;
  readonly laid: string | null;
  readonly left: string | null;
  /** dry weight, where nothing was typed to measure by */
  readonly isDry: boolean;
}

/** What a heap or store was given and gave, all in one measure: "47 kg on 1 March; since then …". */
export function stockSentence(line: StockLine): string {
  const { name, start, day, added, laid, left, isDry } = line;
  const since = [added && `about ${added} added`, laid && `about ${laid} taken out`].filter(
    (one) => one !== null,
  );
  const changed = since.length > 0 ? `; since then ${since.join(', ')}` : '';
  const rest =
    left === null ? '' : ` ${left === '' ? 'By the sums nothing' : `About ${left}`} is left.`;
  const dry = isDry && since.length > 0 ? ' All by dry weight.' : '';
  return `${name}: ${start} on ${day}${changed}.${rest}${dry}`;
}

/** What a store was given and gave, by its books: "about 3 bags taken out", "about 9 bags left". */
export const storeBooks = ({ added, laid, left }: StockLine): readonly string[] =>
  [
    added && `about ${added} added`,
    laid && `about ${laid} taken out`,
    left === null ? null : left === '' ? 'nothing left' : `about ${left} left`,
  ].filter((one) => one !== null);

/** "from 2 mowings with leaves, and from 1 bed that was raked" */
export function putOnWords(mowings: number, leaves: number, rakings: number): string {
  const grown = [
    mowings > 0 ? `from ${String(mowings)} ${mowings === 1 ? 'mowing' : 'mowings'}` : '',
    leaves > 0 ? 'with leaves' : '',
  ].filter(Boolean);
  const raked =
    rakings > 0 ? [`raked off beds ${rakings === 1 ? 'once' : `${String(rakings)} times`}`] : [];
  return [...(grown.length > 0 ? [grown.join(' ')] : []), ...raked].join(' and ');
}
