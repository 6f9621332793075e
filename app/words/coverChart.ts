import type { CoverState } from '../core/season/verdict';
import { amount, amountWithUnit, percent } from './chartFormat';
import type { ChartUnits } from './chartUnits';

const coverSentences: Readonly<Record<CoverState, string>> = {
  bare: 'The ground is bare',
  thin: 'The cover is thin',
  good: 'The ground is well covered',
  'too deep': 'The cover is too deep',
};

export interface CoverFindingFacts {
  readonly state: CoverState;
  readonly layers: number;
  readonly totalDepth: number;
  readonly hidden: number;
}

/** The drawing of a cover in one sentence. */
export function coverFinding(facts: CoverFindingFacts, units: ChartUnits): string {
  if (facts.layers === 0) return 'Nothing lies on this bed: the ground is bare.';
  const count = facts.layers === 1 ? 'one layer' : `${facts.layers} layers`;
  return `${coverSentences[facts.state]}: ${count}, ${amountWithUnit(facts.totalDepth, units.depth)} deep as settled, hiding ${percent(facts.hidden)} of the soil.`;
}

/** "laid today", "6 days old" */
export const ageWords = (days: number): string =>
  days === 0 ? 'laid today' : days === 1 ? 'a day old' : `${days} days old`;

/**
 * "62 % of its dry weight left; now 7 mm, 12 as laid". A layer settles before it rots away, and
 * swells no more: depth and weight are two things, and the weight is what still feeds.
 */
export const leftWords = (
  left: number,
  depth: number,
  laidDepth: number,
  units: ChartUnits,
): string =>
  `${percent(left)} of its dry weight left; now ${amountWithUnit(depth, units.depth)}, ${amount(laidDepth, units.depth)} as laid`;
