import { lawnGeometry, type LawnChartData } from '../lawn/geometry';
import { LawnMarks } from '../lawn/LawnMarks';
import type { CalendarStretch } from '../season/calendar';
import { StripFrame } from './StripFrame';
import type { Stretch } from '../season/geometry';
import type { StripLayout } from './layout';

const heights = { height: 84, top: 8, bottom: 6, ticks: 2 } as const;
/** where an upright line may run in it: no words lie there */
export const lawnStage = { words: [], foot: heights.height - heights.bottom } as const;

/** What a lawn should give week by week and what was mown of it, on the same days as the beds. */
export function LawnStrip(props: {
  readonly name: string;
  readonly data: LawnChartData;
  readonly layout: StripLayout;
  readonly months: readonly CalendarStretch[];
  readonly imagined: readonly Stretch[];
  readonly todayX: number | null;
  readonly weaves: string;
}) {
  const { layout, data } = props;
  const frame = { ...heights, left: layout.left, right: layout.width - layout.right };
  const drawing = lawnGeometry(data, layout.width, frame);
  return (
    <StripFrame name={props.name} days={props} height={drawing.height} bottom={drawing.floor}>
      <LawnMarks drawing={drawing} />
      <path className="chart-base" d={`M${drawing.left} ${drawing.floor} H${drawing.right}`} />
      {props.todayX !== null && (
        <path className="chart-today" d={`M${props.todayX} 0 V${drawing.floor}`} />
      )}
    </StripFrame>
  );
}
