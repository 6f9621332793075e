import { scaleLinear } from 'd3-scale';
import { area, line } from 'd3-shape';
import type { SeasonResult } from '../../core/season/result';
import type { ChartUnits } from '../../words/chartUnits';
import type { DaySpan } from './data';
import type { AxisTick } from './geometry';
import type { SeasonLayout } from './layout';

/** The warmth of the days shown: air from its coldest to its warmest hour, and the soil. */
export interface WarmthGeometry {
  readonly y: (celsius: number) => number;
  /** in the shown unit; frost is marked by a line of its own */
  readonly ticks: readonly AxisTick[];
  /** closed outline */
  readonly air: string;
  readonly soil: string;
  /** px of 0 °C; null: out of the scale */
  readonly frost: number | null;
}

/**
 * The warmth strip. Each day is a step from its left edge to its right one, so that a frost stands
 * on its day however near one looks.
 */
export function warmthGeometry(
  result: Pick<SeasonResult, 'firstDay' | 'airMinimum' | 'airMaximum' | 'soilTemperature'>,
  span: DaySpan,
  layout: SeasonLayout,
  { warmth }: Pick<ChartUnits, 'warmth'>,
): WarmthGeometry {
  const panel = layout.warmth;
  const days = Array.from({ length: span.to - span.from + 1 }, (_value, index) => {
    const at = span.from - result.firstDay + index;
    return {
      day: span.from + index,
      low: result.airMinimum[at] ?? 0,
      high: result.airMaximum[at] ?? 0,
      soil: result.soilTemperature[at] ?? 0,
    };
  });
  const low = days.reduce((least, one) => Math.min(least, one.low, one.soil), Infinity);
  const high = days.reduce((most, one) => Math.max(most, one.high, one.soil), -Infinity);
  const room = Math.max(1, (high - low) * 0.06);
  const y = scaleLinear()
    .domain([low - room, high + room])
    .range([panel.bottom, panel.top]);
  const shown = (celsius: number) => celsius * warmth.perInside + warmth.zero;
  const ticks = scaleLinear()
    .domain([shown(low - room), shown(high + room)])
    .ticks(3)
    .map((value) => ({ value, y: y((value - warmth.zero) / warmth.perInside) }));
  const steps = days.flatMap((one) => [
    { ...one, x: layout.x(one.day) },
    { ...one, x: layout.x(one.day + 1) },
  ]);
  type Step = (typeof steps)[number];
  return {
    y: (celsius) => y(celsius),
    ticks,
    air:
      area<Step>()
        .x(({ x }) => x)
        .y0((one) => y(one.low))
        .y1((one) => y(one.high))(steps) ?? '',
    soil:
      line<Step>()
        .x(({ x }) => x)
        .y((one) => y(one.soil))(steps) ?? '',
    frost: low - room < 0 && high + room > 0 ? y(0) : null,
  };
}
