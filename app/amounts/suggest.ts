import { partsFromDay } from '../core/days';
import type { Field, ReadingContext, Refusal } from './amount';
import { containersText } from './amountText';
import { exampleFor, exampleUnit } from './examples';
import { nearestWord } from './nearestWord';
import { qualityWordList } from './qualityWords';
import { dayWords, nearestReading } from './readDay';
import { knownWords } from './readerWords';
import { unitWords } from './unitWords';

const escape = (text: string): string => text.replace(/[.*+?^${}()|[\]\\/-]/g, '\\$&');
const firstNumber = (text: string): string | null =>
  /\d+(?:[.,]\d+)?(?: \d+\/\d+|\/\d+)?|[½¼¾]/.exec(text)?.[0] ?? null;

/** Replaces a word wherever it stands by itself; null when it does not stand in the text. */
function swap(text: string, word: string, by: string): string | null {
  const pattern = new RegExp(`(?<!\\p{L})${escape(word)}(?!\\p{L})`, 'giu');
  const swapped = text.replace(pattern, by);
  return swapped === text ? null : swapped;
}

function vocabulary(context: ReadingContext): string[] {
  return [
    ...context.containers.flatMap((container) => [container.plural, container.name]),
    ...unitWords.flatMap((unit) => unit.words.filter((word) => /^\p{L}{2,}$/u.test(word))),
    ...(context.lawns ?? []).flatMap((lawn) => [lawn.name, lawn.name.replace(/ lawn$/i, '')]),
    ...(context.places ?? []).flatMap((place) => place.names),
    ...qualityWordList,
    ...knownWords,
    'january february march april june july august september october november december',
    'monday tuesday wednesday thursday friday saturday sunday yesterday today since',
  ].flatMap((words) => (words.includes(' ') ? words.split(' ') : [words]));
}

const smaller: readonly (readonly [RegExp, string])[] = [
  [/\b(?:m|metres?|meters?)\b/i, 'cm'],
  [/\bcm\b/i, 'mm'],
  [/\b(?:ft|feet|foot)\b|'/i, 'in'],
  [/\b(?:yd|yards?)\b/i, 'ft'],
  [/\b(?:t|tonnes?)\b/i, 'kg'],
  [/\bkg\b/i, 'g'],
  [/\b(?:m3|m³)/i, 'L'],
  [/\b(?:ha|acres?)\b/i, 'm2'],
];

/** A length where stuff or ground was wanted: "2 yards" of compost are cubic yards. */
function otherPowers(text: string): string[] {
  const found = /\b(mm|cm|m|in(?:ch(?:es)?)?|ft|feet|foot|yd|yards?)\b/i.exec(text)?.[1];
  if (found === undefined) return [];
  const base = /^y/i.test(found) ? 'yd' : /^f/i.test(found) ? 'ft' : found.toLowerCase();
  const powers = base === 'm' ? ['m3', 'm2'] : [`cu ${base}`, `sq ${base}`];
  return powers.flatMap((power) => swap(text, found, power) ?? []);
}

/** "2 cm" in a mowing may have been the height taken off. */
function takenOff(text: string, context: ReadingContext): string[] {
  const height = `${text.trim().replace(/\s*\b(?:deep|thick|high|tall)\b/gi, '')} off`;
  return [height, `${context.units === 'us' ? '2000 sq ft' : '200 m2'}, ${height}`];
}

/** "3 July" typed in June, with the year it can only have been. */
function lastYear(said: string, text: string, context: ReadingContext): string[] {
  if (context.today === undefined) return [];
  const year = partsFromDay(context.today).year - 1;
  const dated = /\d{4}/.test(said) ? null : swap(text, said, `$& ${year}`);
  return dated === null ? [] : [dated];
}

/** Entries that may have been meant, likeliest first; the caller keeps the first that reads. */
function candidates(
  refusal: Refusal,
  text: string,
  field: Field,
  context: ReadingContext,
): (string | null)[] {
  const number = firstNumber(text);
  const usual = field === 'water' ? undefined : context.containers[0];
  const counted = (count: string | null): string | null =>
    count !== null && usual
      ? `${count} ${count === '1' || /^\d+\/\d+$/.test(count) ? usual.name : usual.plural}`
      : null;
  switch (refusal.kind) {
    case 'unknown-unit':
    case 'unknown-place': {
      const nearest = nearestWord(refusal.word, vocabulary(context));
      return [
        /^tons?$/.test(refusal.word)
          ? swap(text, refusal.word, context.units === 'us' ? 'short tons' : 'tonnes')
          : null,
        nearest === null ? null : swap(text, refusal.word, nearest),
        swap(text, refusal.word, ''),
        counted(number),
      ];
    }
    case 'unknown-container': {
      const by = /s$/.test(refusal.word) ? usual?.plural : usual?.name;
      return [by === undefined ? null : swap(text, refusal.word, by), counted(number)];
    }
    case 'no-unit':
      return [counted(text.trim()), `${text.trim()} ${exampleUnit(field, context.units)}`];
    case 'wrong-dimension':
      return [
        ...(refusal.found === 'length' && field === 'mowing' ? takenOff(text, context) : []),
        refusal.found === 'area' && field === 'mowing'
          ? `${text.trim()}, ${context.units === 'us' ? '1 in' : '2 cm'} off`
          : null,
        ...(refusal.found === 'length' ? otherPowers(text) : []),
      ];
    case 'no-lawn':
      return [`${context.units === 'us' ? '2000 sq ft' : '200 m2'}, ${text.trim()}`];
    case 'too-large':
      return smaller
        .filter(([pattern]) => pattern.test(text))
        .map(([pattern, by]) => text.replace(pattern, by));
    case 'negative':
      return [
        text
          .replace(/[-‐‑‒–—−]/g, ' ')
          .replace(/\s+/g, ' ')
          .trim(),
      ];
    case 'ambiguous-number':
      return [
        text.replace(refusal.text, refusal.text.replaceAll(',', '')),
        text.replace(refusal.text, refusal.text.replace(',', '.')),
      ];
    case 'two-amounts':
      return [
        text.replace(/(\d) (?=\d{3}(?!\d))/g, '$1'),
        text.replace(/^(\d+) (?=\d)/, '$1 x '),
        text.replace(/,(?=\s)/g, ' +'),
        text.replace(/^(.*\d\s*\p{L}+)\s+(?=\d)/u, '$1 + '),
        ...text.replace(/\boff\b/gi, '').split(/,\s/),
      ];
    case 'mixed-dimensions':
      return [text.split(/\s*(?:[+*/]|\s-\s|\band\b|\bplus\b)\s*/)[0] ?? null];
    case 'vague':
      return [
        text.replace(
          /\b(?:a )?(?:few|several|some|many|lots?|bit|little|handful|plenty)\b(?: of)?/i,
          'about 3',
        ),
      ];
    case 'strange-character':
      return [
        text.replaceAll(refusal.character, ''),
        text.replaceAll(refusal.character, ' '),
        counted(number),
      ];
    case 'ambiguous-date':
    case 'unknown-day':
      return context.today === undefined
        ? []
        : [swap(text, refusal.text, dayWords(nearestReading(refusal.text, context.today)))];
    case 'future-day':
      return [
        ...lastYear(refusal.text, text, context),
        swap(text, `on ${refusal.text}`, 'today'),
        swap(text, refusal.text, 'today'),
      ];
    case 'no-start':
      return [`${text.trim()} since April`];
    case 'empty':
    case 'too-long':
    case 'not-an-amount':
    case 'zero':
      return [counted(number === '0' ? null : number)];
  }
}

/** Failures whose number is not the likely part of the answer. */
const ownAnswer: ReadonlySet<Refusal['kind']> = new Set([
  'wrong-dimension',
  'two-amounts',
  'too-large',
  'ambiguous-date',
  'unknown-day',
  'future-day',
  'no-start',
]);

/**
 * A likely entry for one that was refused. It can be read in the same field: `reads` is asked, and
 * the field's example stands in where nothing likely reads.
 */
export function suggestionFor(
  refusal: Refusal,
  text: string,
  field: Field,
  context: ReadingContext,
  reads: (text: string) => boolean,
): string {
  const example = exampleFor(field, context);
  const number = firstNumber(text);
  const bare = number !== null && !ownAnswer.has(refusal.kind);
  const simplest = bare ? `${number} ${exampleUnit(field, context.units)}` : null;
  for (const candidate of [...candidates(refusal, text, field, context), simplest]) {
    const clean = candidate?.replace(/\s+/g, ' ').trim() ?? '';
    if (clean !== '' && clean !== text && reads(clean)) return clean;
  }
  const [usual] = context.containers;
  if (reads(example) || !usual || field === 'water') return example;
  return containersText(2, usual);
}
