import type { NitrateGeometry, SupplyGeometry } from './geometry';
import type { SeasonLayout } from './layout';
import type { DayReading } from './reading';

/** The chosen day across all panels, with a dot on each line at its value. */
export function Crosshair(props: {
  readonly reading: DayReading;
  readonly layout: SeasonLayout;
  readonly supply: SupplyGeometry;
  readonly nitrate: NitrateGeometry;
  /** today has a line of its own */
  readonly onToday: boolean;
  /** the line's pieces: it leaves out where words lie */
  readonly pieces: (x: number) => string;
}) {
  const { reading, layout } = props;
  const evening = layout.x(reading.day + 1);
  const dots = [
    ...(reading.demand > 0 ? [props.supply.y(reading.demand), props.supply.y(reading.got)] : []),
    props.nitrate.y(reading.readyTop),
  ];
  return (
    <g>
      {layout.panels.map((panel) => (
        <rect
          key={panel.top}
          className="chart-cross-day"
          x={layout.x(reading.day)}
          y={panel.top}
          width={Math.max(1, evening - layout.x(reading.day))}
          height={panel.bottom - panel.top}
        />
      ))}
      {!props.onToday && <path className="chart-cross" d={props.pieces(evening)} />}
      {dots.map((y, index) => (
        <circle key={index} className="chart-cross-dot" cx={evening} cy={y} r="4" />
      ))}
    </g>
  );
}
