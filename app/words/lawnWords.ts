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
