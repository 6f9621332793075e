import { listed } from './chartFormat';
import { twoFigures } from './figures';

/**
 * The question about a mowing that is more than its lawn can well have grown.
 * @param since  the day of the mowing before, as a person says it
 */
export function mowingDoubtSentence(doubt: { readonly times: number }, since: string): string {
  const times = Number.isFinite(doubt.times)
    ? `That is about ${twoFigures(doubt.times)} times what this lawn can have grown since ${since}.`
    : `This lawn can hardly have grown at all since ${since}.`;
  return `${times} Check the amount, the container’s weight and the lawn’s area, or log a mowing in between.`;
}

/**
 * Said before anything is doubted: the same lawn was mown that day already.
 * @param amounts  what is logged of that day, as a person says it
 * @param day      "today"
 */
export const alreadyLoggedSentence = (
  amounts: readonly string[],
  lawn: string,
  day: string,
): string =>
  `${listed(amounts)} from ${lawn} ${amounts.length === 1 ? 'is' : 'are'} logged already, mown ${day}. Is this another mowing, or the same?`;

/** The two ways on from there. */
export const alreadyLoggedWords = {
  another: 'Another: log it.',
  same: 'The same: empty this line',
} as const;
