import type { ReactNode } from 'react';
import type { StripDays } from './StripsChart';
import { StripBackdrop } from './StripBackdrop';

/** The drawing of one strip on the days of all: its months and imagined days lie behind what it holds. */
export function StripFrame(props: {
  /** whose it is, where it is taken away */
  readonly name: string;
  readonly days: Pick<StripDays, 'layout' | 'months' | 'imagined' | 'weaves'>;
  readonly height: number;
  /** how far down the days behind it reach */
  readonly bottom: number;
  readonly children: ReactNode;
}) {
  const { days, height } = props;
  const { width } = days.layout;
  return (
    <svg
      className="chart-drawing"
      data-name={props.name}
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      aria-hidden="true"
      focusable="false"
    >
      <StripBackdrop
        layout={days.layout}
        months={days.months}
        imagined={days.imagined}
        weaves={days.weaves}
        bottom={props.bottom}
      />
      {props.children}
    </svg>
  );
}
