import type { KeyboardEvent, PointerEvent } from 'react';
import type { DayNumber } from '../../core/days';
import { dayOfKey } from '../dayOfKey';
import { dayFull } from '../../words/chartFormat';
import type { ChartUnits } from '../../words/chartUnits';
import { seasonPlaceWords as words } from '../../words/seasonPlaceWords';
import type { CalendarStretch } from '../season/calendar';
import type { Stretch } from '../season/geometry';
import { textWidth } from '../textWidth';
import { Weaves } from '../weaves/Weaves';
import type { StripLayout } from './layout';

const height = 52;
/** the row of today and the imagined days, and where the months begin below the day's mark [px] */
const rows = { today: 13, mark: 26, months: 27 } as const;
/** The calendar above all strips, and the day that is read on them. */
export function DayAxis(props: {
  readonly layout: StripLayout;
  readonly months: readonly CalendarStretch[];
  readonly imagined: readonly Stretch[];
  readonly today: DayNumber | null;
  readonly day: DayNumber;
  readonly units: Pick<ChartUnits, 'dayFirst'>;
  readonly weaves: string;
  readonly onDay: (day: DayNumber, how: 'key' | 'pointer') => void;
}) {
  const { layout, months, day, today, imagined, units } = props;
  const { span } = layout;
  const onKeyDown = (event: KeyboardEvent) => {
    const wanted = dayOfKey(event, day, span);
    if (wanted === null) return;
    event.preventDefault();
    props.onDay(Math.max(span.from, Math.min(span.to, wanted)), 'key');
  };
  const onPointer = (event: PointerEvent<HTMLElement>) => {
    const px = event.clientX - event.currentTarget.getBoundingClientRect().left;
    props.onDay(layout.dayAt(px), 'pointer');
  };
  const todayX = today === null ? null : layout.x(today + 0.5);
  const ahead = imagined.at(-1);
  const aheadX = ahead ? Math.max(ahead.x + 6, (todayX ?? 0) + 6) : 0;
  const pointer = layout.x(day + 0.5);
  return (
    <div
      className="strip-axis chart-reader"
      role="slider"
      tabIndex={0}
      aria-label={words.day}
      aria-valuemin={0}
      aria-valuemax={span.to - span.from}
      aria-valuenow={day - span.from}
      aria-valuetext={dayFull(day, units)}
      onKeyDown={onKeyDown}
      onPointerDown={onPointer}
      onPointerMove={(event) => event.buttons > 0 && onPointer(event)}
    >
      <svg
        className="chart-drawing"
        viewBox={`0 0 ${layout.width} ${height}`}
        width={layout.width}
        height={height}
        aria-hidden="true"
        focusable="false"
      >
        <Weaves prefix={props.weaves} />
        <defs>
          <pattern id={`${props.weaves}-ahead`} width="5" height="5" patternUnits="userSpaceOnUse">
            <path className="strip-weave" d="M1 0 V5 M3.5 0 V5" />
          </pattern>
        </defs>
        {todayX !== null && (
          <>
            <path className="chart-today" d={`M${todayX} 4 V${rows.mark}`} />
            <text
              className={`chart-label chart-label-today${todayX < 60 ? ' strip-after' : ''}`}
              x={todayX < 60 ? todayX + 5 : todayX - 5}
              y={rows.today}
            >
              {words.today}
            </text>
          </>
        )}
        {ahead && layout.width - aheadX > textWidth(words.imagined) && (
          <text className="chart-label chart-label-imagined" x={aheadX} y={rows.today}>
            {words.imagined}
          </text>
        )}
        {months.map(({ from, to, label }) => (
          <g key={from}>
            <path className="chart-tick" d={`M${layout.x(from)} ${rows.months + 1} V${height}`} />
            {layout.x(to + 1) - layout.x(from) > 10 && (
              <text
                className="chart-number chart-number-middle"
                x={(layout.x(from) + layout.x(to + 1)) / 2}
                y={height - 10}
              >
                {label}
              </text>
            )}
          </g>
        ))}
        <path className="chart-base" d={`M${layout.left} ${height - 0.5} H${layout.right}`} />
        <path className="chart-cross-dot" d={`M${pointer} ${rows.mark} l-6 -9 h12 Z`} />
      </svg>
    </div>
  );
}
