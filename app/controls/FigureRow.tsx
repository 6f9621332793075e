import type { ReactNode } from 'react';
import type { Why } from '../words/why';
import { FigureButton, useOpenFigure, WhyPanel } from './Figured';

/** A cell of a table: its figure, what stands behind that, and what is drawn and said around it. */
export interface FigureCell {
  readonly key: string | number;
  /** the figure that opens; null: nothing here opens */
  readonly figure: { readonly text: string; readonly why: Why } | null;
  readonly before?: ReactNode;
  readonly after?: ReactNode;
  /** which of the row's cells it is, for whoever hears only the button */
  readonly of: string;
  readonly className?: string | undefined;
}

/** One line of a table; each figure opens what stands behind it, in a row beneath. */
export function FigureRow(props: {
  readonly words: string;
  /** beside the words, and no part of what the figures are heard as */
  readonly mark?: ReactNode;
  readonly cells: readonly FigureCell[];
  readonly className?: string | undefined;
}) {
  const { words, cells } = props;
  const group = useOpenFigure();
  const open = group.open === null ? null : cells[group.open]?.figure;
  return (
    <>
      {/* oxlint-disable-next-line jsx-a11y/no-noninteractive-element-interactions -- only hears Escape from its buttons */}
      <tr className={props.className} onKeyDown={group.onKeyDown}>
        <th scope="row">
          {words}
          {props.mark}
        </th>
        {cells.map(({ key, figure, before, after, of, className }, at) => (
          <td key={key} className={className}>
            {before}
            {figure && (
              <FigureButton text={figure.text} of={`${words}, ${of}`} figure={at} group={group} />
            )}
            {after}
          </td>
        ))}
      </tr>
      {open && (
        <tr className="why-row">
          <td colSpan={cells.length + 1}>
            <WhyPanel why={open.why} id={group.panelId} />
          </td>
        </tr>
      )}
    </>
  );
}
