import { type DayNumber, dayFromParts, partsFromDay, weekdayOf } from '../../core/days';
import type { ChartUnits } from '../../words/chartUnits';
import { dayShort, monthShort, monthWord } from '../../words/chartFormat';
import type { DaySpan, Zoom } from './data';

/** A stretch of days that gets one label and one stripe: a month, a week or a day. */
export interface CalendarStretch extends DaySpan {
  readonly label: string;
  /** every other one is striped; the same stretch keeps its stripe however far one has moved */
  readonly striped: boolean;
}

function startOf(zoom: Zoom, day: DayNumber): DayNumber {
  if (zoom === 'season') {
    const { year, month } = partsFromDay(day);
    return dayFromParts(year, month, 1);
  }
  return zoom === 'month' ? day - weekdayOf(day) : day;
}

function nextStart(zoom: Zoom, start: DayNumber): DayNumber {
  if (zoom !== 'season') return zoom === 'month' ? start + 7 : start + 1;
  const { year, month } = partsFromDay(start);
  return month === 12 ? dayFromParts(year + 1, 1, 1) : dayFromParts(year, month + 1, 1);
}

/** The months, weeks or days of a span, the first and last cut off at its ends. */
export function calendarStretches(
  zoom: Zoom,
  span: DaySpan,
  units: Pick<ChartUnits, 'dayFirst'>,
  pxPerDay: number,
): readonly CalendarStretch[] {
  const stretches: CalendarStretch[] = [];
  for (let start = startOf(zoom, span.from); start <= span.to; start = nextStart(zoom, start)) {
    const end = nextStart(zoom, start) - 1;
    const { month, dayOfMonth } = partsFromDay(start);
    const label =
      zoom === 'season'
        ? pxPerDay * 30 > 76
          ? monthWord(month)
          : pxPerDay * 30 > 30
            ? monthShort(month)
            : monthShort(month).slice(0, 1)
        : zoom === 'month'
          ? dayShort(Math.max(start, span.from), units)
          : dayOfMonth === 1 || start === span.from
            ? dayShort(start, units)
            : String(dayOfMonth);
    const number =
      zoom === 'season' ? month : zoom === 'month' ? Math.floor((start + 3) / 7) : start;
    stretches.push({
      from: Math.max(start, span.from),
      to: Math.min(end, span.to),
      label,
      striped: number % 2 === 0,
    });
  }
  return stretches;
}
