import type { DayNumber } from '../core/days';
import type { Certainty, Wetness } from '../core/lawn/quantity';
import { failure, success, type Result } from '../core/result';
import type { Condition } from '../core/season/input';
import type { Dimension, KnownLawn, ReadingContext, Refusal } from './amount';
import { valueOf, type Value } from './arithmetic';
import { tidyNumber } from './limits';
import { markOwnNames } from './ownNames';
import { expressionOf, phrasesOf, type Measured, type Part } from './phrases';
import { takeQualities } from './qualityWords';
import { findDay } from './readDay';
import { tidyText } from './tidyText';
import { tokensOf } from './tokens';
import type { UnitWord } from './unitWords';

/** One value of an entry with how it was said. */
export interface Said {
  readonly value: Value;
  readonly off: boolean;
  readonly each: boolean;
  /** the first unit named, null for containers and plain numbers */
  readonly unit: UnitWord | null;
  /** the two factors of a product such as "4 ft x 8 ft", in m */
  readonly sides: readonly [number, number] | null;
}

export interface Understood {
  readonly said: readonly Said[];
  readonly certainty: Certainty;
  readonly wetness: Wetness | null;
  readonly condition: Condition | null;
  readonly lawn: KnownLawn | null;
  readonly placeId: string | null;
  readonly day: DayNumber | null;
}

export function dimensionOf(value: Value): Dimension {
  if (value.container) return 'containers';
  if (value.kilograms === 1 && value.metres === 0) return 'mass';
  if (value.kilograms !== 0) return 'other';
  return (['number', 'length', 'area', 'volume'] as const)[value.metres] ?? 'other';
}

const isMeasured = (piece: Measured | string | undefined): piece is Measured =>
  typeof piece === 'object';

/** "25 x 20 ft": the unit of the second side is meant for the first as well. */
function shareUnit(part: Part): Part {
  const [first, sign, second] = part.pieces;
  if (part.pieces.length !== 3 || sign !== '*' || !isMeasured(first) || !isMeasured(second))
    return part;
  if (first.symbol !== '1' || second.unit?.dimension !== 'length') return part;
  const shared = { ...first, symbol: second.symbol, unit: second.unit };
  return { ...part, pieces: [shared, sign, second] };
}

const asPart = (pieces: (Measured | string)[], from: Part): Part => ({ ...from, pieces });

/** The pieces left and right of the only sign of multiplication, or null. */
function factors(part: Part): readonly [Part, Part] | null {
  const { pieces } = part;
  if (pieces.filter((piece) => piece === '*').length !== 1) return null;
  const at = pieces.indexOf('*');
  return [asPart(pieces.slice(0, at), part), asPart(pieces.slice(at + 1), part)];
}

function sidesOf(part: Part): [Value, Value] | null {
  const both = factors(part);
  if (!both) return null;
  const [one, other] = both.map((half) => valueOf(expressionOf(half), half.symbols));
  return one?.ok && other?.ok ? [one.value, other.value] : null;
}

function say(part: Part): Result<Said[], Refusal> {
  const value = valueOf(expressionOf(part), part.symbols);
  if (!value.ok) return value;
  const unit = part.pieces.filter(isMeasured).find((piece) => piece.unit)?.unit ?? null;
  const sides = sidesOf(part);
  const [one, other] = sides ?? [];
  const lengths = one && other && dimensionOf(one) === 'length' && dimensionOf(other) === 'length';
  return success([
    {
      value: value.value,
      off: part.off,
      each: part.each,
      unit,
      sides: lengths ? [tidyNumber(one.amount), tidyNumber(other.amount)] : null,
    },
  ]);
}

/** "220 m2 x 2 cm" in a mowing is an area and what came off it, not a heap of 4400 L. */
function sayMown(part: Part): Result<Said[], Refusal> {
  const both = factors(part);
  const kinds = sidesOf(part)?.map(dimensionOf);
  if (!both || !kinds?.includes('area') || !kinds.includes('length')) return say(part);
  const said = both.map(say);
  return success(said.flatMap((half) => (half.ok ? half.value : [])));
}

export interface Ways {
  /** a product of two lengths may leave the first unit out */
  readonly sharedUnits: boolean;
  /** area x height is a mowing */
  readonly mown: boolean;
}

/**
 * Everything that an entry says, before a field judges it. Fails as `Refusal` of the steps it
 * calls; never throws, whatever is typed.
 */
export function understand(
  text: string,
  context: ReadingContext,
  ways: Ways,
): Result<Understood, Refusal> {
  const tidy = tidyText(text, context.units);
  if (!tidy.ok) return tidy;
  const marked = markOwnNames(tidy.value, context);
  const qualities = takeQualities(marked.text);
  let rest = qualities.rest;
  let day: DayNumber | null = null;
  if (context.today !== undefined) {
    const found = findDay(rest, context.today, 'lately');
    if (!found.ok) return found;
    if (found.value) {
      ({ day, rest } = found.value);
      if (day > context.today) return failure({ kind: 'future-day', text: found.value.said });
    }
  }
  const tokens = tokensOf(rest, marked.names);
  if (!tokens.ok) return tokens;
  const phrases = phrasesOf(tokens.value, context);
  if (!phrases.ok) return phrases;

  const said: Said[] = [];
  for (const part of phrases.value.parts) {
    const shared = ways.sharedUnits ? shareUnit(part) : part;
    const value = ways.mown ? sayMown(shared) : say(shared);
    if (!value.ok) return value;
    said.push(...value.value);
  }
  const isAbout = phrases.value.isRange && qualities.certainty === 'plain';
  return success({
    said,
    certainty: isAbout ? 'about' : qualities.certainty,
    wetness: qualities.wetness,
    condition: qualities.condition,
    lawn: phrases.value.lawn,
    placeId: phrases.value.placeId,
    day,
  });
}
