import { lawnChartWords as words } from '../../words/lawnChartWords';
import { isTornOff, type LawnChartData } from './geometry';

/** What of lawns is drawn: only that has a line in the key. */
export interface LawnDrawn {
  readonly weeks: boolean;
  readonly ahead: boolean;
  readonly cuts: boolean;
  readonly tornCuts: boolean;
  readonly firstCut: boolean;
}

export const drawnOfLawn = ({
  weeks,
  cuts,
  today,
}: Pick<LawnChartData, 'cuts' | 'today' | 'weeks'>): LawnDrawn => ({
  weeks: weeks.length > 0,
  ahead: weeks.some(({ from }) => from > today),
  cuts: cuts.some(
    ({ from, aWeek }) => from !== null && aWeek !== null && !isTornOff({ weeks }, aWeek),
  ),
  tornCuts: cuts.some(
    ({ from, aWeek }) => from !== null && aWeek !== null && isTornOff({ weeks }, aWeek),
  ),
  firstCut: cuts.some(({ from }) => from === null),
});

const blade = 'M8 15 Q9 8 14 2 Q14 9 16 15 Z';

/** What is drawn as what, over a lawn. */
export function LawnKey({ drawn }: { readonly drawn: LawnDrawn }) {
  const lines = [
    drawn.weeks && {
      says: words.expected,
      mark: <path className="lawn-blade" d={blade} />,
    },
    drawn.ahead && {
      says: words.expectedAhead,
      mark: <path className="lawn-blade lawn-blade-ahead" d={blade} />,
    },
    drawn.weeks && {
      says: words.band,
      mark: <path className="lawn-band" d="M0 3 H26 V13 H0 Z" />,
    },
    drawn.weeks && {
      says: words.usual,
      mark: <path className="lawn-usual" d="M0 8 H26" />,
    },
    drawn.cuts && {
      says: words.mown,
      mark: (
        <>
          <path className="lawn-cut-side" d="M3 5 V16 M23 5 V16" />
          <path className="lawn-cut" d="M3 5 H23" />
        </>
      ),
    },
    drawn.tornCuts && {
      says: words.mownTorn,
      mark: (
        <>
          <path className="lawn-cut-side" d="M3 7 V16 M23 7 V16" />
          <path className="lawn-cut" d="M3 7 l5 -4 l5 4 l5 -4 l5 4" />
        </>
      ),
    },
    drawn.firstCut && {
      says: words.firstMown,
      mark: <path className="lawn-cut" d="M8 4 l5 8 l5 -8" />,
    },
  ].filter((line) => line !== false);
  if (lines.length === 0) return null;
  return (
    <ul className="plain-list lawn-key small">
      {lines.map(({ says, mark }) => (
        <li key={says}>
          <svg width="26" height="16" aria-hidden="true" focusable="false">
            {mark}
          </svg>
          {says}
        </li>
      ))}
    </ul>
  );
}
