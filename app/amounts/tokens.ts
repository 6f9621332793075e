import { failure, success, type Result } from '../core/result';
import type { KnownContainer, KnownLawn, Refusal } from './amount';
import { isMark, nameAt, type OwnName } from './ownNames';
import {
  fractions,
  multiples,
  numberWords,
  operators,
  particleOf,
  type Particle,
} from './readerWords';
import { longestUnitPhrase, unitFor, type UnitWord } from './unitWords';

/** One piece of an entry with its meaning settled. */
export type Token =
  | { readonly is: 'digits'; readonly digits: string; readonly spaced: boolean }
  | { readonly is: 'number'; readonly value: number; readonly tens: boolean }
  | { readonly is: 'times'; readonly value: number }
  | { readonly is: 'fraction'; readonly parts: number }
  | { readonly is: 'operator'; readonly sign: string; readonly spaced: boolean }
  | { readonly is: 'unit'; readonly unit: UnitWord }
  | { readonly is: 'container'; readonly container: KnownContainer }
  | { readonly is: 'lawn'; readonly lawn: KnownLawn | null }
  | { readonly is: 'place'; readonly placeId: string }
  | { readonly is: Particle; readonly word: string }
  | { readonly is: 'unknown'; readonly word: string };

interface Piece {
  readonly text: string;
  readonly spaced: boolean;
}

const piecePattern = /(\s*)(\d+(?:\.\d+)?|\.\d+|[\ue000-\uf8ff]|\p{L}[\p{L}\p{M}']*|[^\s])/gu;

function cut(text: string): Piece[] {
  const pieces: Piece[] = [];
  let skip = 0;
  for (const match of text.matchAll(piecePattern)) {
    const piece = match[2] ?? '';
    if (match.index + (match[1]?.length ?? 0) < skip) continue;
    const end = match.index + match[0].length;
    const power = text[end];
    // m2, ft3: the digit belongs to the unit, unless it starts a longer number
    const joined =
      (power === '2' || power === '3') &&
      !/[\d.\p{L}]/u.test(text[end + 1] ?? '') &&
      unitFor(piece + power) !== undefined;
    pieces.push({ text: joined ? piece + power : piece, spaced: match[1] !== '' });
    if (joined) skip = end + 1;
  }
  return pieces;
}

function ownToken(name: OwnName): Token {
  switch (name.kind) {
    case 'container':
      return { is: 'container', container: name.container };
    case 'lawn':
      return { is: 'lawn', lawn: name.lawn };
    case 'place':
      return { is: 'place', placeId: name.placeId };
  }
}

function wordToken(word: string): Token {
  const number = numberWords.get(word);
  if (number) return { is: 'number', ...number };
  const multiple = multiples.get(word);
  if (multiple !== undefined) return { is: 'times', value: multiple };
  const parts = fractions.get(word);
  if (parts !== undefined) return { is: 'fraction', parts };
  const sign = operators[word];
  if (sign !== undefined) return { is: 'operator', sign, spaced: true };
  if (word === 'lawn') return { is: 'lawn', lawn: null };
  const particle = particleOf.get(word);
  if (particle) return { is: particle, word };
  return { is: 'unknown', word };
}

/**
 * Splits a tidied, marked entry into tokens. Fails as `not-an-amount` on a sign that has no
 * meaning in an amount; words without meaning come back as `unknown`, for the caller to name.
 */
export function tokensOf(text: string, names: readonly OwnName[]): Result<Token[], Refusal> {
  const pieces = cut(text.replace(/\bin (?:all|total)\b/g, ' '));
  const tokens: Token[] = [];
  for (let index = 0; index < pieces.length;) {
    const piece = pieces[index];
    if (!piece) break;
    const first = piece.text;
    index++;
    if (/^[\d.]/.test(first) && first !== '.')
      tokens.push({ is: 'digits', digits: first, spaced: piece.spaced });
    else if (isMark(first)) {
      const name = nameAt(first, names);
      if (!name) return failure({ kind: 'not-an-amount' });
      tokens.push(ownToken(name));
    } else if (/^[+\-*/()^]$/.test(first))
      tokens.push({ is: 'operator', sign: first, spaced: piece.spaced });
    else if (/^[\p{L}"']/u.test(first)) {
      let used = 0;
      for (let length = longestUnitPhrase; length > 0 && used === 0; length--) {
        const phrase = pieces.slice(index - 1, index - 1 + length);
        const unit = unitFor(phrase.map((part) => part.text).join(' '));
        if (phrase.length < length || !unit) continue;
        tokens.push({ is: 'unit', unit });
        used = length;
      }
      if (used > 0) index += used - 1;
      else tokens.push(wordToken(first));
    } else if (particleOf.has(first)) {
      tokens.push({ is: particleOf.get(first) as Particle, word: first });
    } else if (first !== '.') return failure({ kind: 'not-an-amount' });
  }
  return success(tokens);
}
