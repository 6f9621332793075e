import type { PlanOdds } from '../../../core/plan/answer';
import { planOddsMarks, planOddsWords } from '../../../words/planWords';

const cell = 14;
const middle = cell / 2;

/** A line's odds: ten marks to be counted, a full seed for better and an open ring for not. */
export function PlanOddsMarks({ odds }: { readonly odds: PlanOdds }) {
  const { better, marks } = planOddsMarks(odds);
  return (
    <p className="plan-odds small">
      <svg
        className="odds-marks"
        aria-hidden="true"
        viewBox={`0 0 ${marks * cell} ${cell}`}
        width={marks * cell}
        height={cell}
      >
        {Array.from({ length: marks }, (_unused, at) => (
          <g key={at} className={at < better ? 'odds-mark odds-better' : 'odds-mark'}>
            {at < better ? (
              <circle cx={at * cell + middle} cy={middle} r={5} />
            ) : (
              <circle
                cx={at * cell + middle}
                cy={middle}
                r={4}
                fill="none"
                stroke="currentColor"
                strokeWidth={1.5}
              />
            )}
          </g>
        ))}
      </svg>{' '}
      {planOddsWords(odds)}
    </p>
  );
}
