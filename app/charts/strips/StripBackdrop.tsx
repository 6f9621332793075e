import type { CalendarStretch } from '../season/calendar';
import type { Stretch } from '../season/geometry';
import type { StripLayout } from './layout';

/** Behind a strip: every other month as a mown stripe, the imagined days hatched. */
export function StripBackdrop(props: {
  readonly layout: StripLayout;
  readonly months: readonly CalendarStretch[];
  readonly imagined: readonly Stretch[];
  readonly weaves: string;
  readonly bottom: number;
}) {
  const { layout, bottom } = props;
  return (
    <g>
      {props.months
        .filter(({ striped }) => striped)
        .map(({ from, to }) => (
          <rect
            key={from}
            className="chart-stripe"
            x={layout.x(from)}
            y={0}
            width={layout.x(to + 1) - layout.x(from)}
            height={bottom}
          />
        ))}
      {props.imagined.map(({ x, width }) => (
        <rect
          key={x}
          x={x}
          y={0}
          width={width}
          height={bottom}
          fill={`url(#${props.weaves}-imagined)`}
        />
      ))}
    </g>
  );
}
