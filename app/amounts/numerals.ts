import type { Token } from './tokens';

/** A number found among the tokens: its arithmetic, its value, and the token after it. */
export interface Numeral {
  readonly text: string;
  readonly value: number;
  readonly next: number;
  /** "2-3", "2 or 3": the middle was taken */
  readonly span: boolean;
}
type Tokens = readonly Token[];
type OfKind<Kind extends Token['is']> = Extract<Token, { is: Kind }>;

export function tokenAt<Kind extends Token['is']>(
  tokens: Tokens,
  index: number,
  kind: Kind,
): OfKind<Kind> | null {
  const token = tokens[index];
  return token?.is === kind ? (token as OfKind<Kind>) : null;
}

export function signAt(tokens: Tokens, index: number, ...signs: string[]): string | null {
  const token = tokenAt(tokens, index, 'operator');
  return token && signs.includes(token.sign) ? token.sign : null;
}

/** The first index from `index` on whose token is none of these kinds. */
export function skip(tokens: Tokens, index: number, ...kinds: Token['is'][]): number {
  let next = index;
  for (let token = tokens[next]; token && kinds.includes(token.is); token = tokens[next]) next++;
  return next;
}

const numeral = (text: string, value: number, next: number, span = false): Numeral => ({
  text,
  value,
  next,
  span,
});

/** digits with their fraction: 2, 2 1/2, 2-1/2, 1/2 */
function digitsAt(tokens: Tokens, index: number): Numeral | null {
  const first = tokenAt(tokens, index, 'digits');
  if (!first) return null;
  const whole = Number(first.digits);
  const dash = signAt(tokens, index + 1, '-') ? tokenAt(tokens, index + 1, 'operator') : null;
  const joined = dash?.spaced === false && tokenAt(tokens, index + 2, 'digits')?.spaced === false;
  const start = joined ? index + 2 : index + 1;
  const over = tokenAt(tokens, start, 'digits');
  const under = signAt(tokens, start + 1, '/') ? tokenAt(tokens, start + 2, 'digits') : null;
  if (over && under && Number.isInteger(whole) && Number(over.digits) < Number(under.digits))
    return numeral(
      `(${first.digits}+${over.digits}/${under.digits})`,
      whole + Number(over.digits) / Number(under.digits),
      start + 3,
    );
  const bottom = signAt(tokens, index + 1, '/') ? tokenAt(tokens, index + 2, 'digits') : null;
  if (!bottom) return numeral(first.digits, whole, index + 1);
  return numeral(`(${first.digits}/${bottom.digits})`, whole / Number(bottom.digits), index + 3);
}

function wordAt(tokens: Tokens, index: number): Numeral | null {
  const token = tokens[index];
  switch (token?.is) {
    case 'number': {
      const after = signAt(tokens, index + 1, '-') ? index + 2 : index + 1;
      const ones = token.tens ? tokenAt(tokens, after, 'number') : null;
      if (!ones || ones.tens || ones.value < 1 || ones.value > 9)
        return numeral(String(token.value), token.value, index + 1);
      return numeral(String(token.value + ones.value), token.value + ones.value, after + 1);
    }
    case 'whole':
      return numeral('1', 1, index + 1);
    case 'times':
      return numeral(String(token.value), token.value, index + 1);
    case 'fraction': {
      // half a dozen
      const multiple = tokenAt(tokens, index + 1, 'article') && tokenAt(tokens, index + 2, 'times');
      return numeral(`(1/${token.parts})`, 1 / token.parts, multiple ? index + 2 : index + 1);
    }
    case 'article': {
      const next = tokens[index + 1]?.is;
      if (next === 'fraction' || next === 'times') return wordAt(tokens, index + 1);
      return numeral('1', 1, index + 1);
    }
    default:
      return null;
  }
}

/** "and a half", "and three quarters" behind a number or behind its unit */
export function andFractionAt(
  tokens: Tokens,
  index: number,
): { readonly text: string; readonly value: number; readonly next: number } | null {
  if (!tokenAt(tokens, index, 'and')) return null;
  const count = tokenAt(tokens, index + 1, 'number');
  const next = count || tokenAt(tokens, index + 1, 'article') ? index + 2 : index + 1;
  const fraction = tokenAt(tokens, next, 'fraction');
  if (!fraction) return null;
  const over = count ? count.value : 1;
  return { text: `${over}/${fraction.parts}`, value: over / fraction.parts, next: next + 1 };
}

/** One number: "2", "2 1/2", "two and a half", "three quarters", "half a dozen". */
export function simpleNumeralAt(tokens: Tokens, index: number): Numeral | null {
  let found = digitsAt(tokens, index) ?? wordAt(tokens, index);
  while (found) {
    const token = tokens[found.next];
    if (token?.is === 'times' || token?.is === 'fraction') {
      const factor = token.is === 'times' ? token.value : 1 / token.parts;
      const written = token.is === 'times' ? String(token.value) : `(1/${token.parts})`;
      found = numeral(`(${found.text}*${written})`, found.value * factor, found.next + 1);
      continue;
    }
    const more = andFractionAt(tokens, found.next);
    if (!more) return found;
    found = numeral(`(${found.text}+${more.text})`, found.value + more.value, more.next);
  }
  return null;
}

/** A number, a span of two ("2-3", "2 or 3", "between 2 and 3") or a sum before a unit ("2 + 1/2"). */
export function numeralAt(tokens: Tokens, index: number): Numeral | null {
  const between = tokenAt(tokens, index, 'between') !== null;
  let found = simpleNumeralAt(tokens, between ? index + 1 : index);
  while (found) {
    const joining = tokens[found.next]?.is;
    const spoken = joining === 'or' || (between && joining === 'and');
    const sign = signAt(tokens, found.next, '+', '-');
    if (!spoken && !sign) return found;
    const other = simpleNumeralAt(tokens, found.next + 1);
    if (!other || (spoken && other.value <= found.value)) return found;
    if (spoken || (sign === '-' && other.value > found.value)) {
      const middle = (found.value + other.value) / 2;
      found = numeral(`((${found.text}+${other.text})/2)`, middle, other.next, true);
    } else {
      const value = found.value + (sign === '-' ? -other.value : other.value);
      found = numeral(`(${found.text}${sign ?? '+'}${other.text})`, value, other.next, found.span);
    }
  }
  return null;
}
