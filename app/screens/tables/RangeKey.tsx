import { RangeMark } from '../../charts/range/RangeMark';
import { rangeKeyWords, standingKey } from '../../words/tableWords';

const wholeScale = { from: 0, to: 10, isLogarithmic: false };
const sample = { low: 3, typical: 5, high: 8 };

/** What the bars and the words beside them mean, in one line over the table. */
export function RangeKey() {
  return (
    <p className="range-key small">
      {[false, true].map((isEstimate) => (
        <span key={String(isEstimate)} className="range-key-mark">
          <RangeMark value={sample} scale={wholeScale} isEstimate={isEstimate} />
          {isEstimate ? rangeKeyWords.broken : rangeKeyWords.whole}
        </span>
      ))}
      <span className="soft">{standingKey}</span>
    </p>
  );
}
