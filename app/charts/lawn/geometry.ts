import { scaleLinear } from 'd3-scale';
import type { DayNumber } from '../../core/days';

export interface LawnChartData {
  readonly firstDay: DayNumber;
  readonly lastDay: DayNumber;
  readonly today: DayNumber;
  /** one a week; in the unit of `unit` */
  readonly weeks: readonly {
    readonly from: DayNumber;
    readonly low: number;
    readonly typical: number;
    readonly high: number;
    readonly usual: number;
  }[];
  readonly cuts: readonly {
    readonly from: DayNumber | null;
    readonly day: DayNumber;
    readonly aWeek: number | null;
  }[];
}

/** Whether there is anything to draw: weeks or mowings that come to more than nothing. */
export const hasGrowth = ({ weeks, cuts }: Pick<LawnChartData, 'weeks' | 'cuts'>): boolean =>
  weeks.some(({ high, usual }) => Math.max(high, usual) > leastGrowth) ||
  cuts.some(({ aWeek }) => (aWeek ?? 0) > leastGrowth);

/** less is nothing, in any unit [unit of the chart] */
const leastGrowth = 1e-6;

/** Mowings up to so many times what is expected at most are drawn as high as they are. */
const tallest = 2;
/** How far above what is expected at most the drawing ends where one goes through its top. */
const airAbove = 1.25;

const mostExpected = ({ weeks }: Pick<LawnChartData, 'weeks'>): number =>
  Math.max(0, ...weeks.map(({ high, usual }) => Math.max(high, usual)));

/** Whether a mowing is so far above all that is expected that it is drawn torn off at the top. */
export const isTornOff = (data: Pick<LawnChartData, 'weeks'>, aWeek: number): boolean =>
  mostExpected(data) > leastGrowth && aWeek > tallest * mostExpected(data);

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export interface LawnGeometry {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  readonly floor: number;
  readonly top: number;
  readonly todayX: number;
  readonly ticks: readonly { readonly value: number; readonly y: number }[];
  /** blades of grass, one a week, each as tall as what is expected to grow in it */
  readonly blades: readonly {
    readonly path: string;
    readonly isAhead: boolean;
    readonly from: DayNumber;
  }[];
  /** the likely range: from its low to its high, week by week */
  readonly band: string;
  /** as its kind usually grows */
  readonly usual: string;
  /** each mowing as what grew a week, over the days it grew: as wide as those days, as high as the weekly growth */
  readonly cuts: readonly (Box & { readonly day: DayNumber })[];
  /** mowings far above all that is expected: they go through the top, their growth of a week written beside */
  readonly torn: readonly (Box & { readonly day: DayNumber; readonly aWeek: number })[];
  /** mowings whose days of growth are not known */
  readonly marks: readonly { readonly x: number; readonly day: DayNumber }[];
  readonly x: (day: DayNumber) => number;
  readonly y: (value: number) => number;
}

/** Where the days and the growth lie in a drawing [px]. */
export interface LawnFrame {
  readonly height: number;
  readonly left: number;
  /** from the right edge */
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** about how many numbers stand at the left */
  readonly ticks: number;
}

const alone: LawnFrame = { height: 230, left: 44, right: 16, top: 26, bottom: 30, ticks: 4 };
const week = 7;

/** A blade that leans a little, now to one side, now to the other, its tip at the value. */
const blade = (x: number, floor: number, tip: number, half: number, lean: number): string =>
  `M${x - half} ${floor} Q${x - half * 0.6} ${(floor + tip) / 2} ${x + lean} ${tip} ` +
  `Q${x + half * 0.8} ${(floor + tip) / 2} ${x + half} ${floor} Z`;

/**
 * Places of the yield chart: days run from left to right, growth of a week upwards. Pure, so that
 * every length can be held against the data.
 */
export function lawnGeometry(
  data: LawnChartData,
  width: number,
  frame: LawnFrame = alone,
): LawnGeometry {
  const { left, top, height } = frame;
  const right = width - frame.right;
  const floor = height - frame.bottom;
  const isTorn = ({ aWeek }: { readonly aWeek: number | null }): boolean =>
    aWeek !== null && isTornOff(data, aWeek);
  // one slip of the pen would press everything else flat
  const highest = Math.max(
    mostExpected(data) * (data.cuts.some(isTorn) ? airAbove : 1),
    ...data.cuts.map((cut) => (isTorn(cut) ? 0 : (cut.aWeek ?? 0))),
    leastGrowth,
  );
  const y = scaleLinear([0, highest], [floor, top]).nice(frame.ticks);
  const x = scaleLinear([data.firstDay, data.lastDay + 1], [left, right]);
  const half = Math.max(1, ((right - left) / Math.max(1, data.weeks.length)) * 0.36);
  const middle = (from: DayNumber): number => x(Math.min(from + week / 2, data.lastDay + 1));
  const along = (of: (one: LawnChartData['weeks'][number]) => number): string =>
    data.weeks.map((one) => `${middle(one.from)} ${y(of(one))}`).join(' L');
  const back = [...data.weeks]
    .reverse()
    .map((one) => `${middle(one.from)} ${y(one.low)}`)
    .join(' L');
  return {
    width,
    height,
    left,
    right,
    floor,
    top,
    todayX: x(data.today + 1),
    // without growth there is no scale to read
    ticks: hasGrowth(data) ? y.ticks(frame.ticks).map((value) => ({ value, y: y(value) })) : [],
    blades: data.weeks.map(({ from, typical }, at) => ({
      path: blade(middle(from), floor, y(typical), half, half * (at % 2 === 0 ? 0.5 : -0.5)),
      isAhead: from > data.today,
      from,
    })),
    band: data.weeks.length > 0 ? `M${along(({ high }) => high)} L${back} Z` : '',
    usual: data.weeks.length > 0 ? `M${along(({ usual }) => usual)}` : '',
    torn: data.cuts.flatMap(({ from, day, aWeek }) =>
      from !== null && aWeek !== null && isTornOff(data, aWeek)
        ? [{ day, aWeek, x: x(from), y: top, width: x(day + 1) - x(from), height: floor - top }]
        : [],
    ),
    cuts: data.cuts.flatMap(({ from, day, aWeek }) =>
      from === null || aWeek === null || isTornOff(data, aWeek)
        ? []
        : [
            {
              day,
              x: x(from),
              y: y(aWeek),
              width: x(day + 1) - x(from),
              height: floor - y(aWeek),
            },
          ],
    ),
    marks: data.cuts.flatMap(({ from, day }) => (from === null ? [{ day, x: x(day + 0.5) }] : [])),
    x: (day) => x(day),
    y: (value) => y(value),
  };
}
