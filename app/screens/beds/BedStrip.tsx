import type { BedResults } from '../../store/contract';
import { coverGeometryOf } from './bedStripGeometry';

const width = 150;
const height = 92;

/**
 * A thin cut through a bed: its cover over its soil, both to one scale of depth, and a dot for
 * each gram of nitrogen ready in the top 30 cm of a m². Says nothing the words beside it do not.
 */
export function BedStrip({ results }: { readonly results: BedResults }) {
  const drawing = coverGeometryOf(results, width, height);
  return (
    <svg
      className="bed-strip"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
      focusable="false"
    >
      <rect
        className="strip-soil"
        x="0"
        y={drawing.surface}
        width={width}
        height={height - drawing.surface}
      />
      {drawing.cover > 0 && (
        <rect
          className="strip-cover"
          x="0"
          y={drawing.surface - drawing.cover}
          width={width * drawing.hidden}
          height={drawing.cover}
        />
      )}
      {drawing.dots.map(({ x, y }) => (
        <circle key={`${x} ${y}`} className="strip-dot" cx={x} cy={y} r="2.6" />
      ))}
    </svg>
  );
}
