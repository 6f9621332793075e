import type { ReactNode } from 'react';
import type { Why } from '../words/why';
import { FigureButton, useOpenFigure, WhyPanel } from './Figured';

/** A figure by a name of its own, as it is written and as it is heard. */
export interface PlacedFigure {
  readonly key: string;
  readonly text: string;
  /** what it is of: "could use, Gate bed" */
  readonly of: string;
}

/** The button of a figure; null where it opens nothing. `isOver`: it lies over a figure that is drawn. */
export type FigureOfKey = (key: string, isOver?: boolean) => ReactNode | null;

/**
 * Figures that stand wherever they are put, in a key or at the head of a table's columns; each opens
 * what stands behind it, beneath them all. What is open stays open while the figures change.
 */
export function FiguredPlaces(props: {
  readonly figures: readonly PlacedFigure[];
  /** asked for the figure that is open; null: nothing stands behind it */
  readonly whyOf: (key: string) => Why | null;
  readonly children: (figure: FigureOfKey) => ReactNode;
}) {
  const { figures, whyOf } = props;
  const group = useOpenFigure<string>();
  const why =
    group.open !== null && figures.some(({ key }) => key === group.open) ? whyOf(group.open) : null;
  return (
    // oxlint-disable-next-line jsx-a11y/no-static-element-interactions -- only hears Escape from the buttons and what they open
    <div className="figured" data-figures onKeyDown={group.onKeyDown}>
      {props.children((key, isOver = false) => {
        const figure = figures.find((one) => one.key === key);
        return figure === undefined ? null : (
          <FigureButton
            text={figure.text}
            of={figure.of}
            figure={key}
            group={group}
            isOver={isOver}
          />
        );
      })}
      {why && <WhyPanel why={why} id={group.panelId} />}
    </div>
  );
}
