import {
  kilogramsPerOunce,
  kilogramsPerPound,
  kilogramsPerShortTon,
  kilogramsPerStone,
  litresPerBushel,
  litresPerCubicFoot,
  litresPerCubicYard,
  litresPerGallon,
  litresPerImperialGallon,
  litresPerPeck,
  litresPerPint,
  litresPerQuart,
  millimetresPerFoot,
  millimetresPerInch,
  millimetresPerYard,
  squareMetresPerAcre,
  squareMetresPerSquareFoot,
  squareMetresPerSquareInch,
  squareMetresPerSquareYard,
} from '../core/conversions';
import type { ShownUnit } from '../core/shownUnit';

/** A unit that can be typed. Sizes are in kg, L, m2 or m, so that m2 x m is a thousand L. */
export interface UnitWord {
  readonly dimension: 'volume' | 'mass' | 'length' | 'area';
  readonly size: number;
  readonly us: boolean;
  readonly symbol: string;
  readonly one: string;
  readonly many: string;
  /** every way it is typed, in lower case; several words are joined by one space */
  readonly words: readonly string[];
}

const unit = (
  dimension: UnitWord['dimension'],
  size: number,
  symbol: string,
  one: string,
  many: string,
  words: string,
  us = false,
): UnitWord => ({ dimension, size, us, symbol, one, many, words: words.split('|') });

/** The closed list: nothing else is a unit here, whatever the parser behind it knows. */
export const unitWords: readonly UnitWord[] = [
  unit('volume', 1, 'L', 'litre', 'litres', 'l|litre|litres|liter|liters|ltr|ltrs'),
  unit('volume', 0.001, 'ml', 'millilitre', 'millilitres', 'ml|millilitre|millilitres'),
  unit('volume', 0.01, 'cl', 'centilitre', 'centilitres', 'cl|centilitre|centilitres'),
  unit('volume', 0.1, 'dl', 'decilitre', 'decilitres', 'dl|decilitre|decilitres'),
  unit('volume', 100, 'hl', 'hectolitre', 'hectolitres', 'hl|hectolitre|hectolitres'),
  unit(
    'volume',
    1000,
    'm3',
    'cubic metre',
    'cubic metres',
    'm3|cu m|cubic metre|cubic metres|cubic meter|cubic meters',
  ),
  unit(
    'volume',
    litresPerImperialGallon,
    'imp gal',
    'imperial gallon',
    'imperial gallons',
    'imp gal|imp gallon|imp gallons|imperial gallon|imperial gallons|uk gallon|uk gallons',
  ),
  unit(
    'volume',
    litresPerGallon,
    'gal',
    'gallon',
    'gallons',
    'gal|gals|gallon|gallons|us gal|us gallon|us gallons',
    true,
  ),
  unit('volume', litresPerQuart, 'qt', 'quart', 'quarts', 'qt|qts|quart|quarts', true),
  unit('volume', litresPerPint, 'pt', 'pint', 'pints', 'pt|pts|pint|pints', true),
  unit('volume', litresPerBushel, 'bushel', 'bushel', 'bushels', 'bu|bushel|bushels', true),
  unit('volume', litresPerPeck, 'peck', 'peck', 'pecks', 'peck|pecks', true),
  unit(
    'volume',
    litresPerCubicFoot,
    'cu ft',
    'cubic foot',
    'cubic feet',
    'cu ft|cuft|cf|ft3|cubic foot|cubic feet|cubic ft|cu feet|cu foot',
    true,
  ),
  unit(
    'volume',
    litresPerCubicYard,
    'cu yd',
    'cubic yard',
    'cubic yards',
    'cu yd|cu yds|cuyd|cy|yd3|yds3|cubic yard|cubic yards|cubic yd|cu yard|cu yards',
    true,
  ),
  unit('mass', 1, 'kg', 'kilogram', 'kilograms', 'kg|kgs|kilo|kilos|kilogram|kilograms'),
  unit('mass', 0.001, 'g', 'gram', 'grams', 'g|gr|gram|grams|gramme|grammes'),
  unit('mass', 1000, 't', 'tonne', 'tonnes', 't|tonne|tonnes|metric ton|metric tons'),
  unit('mass', kilogramsPerPound, 'lb', 'pound', 'pounds', 'lb|lbs|pound|pounds', true),
  unit('mass', kilogramsPerOunce, 'oz', 'ounce', 'ounces', 'oz|ounce|ounces', true),
  unit('mass', kilogramsPerStone, 'stone', 'stone', 'stone', 'st|stone|stones'),
  unit(
    'mass',
    kilogramsPerShortTon,
    'short ton',
    'short ton',
    'short tons',
    'short ton|short tons|us ton|us tons',
    true,
  ),
  unit(
    'length',
    0.001,
    'mm',
    'millimetre',
    'millimetres',
    'mm|millimetre|millimetres|millimeter|millimeters',
  ),
  unit(
    'length',
    0.01,
    'cm',
    'centimetre',
    'centimetres',
    'cm|cms|centimetre|centimetres|centimeter|centimeters',
  ),
  unit('length', 1, 'm', 'metre', 'metres', 'm|metre|metres|meter|meters'),
  unit('length', millimetresPerInch / 1000, 'in', 'inch', 'inches', 'in|ins|inch|inches|"', true),
  unit('length', millimetresPerFoot / 1000, 'ft', 'foot', 'feet', "ft|foot|feet|'", true),
  unit('length', millimetresPerYard / 1000, 'yd', 'yard', 'yards', 'yd|yds|yard|yards', true),
  unit(
    'area',
    1,
    'm2',
    'square metre',
    'square metres',
    'm2|sqm|sq m|square metre|square metres|square meter|square meters',
  ),
  unit('area', 0.0001, 'cm2', 'square centimetre', 'square centimetres', 'cm2|sq cm'),
  unit('area', 10_000, 'ha', 'hectare', 'hectares', 'ha|hectare|hectares'),
  unit(
    'area',
    squareMetresPerSquareInch,
    'sq in',
    'square inch',
    'square inches',
    'in2|sq in|square inch|square inches',
    true,
  ),
  unit(
    'area',
    squareMetresPerSquareFoot,
    'sq ft',
    'square foot',
    'square feet',
    'ft2|sqft|sf|sq ft|sq feet|sq foot|square foot|square feet|square ft',
    true,
  ),
  unit(
    'area',
    squareMetresPerSquareYard,
    'sq yd',
    'square yard',
    'square yards',
    'yd2|sq yd|sq yds|sq yard|sq yards|square yard|square yards',
    true,
  ),
  unit('area', squareMetresPerAcre, 'acre', 'acre', 'acres', 'acre|acres|ac', true),
];

const byWord = new Map<string, UnitWord>();
for (const entry of unitWords) for (const word of entry.words) byWord.set(word, entry);

/** The unit for words in lower case, or undefined. */
export const unitFor = (words: string): UnitWord | undefined => byWord.get(words);

/** Most words in one unit ("us cu yd" has none longer). */
export const longestUnitPhrase = Math.max(
  ...unitWords.flatMap((entry) => entry.words.map((word) => word.split(' ').length)),
);

/** As the screen would show it. Lengths that a ruler or rain gauge gives are kept in mm inside. */
export function shownUnitOf(word: UnitWord, insideLength: 'mm' | 'm'): ShownUnit {
  const size = word.dimension === 'length' && insideLength === 'mm' ? word.size * 1000 : word.size;
  return {
    symbol: word.symbol,
    size,
    zero: 0,
    style: word.us && word.dimension === 'length' ? 'fraction' : 'decimal',
    one: word.one,
    many: word.many,
  };
}
