import type { NitrateForm, NitrateUnit } from '../core/soil/nitrateTest';
import { failure, success, type Result } from '../core/result';

/** A laboratory's nitrate as it was typed; `nitrateFromTest` brings it to mg/kg with depth and density. */
export interface NitrateReading {
  /** the words typed */
  readonly text: string;
  readonly value: number;
  readonly unit: NitrateUnit;
  readonly form: NitrateForm;
}

/** Why an entry is no nitrate. `suggestion` is one that can be read. */
export type NitrateFailure = { readonly suggestion: string } & (
  | { readonly kind: 'empty' }
  | { readonly kind: 'too long'; readonly limit: number }
  | { readonly kind: 'no number' }
  | { readonly kind: 'no unit'; readonly number: number }
  | { readonly kind: 'unknown unit'; readonly word: string }
  | { readonly kind: 'negative' }
  | { readonly kind: 'too large'; readonly limit: string }
);

const longest = 60;
/** Past any soil but a heap of fertiliser; a guard against slips of the finger. */
const most: Readonly<Record<NitrateUnit, number>> = {
  'mg/kg': 2000,
  'lb/acre': 10_000,
  'kg/ha': 10_000,
  'g/m2': 1000,
};

const units: readonly (readonly [RegExp, NitrateUnit])[] = [
  [/^(?:ppm|p\.p\.m\.|mg\/kg|mgkg-?1|mgperkg|milligrams?per(?:kg|kilo(?:gram)?))$/, 'mg/kg'],
  [/^(?:lbs?|pounds?|#)(?:\/|per|an?)(?:ac|acres?|a)$/, 'lb/acre'],
  [/^(?:kg|kilos?|kilograms?)(?:\/|per|an?)(?:ha|hectares?)$/, 'kg/ha'],
  [/^(?:g|gms?|grams?)(?:\/|per|an?)(?:m2|m\^2|sqm|squaremet(?:re|er)s?)$/, 'g/m2'],
];

/** Nitrogen in nitrate first: it holds the word for nitrate. */
const forms: readonly (readonly [RegExp, NitrateForm])[] = [
  [/(?:no3|nitrate)\s*[-\u2013 ]?\s*(?:as\s+)?n(?:itrogen)?(?![a-z0-9])/i, 'nitrogen'],
  [/no3-?|nitrates?/i, 'nitrate'],
];

/**
 * Reads a soil test's nitrate: "20 ppm", "35 lb/ac", "78 kg/ha", "8 g/m2", "90 mg/kg NO3".
 * Without the word it is nitrate-nitrogen, as most laboratories print it; "NO3" or "nitrate" means
 * the whole nitrate, "NO3-N" the nitrogen in it.
 *
 * @param bareUnit the unit of a number alone, where the label of the field says it; null: it is
 *   asked for
 */
export function readNitrate(
  text: string,
  bareUnit: NitrateUnit | null = null,
): Result<NitrateReading, NitrateFailure> {
  const typed = text.trim();
  const usual = '20 ppm';
  if (typed === '') return failure({ kind: 'empty', suggestion: usual });
  if (typed.length > longest) {
    return failure({ kind: 'too long', limit: longest, suggestion: usual });
  }
  const [pattern, form] = forms.find(([one]) => one.test(typed)) ?? [null, 'nitrogen' as const];
  const plain = (pattern ? typed.replace(pattern, ' ') : typed)
    .replace(/\u00B2/g, '2')
    .replace(/\bas n\b|-n\b|\bn\b/gi, ' ')
    .toLowerCase();
  const match = /^\s*([-+\u2212]?\d{1,6}(?:[.,]\d{1,6})?)\s*(.*)$/.exec(plain);
  if (!match) return failure({ kind: 'no number', suggestion: usual });
  const value = Number((match[1] ?? '').replace(',', '.').replace('\u2212', '-'));
  const word = (match[2] ?? '').trim();
  const unit =
    word === '' ? bareUnit : units.find(([one]) => one.test(word.replace(/\s+/g, '')))?.[1];
  const suggestion = `${String(Math.abs(value))} ppm`;
  if (unit === null) return failure({ kind: 'no unit', number: value, suggestion });
  if (unit === undefined) return failure({ kind: 'unknown unit', word, suggestion });
  if (value < 0) return failure({ kind: 'negative', suggestion });
  if (value > most[unit]) {
    const limit = `${String(most[unit])} ${unit}`;
    return failure({ kind: 'too large', limit, suggestion: usual });
  }
  return success({ text: typed, value, unit, form });
}
