import { failure, success, type Result } from '../core/result';
import type { KnownLawn, ReadingContext, Refusal } from './amount';
import { plainNumber, type Value } from './arithmetic';
import {
  andFractionAt,
  numeralAt,
  signAt,
  simpleNumeralAt,
  skip,
  tokenAt,
  type Numeral,
} from './numerals';
import type { Token } from './tokens';
import type { UnitWord } from './unitWords';

/** A number with the unit it was said in; one factor or term of a part. */
export interface Measured {
  /** arithmetic on digits only */
  readonly number: string;
  readonly unit: UnitWord | null;
  /** the symbol that stands for the unit, 1 for none */
  readonly symbol: string;
}

/** One stretch of an entry that has a value of its own: "220 m2", "2 cm off", "2 bags + 1 bucket". */
export interface Part {
  readonly pieces: (Measured | string)[];
  readonly symbols: Value[];
  off: boolean;
  each: boolean;
}

export interface Phrases {
  readonly parts: readonly Part[];
  readonly lawn: KnownLawn | null;
  readonly placeId: string | null;
  /** "2 to 3 bags": the middle is taken, and the entry counts as "about" */
  readonly isRange: boolean;
}

const dimensions = { volume: [3, 0], mass: [0, 1], length: [1, 0], area: [2, 0] } as const;

/** One unit as a value in m and kg. */
export function valueOfUnit(unit: UnitWord): Value {
  const [metres, kilograms] = dimensions[unit.dimension];
  const amount = unit.dimension === 'volume' ? unit.size / 1000 : unit.size;
  return { amount, metres, kilograms, container: null };
}

class Reader {
  readonly parts: Part[] = [];
  lawn: KnownLawn | null = null;
  placeId: string | null = null;
  isRange = false;
  private current: Part | null = null;
  private pendingOff = false;
  private readonly tokens: readonly Token[];
  private readonly context: ReadingContext;

  constructor(tokens: readonly Token[], context: ReadingContext) {
    this.tokens = tokens;
    this.context = context;
  }

  private isThing(index: number): boolean {
    const kind = this.tokens[skip(this.tokens, index, 'of', 'filler', 'article')]?.is;
    return kind === 'unit' || kind === 'container' || kind === 'lawn';
  }

  private part(): Part {
    if (this.current) return this.current;
    this.current = { pieces: [], symbols: [], off: this.pendingOff, each: false };
    this.pendingOff = false;
    this.parts.push(this.current);
    return this.current;
  }

  private endsWithValue(): boolean {
    const last = this.current?.pieces.at(-1);
    return last !== undefined && (typeof last !== 'string' || last === ')');
  }

  private push(number: string, value: Value | null, unit: UnitWord | null): void {
    const part = this.part();
    if (!value) {
      part.pieces.push({ number, unit: null, symbol: '1' });
      return;
    }
    part.symbols.push(value);
    part.pieces.push({ number, unit, symbol: `u${part.symbols.length - 1}` });
  }

  /** the thing counted: a unit with its power, a container, a share of a lawn */
  private thing(index: number): { value: Value; unit: UnitWord | null; next: number } | null {
    const token = this.tokens[index];
    if (token?.is === 'container')
      return {
        value: { ...plainNumber(1), container: token.container },
        unit: null,
        next: index + 1,
      };
    if (token?.is === 'lawn') {
      const lawn = this.chooseLawn(token.lawn);
      if (!lawn) return null;
      return { value: { ...plainNumber(lawn.areaM2), metres: 2 }, unit: null, next: index + 1 };
    }
    if (token?.is !== 'unit') return null;
    const power = signAt(this.tokens, index + 1, '^')
      ? Number(tokenAt(this.tokens, index + 2, 'digits')?.digits)
      : 1;
    const value = valueOfUnit(token.unit);
    if (power !== 2 && power !== 3) return { value, unit: token.unit, next: index + 1 };
    return {
      value: {
        ...value,
        amount: value.amount ** power,
        metres: value.metres * power,
        kilograms: value.kilograms * power,
      },
      unit: null,
      next: index + 3,
    };
  }

  private chooseLawn(named: KnownLawn | null): KnownLawn | null {
    const chosen =
      named ?? this.context.lawns?.find((lawn) => lawn.id === this.context.lawnId) ?? null;
    if (chosen) this.lawn = chosen;
    return chosen;
  }

  private quantity(index: number, numeral: Numeral | null): Result<number, Refusal> {
    if (this.endsWithValue()) this.current = null;
    if (numeral?.span) this.isRange = true;
    const start = numeral ? skip(this.tokens, numeral.next, 'of', 'filler', 'article') : index;
    const thing = this.thing(start);
    if (!thing) {
      if (!numeral) return failure({ kind: 'not-an-amount' });
      if (this.tokens[numeral.next]?.is === 'digits') return failure({ kind: 'two-amounts' });
      this.push(numeral.text, null, null);
      return success(numeral.next);
    }
    // "bag" is one bag; "litre" alone is no amount
    if (!numeral && !thing.value.container) return failure({ kind: 'not-an-amount' });
    let text = numeral?.text ?? '1';
    let next = thing.next;
    const half = andFractionAt(this.tokens, next);
    if (half && !this.isThing(half.next)) {
      text = `(${text}+${half.text})`;
      next = half.next;
    }
    this.push(text, thing.value, thing.unit);
    return success(this.compound(thing.unit, next));
  }

  /** 5 ft 3 in, 1 lb 4 oz: a smaller unit of the same kind right behind is added */
  private compound(unit: UnitWord | null, index: number): number {
    const numeral = unit ? simpleNumeralAt(this.tokens, index) : null;
    const smaller = numeral ? tokenAt(this.tokens, numeral.next, 'unit')?.unit : undefined;
    if (!unit || !numeral || smaller?.dimension !== unit.dimension || smaller.size >= unit.size)
      return index;
    const part = this.part();
    const large = part.pieces.pop();
    part.pieces.push('(');
    if (large !== undefined) part.pieces.push(large);
    part.pieces.push('+');
    this.push(numeral.text, valueOfUnit(smaller), smaller);
    part.pieces.push(')');
    return numeral.next + 1;
  }

  private place(index: number): Result<number, Refusal> {
    const next = skip(this.tokens, index + 1, 'filler');
    const token = this.tokens[next];
    if (token?.is === 'place') {
      this.placeId = token.placeId;
      return success(next + 1);
    }
    if (token?.is === 'lawn') return success(next);
    if (token?.is === 'unknown' && this.context.places)
      return failure({ kind: 'unknown-place', word: token.word });
    return success(index + 1);
  }

  step(index: number): Result<number, Refusal> {
    const token = this.tokens[index];
    if (!token) return success(index + 1);
    const numeral = numeralAt(this.tokens, index);
    if (numeral) return this.quantity(index, numeral);
    switch (token.is) {
      case 'unit':
      case 'container':
        if (this.current?.pieces.at(-1) === ')') {
          this.part().pieces.push('*');
          this.push('1', this.thing(index)?.value ?? null, token.is === 'unit' ? token.unit : null);
          return success(index + 1);
        }
        return this.quantity(index, null);
      case 'lawn':
        this.chooseLawn(token.lawn);
        return success(index + 1);
      case 'place':
        this.placeId = token.placeId;
        return success(index + 1);
      case 'operator':
        this.part().pieces.push(token.sign);
        return success(index + 1);
      case 'and':
        if (this.endsWithValue()) this.part().pieces.push('+');
        return success(index + 1);
      case 'of':
      case 'at':
        if (this.endsWithValue() && numeralAt(this.tokens, skip(this.tokens, index + 1, 'filler')))
          this.part().pieces.push('*');
        return success(index + 1);
      case 'comma':
        this.current = null;
        return success(index + 1);
      case 'off':
        if (this.endsWithValue()) {
          this.part().off = true;
          this.current = null;
        } else this.pendingOff = true;
        return success(index + 1);
      case 'each':
        if (this.current) this.current.each = true;
        return success(index + 1);
      case 'on':
        return this.place(index);
      case 'filler':
        return success(index + 1);
      case 'vague':
        return failure({ kind: 'vague', word: token.word });
      case 'unknown':
        return failure({ kind: 'unknown-unit', word: token.word });
      default:
        return failure({ kind: 'not-an-amount' });
    }
  }
}

/**
 * Turns tokens into parts, each an arithmetic expression on known symbols.
 * Fails as `unknown-unit`, `unknown-place`, `vague`, `two-amounts`, `not-an-amount`.
 */
export function phrasesOf(
  tokens: readonly Token[],
  context: ReadingContext,
): Result<Phrases, Refusal> {
  const reader = new Reader(tokens, context);
  for (let index = 0; index < tokens.length;) {
    const next = reader.step(index);
    if (!next.ok) return next;
    index = next.value;
  }
  const { parts, lawn, placeId, isRange } = reader;
  return success({ parts, lawn, placeId, isRange });
}

/** The part as text for the arithmetic, e.g. `((2+1/2)*u0)+(1*u1)`. */
export const expressionOf = (part: Part): string =>
  part.pieces
    .map((piece) => (typeof piece === 'string' ? piece : `(${piece.number}*${piece.symbol})`))
    .join('');
