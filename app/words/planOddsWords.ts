import type { PlanOdds } from '../core/plan/answer';
import { oddsWords } from './imaginedWords';

/** "Better with it in 8 of 10 imagined seasons." */
export const planOddsWords = ({ better, of }: PlanOdds): string =>
  `Better with it ${oddsWords(of > 0 ? better / of : 0)}.`;
