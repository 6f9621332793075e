/** More than the longest station record there is; a by-year file of all stations is meant to fail. */
export const weatherCharacterLimit = 48_000_000;
export const weatherLineLimit = 2_000_000;
/** A wide station file has some 60 columns of 30 characters. */
export const longestLine = 8_000;

export interface TextLine {
  /** from 1 */
  readonly number: number;
  /** null when longer than `longestLine` */
  readonly text: string | null;
}

/** What a spreadsheet writes where a cell is too narrow or its sum fails. */
const brokenCell = /^#+(?:[,;\t]|(?:N\/A|VALUE!|REF!|DIV\/0!|NAME\?|NUM!|NULL!)[,;\t])/;

/** A line that says nothing of any day: blank, or a remark behind a hash. */
export const saysNothing = (line: string): boolean =>
  line.trim() === '' || (line.startsWith('#') && !brokenCell.test(line));

/** The next place of a sign at or after `at`; the text's end when there is none. */
class Finder {
  private found = -1;
  constructor(
    private readonly text: string,
    private readonly sign: string,
  ) {}
  from(at: number): number {
    // looked for again only when passed, so that a text without the sign is scanned once
    if (this.found < at) {
      const next = this.text.indexOf(this.sign, at);
      this.found = next < 0 ? this.text.length : next;
    }
    return this.found;
  }
}

/** The lines of a text, however they end, one at a time. Linear in the text. */
export function* textLines(text: string): Generator<TextLine> {
  const feeds = new Finder(text, '\n');
  const returns = new Finder(text, '\r');
  let at = text.startsWith('\uFEFF') ? 1 : 0;
  for (let number = 1; at < text.length; number++) {
    const end = Math.min(feeds.from(at), returns.from(at));
    yield { number, text: end - at > longestLine ? null : text.slice(at, end) };
    at = text[end] === '\r' && text[end + 1] === '\n' ? end + 2 : end + 1;
  }
}
