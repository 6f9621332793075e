import { failure, success, type Result } from '../core/result';

export type DegreesFailure =
  { readonly kind: 'no degrees' } | { readonly kind: 'beyond'; readonly limit: number };

const sides = { latitude: 'NS', longitude: 'EW' } as const;
const limits = { latitude: 90, longitude: 180 } as const;

const pattern =
  /^([NSEW])?\s*([-+\u2212])?\s*(\d{1,3}(?:[.,]\d{1,12})?)\s*\u00B0?\s*(?:(\d{1,2}(?:[.,]\d{1,6})?)\s*['\u2032\u2019]\s*(?:(\d{1,2}(?:[.,]\d{1,6})?)\s*["\u2033\u201D]\s*)?)?([NSEW])?$/i;

const numberOf = (text: string | undefined): number => Number((text ?? '0').replace(',', '.'));

/**
 * A place on the map as people write it: "52.5", "-1.3", "1,3 W", "51° 30' N". North and east are
 * above nought.
 *
 * @returns degrees. `no degrees`: anything else, or a side that is of the other direction; `beyond`
 */
export function readDegrees(
  text: string,
  which: 'latitude' | 'longitude',
): Result<number, DegreesFailure> {
  const found = pattern.exec(text.trim());
  if (!found) return failure({ kind: 'no degrees' });
  const [, ahead, sign, whole, minutes, seconds, behind] = found;
  if (ahead && behind) return failure({ kind: 'no degrees' });
  const side = (ahead ?? behind ?? '').toUpperCase();
  if (side !== '' && (sign || !sides[which].includes(side))) return failure({ kind: 'no degrees' });
  if (numberOf(minutes) >= 60 || numberOf(seconds) >= 60) return failure({ kind: 'no degrees' });
  const size = numberOf(whole) + numberOf(minutes) / 60 + numberOf(seconds) / 3600;
  if (size > limits[which]) return failure({ kind: 'beyond', limit: limits[which] });
  const isNegative = side === 'S' || side === 'W' || sign === '-' || sign === '\u2212';
  return success(isNegative && size > 0 ? -size : size);
}
