import { countOf, twoFigures } from './figures';

/** How the gap after "for a heap that" is filled. */
export const aimWords = {
  heats: 'heats',
  rots: 'just rots, cool and slow',
  any: 'comes out as it will',
  exact: 'has the exact aim below',
} as const;

interface Measure {
  readonly name: string;
  readonly plural: string;
  readonly litres: number;
}

/**
 * An amount in what a gardener carries: in the largest container that is filled once, else the smallest.
 *
 * @returns "7 1/2 bags"; null when there are no containers
 */
export function carriedWords(litres: number, containers: readonly Measure[]): string | null {
  const bySize = containers.toSorted((one, other) => other.litres - one.litres);
  const measure = bySize.find((one) => one.litres <= litres) ?? bySize.at(-1);
  return measure ? countOf(litres / measure.litres, measure.name, measure.plural) : null;
}

/** What an aim with a name means in figures, and whose figures they are. */
export const aimSentence = (
  aim: 'heats' | 'rots',
  { low, typical, high }: { readonly low: number; readonly typical: number; readonly high: number },
): string =>
  `Reckoned with ${ratioWords(typical)} (${twoFigures(low)} to ${twoFigures(high)}): ${
    aim === 'heats' ? 'common practice, recalled.' : 'our own estimate, nothing we read.'
  }`;

/** "27 of carbon to 1 of nitrogen": a ratio is never said without what stands to what. */
export const ratioWords = (ratio: number): string =>
  `${twoFigures(ratio)} of carbon to 1 of nitrogen`;

/** Which part of a heap is which in that ratio. */
/** What came of a change to a mixture, for the ear: what to carry of each that was left open, and what it comes to. */
export const mixtureHeard = (
  found: readonly string[],
  { ratio, moisture }: { readonly ratio: number; readonly moisture: number },
): string =>
  `${found.length === 0 ? '' : `${found.join(', ')}. `}It comes to ${ratioWords(ratio)}, ${twoFigures(moisture * 100)} % water.`;
export const whoBringsWhat = 'Browns bring the carbon, greens the nitrogen.';
