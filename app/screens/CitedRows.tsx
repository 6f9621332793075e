import { Scroller } from '../charts/Scroller';
import type { Row } from '../tables/shapes';
import { shortSource } from '../tables/sources';
import { rowInUnits, type RowUnits } from '../words/rowInUnits';
import { rowUnit } from '../words/rowUnit';
import { sourceLine } from '../words/sourceLine';

const plain = (value: number): string => String(Number(value.toPrecision(3)));

/** Numbers from books with range, source, place and standing. */
export function CitedRows(props: {
  readonly rows: readonly { readonly name: string; readonly row: Row }[];
  /** what the table is heard as, where several stand on a page */
  readonly label?: string;
  /** units to tell them in; left out: as they were read */
  readonly units?: RowUnits;
}) {
  return (
    <Scroller className="table-scroll" label={props.label ?? 'Each number with its source'}>
      <table className="cited">
        <thead>
          <tr>
            <th scope="col">Number</th>
            <th scope="col">Likely (from, to)</th>
            <th scope="col">Where from, and how well known</th>
          </tr>
        </thead>
        <tbody>
          {props.rows.map(({ name, row }) => {
            const told = props.units ? rowInUnits(row, props.units) : row;
            return (
              <tr key={name}>
                <th scope="row">{name}</th>
                <td>
                  {plain(told.typical)}
                  {told.low !== told.high && ` (${plain(told.low)}, ${plain(told.high)})`}{' '}
                  {rowUnit(told.unit)}
                </td>
                <td>
                  {sourceLine({ ...row, source: shortSource(row.source), judged: false })}
                  {row.note && ` ${row.note.charAt(0).toUpperCase()}${row.note.slice(1)}.`}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </Scroller>
  );
}
