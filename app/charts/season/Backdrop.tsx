import { seasonPanelWords } from '../../words/seasonChart';
import type { CalendarStretch } from './calendar';
import type { Stretch } from './geometry';
import { textWidth } from '../textWidth';
import { dayRowLift, type SeasonLayout } from './layout';

/** Behind everything: the months (weeks, days) as mown stripes, the imagined days hatched, and the calendar along the foot. */
export function Backdrop(props: {
  readonly layout: SeasonLayout;
  readonly calendar: readonly CalendarStretch[];
  readonly imagined: readonly Stretch[];
  readonly weaves: string;
}) {
  const { layout } = props;
  const top = layout.supply.top;
  const bottom = layout.axis.top;
  const wide = (stretch: CalendarStretch) => layout.x(stretch.to + 1) - layout.x(stretch.from);
  return (
    <g>
      {props.calendar.map((stretch) => (
        <g key={stretch.from}>
          {stretch.striped && (
            <rect
              className="chart-stripe"
              x={layout.x(stretch.from)}
              y={top}
              width={wide(stretch)}
              height={bottom - top}
            />
          )}
          <path className="chart-tick" d={`M${layout.x(stretch.from)} ${bottom} V${bottom + 6}`} />
          {wide(stretch) > 12 && (
            <text
              className="chart-number chart-number-middle"
              x={layout.x(stretch.from) + wide(stretch) / 2}
              y={bottom + 19}
            >
              {stretch.label}
            </text>
          )}
        </g>
      ))}
      {props.imagined.flatMap((stretch) =>
        layout.panels.map((panel) => (
          <rect
            key={`${stretch.x} ${panel.top}`}
            x={stretch.x}
            y={panel.top}
            width={stretch.width}
            height={panel.bottom - panel.top}
            fill={`url(#${props.weaves}-imagined)`}
          />
        )),
      )}
    </g>
  );
}

/** In front of the panels: today, and where the imagined days begin. */
export function TodayLine(props: {
  readonly layout: SeasonLayout;
  /** null: not in view */
  readonly today: number | null;
  readonly imagined: readonly Stretch[];
  /** the line's pieces: it leaves out where words lie */
  readonly pieces: (x: number) => string;
}) {
  const { layout } = props;
  const row = layout.supply.top - dayRowLift;
  const from = props.imagined.at(-1);
  const x = props.today === null ? 0 : layout.x(props.today + 0.5);
  const wordsWide = textWidth(seasonPanelWords.imagined);
  const todayFrom = x - 5 - textWidth(seasonPanelWords.today, true);
  // where weather ends before today both words would lie on each other: these end where it ends
  const wouldMeet =
    props.today !== null && from !== undefined && from.x < x && from.x + 6 + wordsWide > todayFrom;
  // where it ends a few days before, nothing fits between: these stand behind today
  const isBehind = wouldMeet && from.x > todayFrom - 6 && layout.width - x > wordsWide + 6;
  const endsAt = Math.min(from?.x ?? 0, todayFrom - 6);
  const fits =
    isBehind || (wouldMeet ? endsAt > wordsWide : layout.width - (from?.x ?? 0) > wordsWide);
  return (
    <g>
      {props.today !== null && (
        <g>
          <path className="chart-today" d={props.pieces(x)} />
          <path className="chart-today" d={`M${x} ${row - 9} V${layout.supply.top}`} />
          <text className="chart-label chart-label-today" x={x - 5} y={row}>
            {seasonPanelWords.today}
          </text>
        </g>
      )}
      {from && fits && (
        <text
          className={`chart-label chart-label-imagined ${wouldMeet && !isBehind ? 'chart-label-end' : ''}`}
          x={isBehind ? x + 6 : wouldMeet ? endsAt : from.x + 6}
          y={row}
        >
          {seasonPanelWords.imagined}
        </text>
      )}
    </g>
  );
}
