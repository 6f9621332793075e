import { useContext } from 'react';
import { DayRead } from './DayRead';
import { uprightPieces, type BedStripGeometry } from './geometry';
import type { StripLayout } from './layout';

/** The day that is read, upright over one strip and clear of the words on it. */
export function DayCross(props: {
  readonly layout: StripLayout;
  readonly geometry: Pick<BedStripGeometry, 'words' | 'foot'>;
}) {
  const { layout, geometry } = props;
  const day = useContext(DayRead);
  const x = layout.x(day);
  const wide = Math.max(1, layout.x(1) - layout.x(0));
  return uprightPieces(x + wide / 2, geometry).map(({ top, bottom }) => (
    <span
      key={top}
      className="strip-cross"
      aria-hidden="true"
      style={{
        insetInlineStart: x,
        inlineSize: wide,
        insetBlockStart: top,
        blockSize: bottom - top,
      }}
    />
  ));
}
