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
  return `${coverSentences[facts.state]}: ${count}, ${amountWithUnit(facts.totalDepth, units.depth)} altogether, hiding ${percent(facts.hidden)} of the soil.`;
}

/** "laid today", "6 days old" */
export const ageWords = (days: number): string =>
  days === 0 ? 'laid today' : days === 1 ? 'a day old' : `${days} days old`;

/** "7 mm left of 12 laid" */
export const leftWords = (depth: number, laidDepth: number, units: ChartUnits): string =>
  `${amountWithUnit(depth, units.depth)} left of ${amount(laidDepth, units.depth)} laid`;
