import { RangeMark } from '../../charts/range/RangeMark';
import type { Row } from '../../tables/shapes';
import { twoFigures } from '../../words/figures';
import { isEstimate, standingMark, standingTitle } from '../../words/tableWords';
import type { Column } from './tableColumns';

/** A number with its range, drawn to the column's scale, and how well it is known. */
export function RangeCell<Line>(props: { readonly column: Column<Line>; readonly row: Row }) {
  const { column, row } = props;
  const mark = standingMark[row.standing];
  return (
    <td className="range-cell">
      <span className="range-label">
        {column.head} <span className="small soft">{column.unit}</span>
      </span>
      <RangeMark value={row} scale={column.scale} isEstimate={isEstimate(row.standing)} />
      <span className="range-numbers">
        <span className="strong">{twoFigures(row.typical)}</span>
        {row.low !== row.high && (
          <span className="soft">
            {' '}
            {twoFigures(row.low)} to {twoFigures(row.high)}
          </span>
        )}
        {mark && (
          <>
            {' '}
            <span className="range-standing" title={standingTitle[row.standing]}>
              {mark}
            </span>
          </>
        )}
      </span>
    </td>
  );
}
