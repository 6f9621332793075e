import type { PairedOdds } from '../core/plan/pairedDraws';
import { marksDrawn, marksOf, marksSpoken, outcomes, type Outcome } from '../words/whatIfWords';

const perLine = 10;
const cell = 14;

/** A full seed, a blade lying flat, an open husk: told apart without any colour. */
function OutcomeMark({ outcome, x, y }: { outcome: Outcome; x: number; y: number }) {
  const middle = cell / 2;
  return (
    <g className={`odds-mark odds-${outcome}`} transform={`translate(${x} ${y})`}>
      {outcome === 'better' && <circle cx={middle} cy={middle} r={5} />}
      {outcome === 'alike' && <rect x={2} y={middle - 1.5} width={10} height={3} />}
      {outcome === 'worse' && <path d="M7 1.8 L12.2 7 L7 12.2 L1.8 7 Z" />}
    </g>
  );
}

/**
 * Imagined seasons as marks to be counted, ten to a line.
 *
 * @param drawn so many marks, each for as large a part of the seasons; tens
 */
export function OddsMarks(props: { readonly odds: PairedOdds; readonly drawn?: number }) {
  const { odds, drawn = marksDrawn } = props;
  const counts = marksOf(odds, drawn);
  const marks = outcomes.flatMap((outcome) => Array<Outcome>(counts[outcome]).fill(outcome));
  const lines = drawn / perLine;
  return (
    <svg
      className="odds-marks"
      role="img"
      aria-label={marksSpoken(odds, drawn)}
      viewBox={`0 0 ${perLine * cell} ${lines * cell}`}
      width={perLine * cell}
      height={lines * cell}
    >
      {marks.map((outcome, at) => (
        <OutcomeMark
          // oxlint-disable-next-line react/no-array-index-key -- a mark is its place
          key={at}
          outcome={outcome}
          x={(at % perLine) * cell}
          y={Math.floor(at / perLine) * cell}
        />
      ))}
    </svg>
  );
}

/** What the three marks mean. */
export function OddsKey() {
  const words: Readonly<Record<Outcome, string>> = {
    better: 'better than as it is',
    alike: 'as good as alike',
    worse: 'worse',
  };
  return (
    <ul className="plain-list odds-key small">
      {outcomes.map((outcome) => (
        <li key={outcome}>
          <svg viewBox={`0 0 ${cell} ${cell}`} width={cell} height={cell} aria-hidden="true">
            <OutcomeMark outcome={outcome} x={0} y={0} />
          </svg>{' '}
          {words[outcome]}
        </li>
      ))}
    </ul>
  );
}
