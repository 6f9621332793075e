import { failure, success, type Result } from '../core/result';
import { elementOfOxide } from '../core/units';
import { leadingNumber } from './plainNumber';

/** What a laboratory measured of a material. */
export type Content = 'nitrogen' | 'ratio' | 'water' | 'phosphorus' | 'potassium';

export interface ContentReading {
  /** nitrogen, phosphorus, potassium: % of dry matter, as the element; ratio: kg carbon per kg nitrogen; water: % of fresh mass */
  readonly value: number;
}

/** Why an entry is no content. `suggestion` is one that can be read. */
export type ContentFailure = { readonly suggestion: string } & (
  | { readonly kind: 'no number' }
  | { readonly kind: 'unknown words'; readonly words: string }
  /** what a laboratory prints of the stuff as it came can only be turned with its water known */
  | { readonly kind: 'water unknown' }
  | { readonly kind: 'out of range'; readonly low: string; readonly high: string }
);

const bounds: Readonly<Record<Content, readonly [number, number]>> = {
  nitrogen: [0.01, 20],
  ratio: [2, 1000],
  water: [0, 97],
  phosphorus: [0.001, 20],
  potassium: [0.001, 20],
};
const usual: Readonly<Record<Content, string>> = {
  nitrogen: '2.4 %',
  ratio: '20 to 1',
  water: '60 %',
  phosphorus: '0.35 %',
  potassium: '0.9 %',
};

/** In per cent. A US ton is 2,000 lb, a tonne 1,000 kg (definitions). */
const contentUnits: readonly (readonly [RegExp, number])[] = [
  [/^(?:%|percent|percents?n|per cent)?$/, 1],
  [/^(?:g\/kg|gperkg|mg\/g|kg\/t|kgpert|kgpertonne|kg\/tonne)$/, 0.1],
  [/^(?:mg\/kg|ppm)$/, 1e-4],
  [/^(?:lbs?|pounds?)(?:\/|per|a)ton$/, 0.05],
];
const asItCame = /\b(?:fresh|wet|as (?:is|received|it (?:is|came))|of fresh(?: weight)?)\b/;
const oxides: Readonly<Record<keyof typeof elementOfOxide, RegExp>> = {
  phosphorus: /\b(?:p2o5|phosphate)\b/,
  potassium: /\b(?:k2o|potash)\b/,
};
const elements: Readonly<Record<keyof typeof elementOfOxide, RegExp>> = {
  phosphorus: /\b(?:p|phosphorus)\b/,
  potassium: /\b(?:k|potassium)\b/,
};
const whenDry = /\b(?:of )?(?:the )?dry(?: (?:weight|matter|basis))?\b|\bdm\b/;

/**
 * A laboratory's number for a material: nitrogen as "2.4 %", "24 g/kg", "48 lb/ton" (of dry matter, or
 * "0.6 % fresh" for the stuff as it came), phosphorus and potassium the same and as their oxides
 * ("0.8 % P2O5", "12 lb/ton potash"), carbon to nitrogen as "20", "20:1", "20 to 1", "1:20", water as
 * "60 %" or "40 % dry matter". A bare number is in per cent.
 *
 * @param waterPercent of fresh mass, to turn what is given of the stuff as it came; null: unknown
 */
export function readContent(
  text: string,
  content: Content,
  waterPercent: number | null,
): Result<ContentReading, ContentFailure> {
  const suggestion = usual[content];
  const typed = leadingNumber(text);
  if (!typed) return failure({ kind: 'no number', suggestion });
  const { value: number, rest: words } = typed;
  const value = valueOf(number, words, content, waterPercent);
  if (value === null) return failure({ kind: 'unknown words', words, suggestion });
  if (value === 'water unknown') return failure({ kind: 'water unknown', suggestion });
  const [low, high] = bounds[content];
  if (!(value >= low && value <= high))
    return failure({
      kind: 'out of range',
      low: String(low),
      high: `${String(high)}${content === 'ratio' ? ' to 1' : ' %'}`,
      suggestion,
    });
  return success({ value });
}

function valueOf(
  number: number,
  words: string,
  content: Content,
  waterPercent: number | null,
): number | 'water unknown' | null {
  if (content === 'ratio') {
    const other = /^(?::|to)\s*(\d{1,4}(?:[.,]\d{1,3})?)$/.exec(words)?.[1]?.replace(',', '.');
    // "1:20" names the smaller first; nothing that grows holds less carbon than nitrogen
    if (number === 1 && other !== undefined && Number(other) > 1) return Number(other);
    return words === '' || Number(other) === 1 || /^\/\s*1$/.test(words) ? number : null;
  }
  const isWet = asItCame.test(words);
  const isDry = !isWet && whenDry.test(words);
  const isMineral = content === 'phosphorus' || content === 'potassium';
  const isOxide = isMineral && oxides[content].test(words);
  const named = isMineral
    ? words.replace(isOxide ? oxides[content] : elements[content], '')
    : words;
  const unit = named.replace(asItCame, '').replace(whenDry, '').replace(/\s+/g, '');
  if (content === 'water') {
    if (!/^(?:%|percent)?(?:water|moisture)?$/.test(unit)) return null;
    return isDry ? 100 - number : number;
  }
  const inPercent = contentUnits.find(([one]) => one.test(unit))?.[1];
  if (inPercent === undefined) return null;
  const size = inPercent * (isOxide ? elementOfOxide[content] : 1);
  if (!isWet) return number * size;
  return waterPercent === null ? 'water unknown' : (number * size) / (1 - waterPercent / 100);
}
