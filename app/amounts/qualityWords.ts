import type { Certainty, Wetness } from '../core/lawn/quantity';
import type { Condition } from '../core/season/input';

interface Phrases<Meaning> {
  readonly means: Meaning;
  readonly said: readonly string[];
}

const certainties: readonly Phrases<Certainty>[] = [
  {
    means: 'not sure',
    said: [
      "i'm not sure",
      'not quite sure',
      'not very sure',
      'not sure',
      'unsure',
      'no idea',
      'at a guess',
      'just a guess',
      'a guess',
      'guessing',
      'a wild guess',
      "don't know",
      'dunno',
      'who knows',
    ],
  },
  {
    means: 'about',
    said: [
      'just about',
      'about',
      'around',
      'roughly',
      'approximately',
      'approx',
      'circa',
      'ca',
      'more or less',
      'give or take',
      'or so',
      'or thereabouts',
      'i think',
      'i guess',
      'i reckon',
      'probably',
      'perhaps',
      'maybe',
      'almost',
      'nearly',
      'not quite',
      'a bit over',
      'a bit more than',
      'a little over',
      'a bit under',
      'a little under',
      'just over',
      'just under',
    ],
  },
];

const wetnesses: readonly Phrases<Wetness>[] = [
  {
    means: 'soaked',
    said: [
      'soaking wet',
      'sopping wet',
      'wringing wet',
      'dripping wet',
      'very wet',
      'soaked',
      'soaking',
      'sopping',
      'dripping',
      'sodden',
      'wet',
    ],
  },
  {
    means: 'damp',
    said: ['a bit damp', 'a bit wet', 'slightly damp', 'slightly wet', 'damp', 'dewy', 'moist'],
  },
  { means: 'dry', said: ['bone dry', 'quite dry', 'dry'] },
];

const conditions: readonly Phrases<Condition>[] = [
  {
    means: 'just cut',
    said: [
      'straight off the mower',
      'straight from the mower',
      'just cut',
      'just mown',
      'freshly cut',
      'freshly mown',
      'fresh',
    ],
  },
  {
    means: 'limp',
    said: [
      'wilted a day',
      'a day old',
      'day old',
      'day-old',
      "yesterday's",
      'half wilted',
      'wilted',
      'wilting',
      'limp',
    ],
  },
  {
    means: 'crisp',
    said: [
      'straw coloured',
      'straw-coloured',
      'straw colored',
      'straw-colored',
      'sun-dried',
      'sun dried',
      'dried out',
      'dried',
      'crisp',
      'crispy',
      'crackly',
      'like hay',
    ],
  },
];

interface Pattern<Meaning> {
  readonly pattern: RegExp;
  readonly length: number;
  readonly means: Meaning;
}

const compile = <Meaning>(table: readonly Phrases<Meaning>[]): readonly Pattern<Meaning>[] =>
  table
    .flatMap((entry) =>
      entry.said.map((phrase) => ({
        pattern: new RegExp(`(?<![\\p{L}'-])${phrase}(?![\\p{L}'-])`, 'gu'),
        length: phrase.length,
        means: entry.means,
      })),
    )
    .sort((one, other) => other.length - one.length);

const certaintyPatterns = compile(certainties);
const wetnessPatterns = compile(wetnesses);
const conditionPatterns = compile(conditions);

function take<Meaning>(
  text: string,
  patterns: readonly Pattern<Meaning>[],
): { readonly rest: string; readonly found: readonly Meaning[] } {
  let rest = text;
  const found: Meaning[] = [];
  for (const { pattern, means } of patterns) {
    const without = rest.replace(pattern, ' ');
    if (without === rest) continue;
    rest = without;
    found.push(means);
  }
  return { rest, found };
}

export interface Qualities {
  /** the text without the words that were understood */
  readonly rest: string;
  readonly certainty: Certainty;
  readonly wetness: Wetness | null;
  readonly condition: Condition | null;
}

/** Takes "about", "soaked", "wilted" and their like out of a tidied text. Never fails. */
export function takeQualities(text: string): Qualities {
  const marked = text.replace(/[?]/g, ' not sure ').replace(/~/g, ' about ').replace(/!/g, ' ');
  const sure = take(marked, certaintyPatterns);
  const condition = take(sure.rest, conditionPatterns);
  const wetness = take(condition.rest, wetnessPatterns);
  return {
    rest: wetness.rest,
    certainty: sure.found.includes('not sure') ? 'not sure' : (sure.found[0] ?? 'plain'),
    wetness: wetness.found[0] ?? null,
    condition: condition.found[0] ?? null,
  };
}

/** Every word above, for telling a slip of the finger from a word that is not known. */
export const qualityWordList: readonly string[] = [...certainties, ...wetnesses, ...conditions]
  .flatMap((entry) => entry.said)
  .flatMap((phrase) => phrase.split(' '))
  .filter((word) => word.length > 3);
