import type { AxisTick } from './geometry';
import type { Panel, SeasonLayout } from './layout';

/** The name of a panel above its left edge, with its unit in small. */
export function PanelTitle(props: {
  readonly layout: SeasonLayout;
  readonly panel: Panel;
  readonly words: string;
  readonly small?: string;
  /** px above the panel */
  readonly lift?: number;
}) {
  const { layout, small } = props;
  const x = layout.isNarrow ? 0 : layout.left;
  const y = props.panel.top - (props.lift ?? 9);
  const isBelow = layout.isNarrow && small !== undefined;
  return (
    <text className="chart-title" x={x} y={isBelow ? y - 15 : y}>
      {props.words}
      {small !== undefined && (
        <tspan className="chart-title-small" {...(isBelow ? { x, y } : { dx: '8' })}>
          {small}
        </tspan>
      )}
    </text>
  );
}

/** Numbers at the left edge and their hair lines across; the line at nought is the strong one. */
export function ValueAxis(props: {
  readonly layout: SeasonLayout;
  readonly panel: Panel;
  readonly ticks: readonly AxisTick[];
}) {
  const { layout, ticks } = props;
  return (
    <g>
      {ticks.map((tick) => (
        <g key={tick.y}>
          <path
            className={tick.value === 0 ? 'chart-base' : 'chart-grid'}
            d={`M${layout.left} ${tick.y} H${layout.right}`}
          />
          <text
            className="chart-number chart-number-left"
            x={layout.left - 7}
            y={tick.y}
            dy="0.35em"
          >
            {tick.value}
          </text>
        </g>
      ))}
    </g>
  );
}
