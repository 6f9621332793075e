import type { Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { coverChartData } from './chartData';
import { bedStripGeometry } from './bedStripGeometry';
import { metricChartUnits } from '../../words/chartUnits';

const width = 160;
const height = 100;

/**
 * A thin cut through a bed, to one scale: what lies on it, 30 cm of soil with a dot for every half
 * gram of nitrogen ready in a square metre of it, and what grows at the height of its progress.
 * Says nothing the words beside it do not.
 */
export function BedStrip(props: { readonly garden: Garden; readonly results: BedResults }) {
  const { layers } = coverChartData(props.garden, props.results, metricChartUnits);
  const drawing = bedStripGeometry(props.results, layers, width, height);
  return (
    <svg
      className="bed-strip"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
      focusable="false"
    >
      {drawing.plants.map(({ x, top, foot }) => (
        <path
          key={x}
          className="strip-plant"
          d={`M${x} ${foot} V${top} M${x} ${foot - (foot - top) * 0.45} l-5 -4 M${x} ${foot - (foot - top) * 0.65} l5 -4`}
        />
      ))}
      <rect
        className="strip-soil"
        x="0"
        y={drawing.surface}
        width={width}
        height={height - drawing.surface}
      />
      {drawing.clumps.map(({ x, y, width: wide, height: high, stuff }) => (
        <rect
          key={`${x} ${y}`}
          className={`strip-layer strip-${stuff}`}
          x={x}
          y={y}
          width={wide}
          height={high}
        />
      ))}
      {drawing.dots.map(({ x, y }) => (
        <circle key={`${x} ${y}`} className="strip-dot" cx={x} cy={y} r="2.4" />
      ))}
    </svg>
  );
}
