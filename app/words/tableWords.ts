import type { ContentFailure } from '../amounts/readContent';
import type { Standing } from '../core/reference';
import type { BlendFailure, Unmet } from '../core/cover/blend';
import { assertNever } from '../core/result';
import { mixtureFailureSentence } from './messages';
import { ratioWords } from './mixWords';

const estimates: readonly Standing[] = ['memory', 'mixed', 'assumed'];

/** A number that nobody read anywhere: it says so beside itself. */
export const isEstimate = (standing: Standing): boolean => estimates.includes(standing);

/** One word or two beside a number that is not simply read. */
export const standingMark: Readonly<Record<Standing, string>> = {
  read: '',
  reported: 'second-hand',
  derived: '',
  mixed: 'partly recalled',
  memory: 'recalled',
  assumed: 'our estimate',
  'common practice': 'common practice',
  definition: '',
  measured: 'yours',
};

/** What stands where nothing of one's own does: "The table’s: 45 %, our estimate". */
export const inTableWords = (value: string, standing: Standing): string =>
  `The table’s: ${[value, standingMark[standing]].filter(Boolean).join(', ')}`;

/** What such a word means, for whoever rests on it. */
export const standingTitle: Readonly<Partial<Record<Standing, string>>> = {
  reported: 'read in a work that quotes it, not in the work itself',
  mixed: 'some of it read, some written from memory',
  memory: 'written from memory, not looked up since',
  assumed: 'supposed by us: nobody measured it',
  'common practice': 'what growers do',
  measured: 'your own number',
};

/** The same as a line above a table: a title is for a pointer alone. */
export const standingKey =
  'Beside a number: “second-hand”, read where it was quoted; “recalled”, from memory, or partly so; “our estimate”, measured by nobody. A number without a word was read where it is from, or worked out from that.';

/** What the drawn ranges of the tables mean. */
export const rangeKeyWords = {
  whole: 'lowest to highest, the seed at the likely value.',
  broken: 'recalled or estimated, at least in part.',
} as const;

/** "1 store, 3 layers" or that nothing is. */
export function usedByWords(counts: readonly (readonly [number, string, string])[]): string {
  const parts = counts
    .filter(([count]) => count > 0)
    .map(([count, one, many]) => `${String(count)} ${count === 1 ? one : many}`);
  if (parts.length === 0) return 'Not used in this garden.';
  const last = parts.pop() ?? '';
  return `Used by ${parts.length > 0 ? `${parts.join(', ')} and ${last}` : last}.`;
}

/** What the search has left. */
export const foundWords = (
  found: number,
  of: number,
  what: string,
  /** nothing begins as it was typed; these come near */
  isNear: boolean,
): string =>
  found === 0
    ? `None of ${String(of)} ${what} has that in its name.`
    : isNear
      ? `Nothing begins like that; ${String(found)} of ${String(of)} ${what} come near.`
      : found === of
        ? `${String(of)} ${what}`
        : `${String(found)} of ${String(of)} ${what}`;

/** Why a mixture cannot be as wished. `names` are its parts in their order; water in words. */
export function unmetSentence(
  unmet: Unmet,
  names: readonly string[],
  water: (kilograms: number) => string,
): string {
  switch (unmet.kind) {
    case 'part-falls-short': {
      const name = names[unmet.part] ?? '';
      return `No amount of ${name} gets there: it is ${ratioWords(unmet.ratio)} by itself. Choose something beyond the wish, or a wish nearer to it.`;
    }
    case 'part-leads-away':
      return `More ${names[unmet.part] ?? ''} leads away from the wish, so there is none of it here. Swap it for something on the other side.`;
    case 'ratio-as-given':
      if (names.length === 1)
        return 'By itself it makes another ratio. Put something else with it, the amount left empty.';
      return 'The amounts as given make another ratio. Let one of them be found.';
    case 'too-wet':
      return `It is too wet by ${water(unmet.waterKilograms)} of water. Let the grass wilt, or take something drier.`;
    default:
      return assertNever(unmet);
  }
}

/** Why there is none of a part whose amount was asked. */
export const leftOutSentence = (name: string, isMet: boolean): string =>
  isMet
    ? `None of ${name} is taken: it comes out as wished without it.`
    : `None of ${name} is taken: no amount of it brings all that is wished together.`;

/** Why a mixture has no answer. */
export function blendFailureSentence(failure: BlendFailure, names: readonly string[]): string {
  if (failure.kind === 'too-many-unknown')
    return failure.may === 0
      ? 'Nothing is wished for, so no amount can be found. Say a ratio or how moist it should be.'
      : 'One amount can be found for each wish. Type the other amounts, or wish for one thing more.';
  return mixtureFailureSentence(failure, names);
}

/** What is wrong with a laboratory's number as it was typed. */
export function contentFailureSentence(failure: ContentFailure, what: string): string {
  switch (failure.kind) {
    case 'no number':
      return `${what} begins with a number.`;
    case 'unknown words':
      return `“${failure.words}” is not understood here.`;
    case 'water unknown':
      return 'Of the stuff as it came it can only be turned once its water is known. Fill that in first.';
    case 'out of range':
      return `${what} lies between ${failure.low} and ${failure.high}.`;
    default:
      return assertNever(failure);
  }
}
