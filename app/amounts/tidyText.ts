import { failure, success, type Result } from '../core/result';
import { longestEntry, type Refusal, type UnitSystem } from './amount';

const vulgar: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

const plainer: readonly (readonly [RegExp, string])[] = [
  [/[‘’‛′ʼ]/g, "'"],
  [/[“”„″]|''/g, '"'],
  [/[‐‑‒–—−]/g, '-'],
  [/[×·✕∗]/g, '*'],
  [/[÷⁄]/g, '/'],
  [/²/g, '2'],
  [/³/g, '3'],
  [/[≈∼]/g, '~'],
  [/…/g, ' '],
  [/&/g, ' and '],
];

/** Letters of any script (names of containers and lawns) and the marks an amount may hold. */
const allowed = /^[\p{L}\p{M}\d\s.,;:+\-*/()^~'"°@?!]$/u;
const usWords =
  /\b(?:sq\.? ?(?:ft|feet|foot|yd|in)|sqft|cu\.? ?(?:ft|yd)|ft[23]?|feet|foot|lbs?|pounds?|oz|ounces?|gal(?:lon)?s?|quarts?|qt|bushels?|bu|yd[23]?|yards?|in(?:ch(?:es)?)?|acres?)\b/;

/**
 * Brings typed text to lower case, plain signs and a decimal point.
 *
 * A single comma between digits is a decimal comma, except that three digits after it may be
 * thousands: read as thousands beside US units or in a garden shown in US units, else
 * `ambiguous-number`. A comma before a space divides clauses and is left alone.
 *
 * Fails as `empty`, `too-long`, `strange-character`, `ambiguous-number`.
 */
export function tidyText(text: string, units: UnitSystem): Result<string, Refusal> {
  if (text.trim() === '') return failure({ kind: 'empty' });
  if (text.length > longestEntry) return failure({ kind: 'too-long', limit: longestEntry });
  let tidy = text.normalize('NFC').toLowerCase();
  tidy = tidy.replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞]/g, (sign) => ` ${vulgar[sign] ?? sign}`);
  tidy = tidy.replace(/(\d)[\u00a0\u2009\u202f](?=\d{3}(?!\d))/g, '$1');
  for (const [pattern, plain] of plainer) tidy = tidy.replace(pattern, plain);
  for (const character of tidy)
    if (!allowed.test(character)) return failure({ kind: 'strange-character', character });

  let doubtful: string | null = null;
  tidy = tidy.replace(/\d+(?:,\d+)+(?:\.\d+)?/g, (digits) => {
    const grouped = /^[1-9]\d{0,2}(?:,\d{3})+(?:\.\d+)?$/.test(digits);
    const commas = digits.split(',').length - 1;
    if (grouped && (commas > 1 || digits.includes('.') || units === 'us' || usWords.test(tidy)))
      return digits.replaceAll(',', '');
    if (commas > 1 || digits.includes('.') || grouped) doubtful ??= digits;
    return digits.replace(',', '.');
  });
  if (doubtful !== null) return failure({ kind: 'ambiguous-number', text: doubtful });
  return success(
    tidy
      .replace(/(\p{L})\./gu, '$1 ')
      .replace(/\s+/g, ' ')
      .trim(),
  );
}
