import { rangeGeometry, type RangeScale, type RangeValue } from './geometry';

const width = 148;
const height = 16;
const inset = 5;

/**
 * A range as a furrow with a seed in it: the line is the whole scale, the furrow what is likely, the
 * seed the likely value. Only an ornament of the numbers beside it, so it is not read out. An
 * estimate's furrow is drawn broken.
 */
export function RangeMark(props: {
  readonly value: RangeValue;
  readonly scale: RangeScale;
  readonly isEstimate: boolean;
}) {
  const { low, typical, high } = rangeGeometry(props.value, props.scale, width, inset);
  const middle = height / 2;
  return (
    <svg
      className={props.isEstimate ? 'range-mark range-estimate' : 'range-mark'}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      aria-hidden="true"
      focusable="false"
    >
      <line className="range-scale" x1={inset} x2={width - inset} y1={middle} y2={middle} />
      <line
        className="range-furrow"
        x1={low}
        x2={Math.max(high, low + 1)}
        y1={middle}
        y2={middle}
      />
      <ellipse className="range-seed" cx={typical} cy={middle} rx={3} ry={5.5} />
    </svg>
  );
}
