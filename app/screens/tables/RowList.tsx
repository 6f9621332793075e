import { Fragment, useId, type ReactNode } from 'react';
import { twoFigures } from '../../words/figures';
import { RangeCell } from './RangeCell';
import { RangeKey } from './RangeKey';
import type { Column } from './tableColumns';

export interface ListedLine<Line> {
  readonly id: string;
  readonly name: string;
  readonly line: Line;
  /** the row of the tables it is or rests on: for what that is called otherwise */
  readonly tableId: string;
}

export interface ListedGroup<Line> {
  readonly name: string;
  /** words that all its lines are looked for by */
  readonly also?: readonly string[];
  readonly lines: readonly ListedLine<Line>[];
}

/** Rows in groups under shared scales; a row opens in place to all it holds. */
export function RowList<Line>(props: {
  readonly label: string;
  readonly groups: readonly ListedGroup<Line>[];
  readonly columns: readonly Column<Line>[];
  readonly open: string | null;
  readonly onOpen: (id: string | null) => void;
  readonly renderDetail: (id: string) => ReactNode;
}) {
  const base = useId();
  const { columns } = props;
  return (
    <>
      <RangeKey />
      <table className="row-list" aria-label={props.label}>
        <thead>
          <tr>
            <th scope="col">Name</th>
            {columns.map(({ head, unit, scale }) => (
              <th scope="col" key={head}>
                {head} <span className="small soft row-unit">{unit}</span>
                <span className="range-ends small soft">
                  <span>{twoFigures(scale.from)}</span>
                  <span className="only-heard"> to </span>
                  <span>{twoFigures(scale.to)}</span>
                </span>
              </th>
            ))}
          </tr>
        </thead>
        {props.groups.map((group) => (
          <tbody key={group.name}>
            <tr className="row-group">
              <th scope="rowgroup" colSpan={columns.length + 1}>
                {group.name}
              </th>
            </tr>
            {group.lines.map(({ id, name, line }) => {
              const isOpen = id === props.open;
              const detailId = `${base}-${id}`;
              return (
                <Fragment key={id}>
                  <tr className={isOpen ? 'row-line row-open' : 'row-line'}>
                    <th scope="row">
                      <button
                        type="button"
                        className="row-name"
                        aria-expanded={isOpen}
                        aria-controls={isOpen ? detailId : undefined}
                        onClick={() => props.onOpen(isOpen ? null : id)}
                      >
                        {name}
                      </button>
                    </th>
                    {columns.map((column) => (
                      <RangeCell key={column.head} column={column} row={column.of(line)} />
                    ))}
                  </tr>
                  {isOpen && (
                    <tr className="row-detail">
                      <td colSpan={columns.length + 1} id={detailId}>
                        <div className="row-detail-body">{props.renderDetail(id)}</div>
                      </td>
                    </tr>
                  )}
                </Fragment>
              );
            })}
          </tbody>
        ))}
      </table>
    </>
  );
}
