/** Offset of the first character at which `text` stops being JSON, or null when it is JSON. */
export function firstJsonFault(text: string): number | null {
  const scanner = new Scanner(text);
  try {
    scanner.skipSpace();
    scanner.value();
    scanner.skipSpace();
    return scanner.at < text.length ? scanner.at : null;
  } catch (fault) {
    if (fault === stop) return Math.min(scanner.at, text.length);
    throw fault;
  }
}

/** Line and column from 1; `\r\n` is one line end, as editors count. */
export function lineAndColumn(text: string, offset: number): { line: number; column: number } {
  const before = text.slice(0, offset).split(/\r\n|\r|\n/);
  return { line: before.length, column: (before.at(-1) ?? '').length + 1 };
}

/** Deepest nesting of brackets outside strings; counting ends past `limit`. Linear in the text. */
export function nestingDepth(text: string, limit: number): number {
  let depth = 0;
  let deepest = 0;
  let inString = false;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (inString) {
      if (code === 0x5c) at++;
      else if (code === 0x22) inString = false;
    } else if (code === 0x22) inString = true;
    else if (code === 0x5b || code === 0x7b) {
      depth++;
      if (depth > deepest) deepest = depth;
      if (deepest > limit) return deepest;
    } else if (code === 0x5d || code === 0x7d) depth--;
  }
  return deepest;
}

const stop = Symbol('first fault');

/**
 * Walks JSON by its grammar (RFC 8259) only to find where it fails: engines word and count their
 * own errors differently. Recursion is as deep as the nesting, which the caller has bounded.
 */
class Scanner {
  at = 0;
  private readonly text: string;
  constructor(text: string) {
    this.text = text;
  }

  private fail(): never {
    throw stop;
  }

  skipSpace(): void {
    while (' \t\n\r'.includes(this.text[this.at] ?? 'x')) this.at++;
  }

  private expect(character: string): void {
    if (this.text[this.at] !== character) this.fail();
    this.at++;
  }

  value(): void {
    const character = this.text[this.at];
    if (character === '{') this.members();
    else if (character === '[') this.items();
    else if (character === '"') this.string();
    else if (character === 't') this.word('true');
    else if (character === 'f') this.word('false');
    else if (character === 'n') this.word('null');
    else this.number();
  }

  private word(word: string): void {
    for (const character of word) this.expect(character);
  }

  private items(): void {
    this.expect('[');
    this.skipSpace();
    if (this.text[this.at] === ']') {
      this.at++;
      return;
    }
    for (;;) {
      this.skipSpace();
      this.value();
      this.skipSpace();
      if (this.text[this.at] === ']') break;
      this.expect(',');
    }
    this.at++;
  }

  private members(): void {
    this.expect('{');
    this.skipSpace();
    if (this.text[this.at] === '}') {
      this.at++;
      return;
    }
    for (;;) {
      this.skipSpace();
      this.string();
      this.skipSpace();
      this.expect(':');
      this.skipSpace();
      this.value();
      this.skipSpace();
      if (this.text[this.at] === '}') break;
      this.expect(',');
    }
    this.at++;
  }

  private string(): void {
    this.expect('"');
    for (;;) {
      const code = this.text.charCodeAt(this.at);
      if (Number.isNaN(code) || code < 0x20) this.fail();
      this.at++;
      if (code === 0x22) return;
      if (code !== 0x5c) continue;
      if (this.text[this.at] === 'u') {
        this.at++;
        for (let digit = 0; digit < 4; digit++) {
          if (!/[0-9a-fA-F]/.test(this.text[this.at] ?? '')) this.fail();
          this.at++;
        }
      } else if ('"\\/bfnrt'.includes(this.text[this.at] ?? 'x')) this.at++;
      else this.fail();
    }
  }

  private digits(): void {
    const from = this.at;
    while (/[0-9]/.test(this.text[this.at] ?? '')) this.at++;
    if (this.at === from) this.fail();
  }

  private number(): void {
    if (this.text[this.at] === '-') this.at++;
    if (this.text[this.at] === '0') this.at++;
    else this.digits();
    if (this.text[this.at] === '.') {
      this.at++;
      this.digits();
    }
    if (this.text[this.at] === 'e' || this.text[this.at] === 'E') {
      this.at++;
      if (this.text[this.at] === '+' || this.text[this.at] === '-') this.at++;
      this.digits();
    }
  }
}
