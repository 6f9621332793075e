import type { PlanOdds } from '../../../core/plan/answer';
import { marksOfLine, planOddsWords, sharesOfOdds } from '../../../words/planWords';
import { OddsMarks } from '../../OddsMarks';

/** A line's odds: ten marks to be counted, of the same shapes as in "What if", and in words. */
export function PlanOddsMarks({ odds }: { readonly odds: PlanOdds }) {
  return (
    <div className="plan-odds small">
      <OddsMarks odds={sharesOfOdds(odds)} drawn={marksOfLine} />
      <p>{planOddsWords(odds)}</p>
    </div>
  );
}
