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
  return (
    <text className="chart-title" x={props.layout.left} y={props.panel.top - (props.lift ?? 9)}>
      {props.words}
      {props.small !== undefined && (
        <tspan className="chart-title-small" dx="8">
          {props.small}
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
