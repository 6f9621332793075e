import { smotheredOn, type Smothered } from '../core/season/cautions/smothered';
import type { BedResults } from '../store/contract';
import { limits } from '../tables/thresholds';
import { coverSentence } from '../words/states';
import type { Shown } from './shown';

/** Seedlings of a bed that a cover laid today would smother; null where none stand. */
export const smotheredToday = ({ input, season }: BedResults): Smothered | null =>
  smotheredOn({ input, result: season }, input.today, limits);

/** What to do about the ground of a bed today. */
export function coverSays(results: BedResults, shown: Pick<Shown, 'dayWord'>): string {
  const { verdict } = results;
  if (verdict.coverState === 'good') return coverSentence(verdict);
  const small = smotheredToday(results);
  const until = small?.ready ?? null;
  return coverSentence(verdict, small && (until === null ? '' : shown.dayWord(until)));
}
