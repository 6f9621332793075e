import { scaleLinear } from 'd3-scale';
import { area, curveLinear, line } from 'd3-shape';
import { dayKinds } from '../../core/season/input';
import type { SeasonResult } from '../../core/season/result';
import { gramsPerM2FromMgPerKg } from '../../core/units';
import type { ChartUnit } from '../../words/chartUnits';
import { testWords } from '../../words/seasonChart';
import { textWidth } from '../textWidth';
import type { LikelyNitrate, SeasonChartData } from './data';
import { likelyWithin } from './likely';
import type { Panel, SeasonLayout } from './layout';
import type { BandName, SeasonSeries } from './series';

export interface AxisTick {
  readonly y: number;
  /** in the shown unit */
  readonly value: number;
}

export interface BandShape {
  readonly name: BandName;
  /** closed outline */
  readonly path: string;
  /** its upper edge alone */
  readonly edge: string;
  /** thick enough to be told from its edge on some evening */
  readonly isSeen: boolean;
  /** lower and upper edge in g/m2 above nought */
  readonly low: Float64Array;
  readonly high: Float64Array;
}

export interface EndLabel {
  readonly name: BandName | 'demand' | 'got' | 'usable' | 'gone';
  /** where the thing itself ends [px] */
  readonly at: number;
  /** g/m2 on the last evening shown */
  readonly grams: number;
}

export interface SupplyGeometry {
  readonly panel: Panel;
  readonly y: (grams: number) => number;
  /** below nought the value is what is gone, told without a minus */
  readonly ticks: readonly AxisTick[];
  readonly bands: readonly BandShape[];
  /** what is gone, as a band of its own below nought */
  readonly gone: string;
  /** all bands without what is gone: what the crops took, or can still take */
  readonly usable: string;
  readonly demand: string;
  readonly got: string;
  readonly labels: readonly EndLabel[];
}

export interface EnoughLine {
  readonly name: 'from' | 'past';
  readonly mgPerKg: number;
  readonly y: number;
}

export interface NitrateGeometry {
  readonly panel: Panel;
  readonly y: (grams: number) => number;
  /** in g/m2 on the left */
  readonly ticks: readonly AxisTick[];
  /** in mg/kg on the right */
  readonly labTicks: readonly AxisTick[];
  readonly path: string;
  /** where 8 imagined seasons of 10 lie: closed outline, and its two edges; null: not known */
  readonly likely: { readonly path: string; readonly edges: string } | null;
  /** from where on there is enough, and more than enough */
  readonly enough: readonly EnoughLine[];
  readonly tests: readonly {
    readonly x: number;
    readonly y: number;
    readonly mgPerKg: number;
    /** where its words run over neither today's line nor the edge; null: nowhere */
    readonly side: 'after' | 'before' | null;
  }[];
}

export interface Stretch {
  readonly x: number;
  readonly width: number;
}

/** a band thinner than this on the last evening is named in the reading and the table only */
const leastGrams = 0.05;
const leastShare = 0.01;

const topOf = (...series: readonly Float64Array[]): number =>
  series.reduce((top, values) => values.reduce((most, value) => Math.max(most, value), top), 0);

function axis(panel: Panel, least: number, most: number, unit: ChartUnit, count: number) {
  // ticks are round in the unit a person reads, places are in g/m2
  const shown = scaleLinear().domain([least * unit.perInside, most * unit.perInside]);
  const y = scaleLinear().domain([least, most]).range([panel.bottom, panel.top]);
  const ticks = shown.ticks(count).map((value) => ({ value, y: y(value / unit.perInside) }));
  return { y: (grams: number) => y(grams), ticks };
}

const lineOver = (layout: SeasonLayout, from: number, y: (index: number) => number) =>
  line<number>()
    .x((_value, index) => layout.x(from + index))
    .y((_value, index) => y(index))
    .curve(curveLinear);

/**
 * The upper panel. Bands by source stand on each other from nought up, so that every number beside
 * the drawing is a height in it; what is lost or held back hangs below nought as a band of its own.
 * A line through the stack, all without what is gone, stands against what the crops could use.
 */
export function supplyGeometry(
  series: SeasonSeries,
  layout: SeasonLayout,
  unit: ChartUnit,
): SupplyGeometry {
  const panel = layout.supply;
  const at = (values: Float64Array, index: number): number => values[index] ?? 0;
  const hanging = series.gone.map((grams) => -grams);
  const nought = new Float64Array(series.supply.length);
  const most = Math.max(1, topOf(series.supply, series.demand, series.got));
  const { y, ticks } = axis(panel, -topOf(series.gone) * 1.04, most * 1.04, unit, 6);
  const edges = Array.from({ length: series.supply.length }, (_value, index) => index);
  const draw = (values: Float64Array): string =>
    lineOver(layout, series.span.from, (index) => y(at(values, index)))(edges) ?? '';
  const between = (low: Float64Array, high: Float64Array): string =>
    area<number>()
      .x((index) => layout.x(series.span.from + index))
      .y0((index) => y(at(low, index)))
      .y1((index) => y(at(high, index)))(edges) ?? '';

  let low: Float64Array = nought;
  const bands = series.bands.map((band): BandShape => {
    const under = low;
    const high = band.grams.map((grams, index) => grams + at(under, index));
    low = high;
    return {
      name: band.name,
      path: between(under, high),
      edge: draw(high),
      isSeen: topOf(band.grams) >= leastGrams,
      low: under,
      high,
    };
  });

  const last = series.supply.length - 1;
  const leastLabelled = Math.max(leastGrams, at(series.supply, last) * leastShare);
  const labels: EndLabel[] = [];
  for (const band of bands) {
    const grams = at(band.high, last) - at(band.low, last);
    const middle = (at(band.high, last) + at(band.low, last)) / 2;
    if (grams >= leastLabelled) labels.push({ name: band.name, at: y(middle), grams });
  }
  const demand = at(series.demand, last);
  if (demand > 0) {
    labels.push({ name: 'demand', at: y(demand), grams: demand });
    labels.push({ name: 'got', at: y(at(series.got, last)), grams: at(series.got, last) });
  }
  const gone = at(series.gone, last);
  const hasGone = gone >= leastLabelled;
  if (hasGone) {
    const usable = at(series.usable, last);
    labels.push({ name: 'usable', at: y(usable), grams: usable });
  }
  if (hasGone) labels.push({ name: 'gone', at: y(-gone / 2), grams: gone });
  return {
    panel,
    y,
    ticks: ticks.map((tick) => ({ ...tick, value: Math.abs(tick.value) })),
    bands,
    gone: between(hanging, nought),
    usable: draw(series.usable),
    demand: draw(series.demand),
    got: draw(series.got),
    labels: labels.toSorted((a, b) => a.at - b.at),
  };
}

/**
 * The middle panel: what is ready in the top 30 cm, where it lies in most imagined seasons, from
 * where on it is enough, and laboratory tests.
 */
export function nitrateGeometry(
  series: SeasonSeries,
  layout: SeasonLayout,
  data: Pick<SeasonChartData, 'cropBand' | 'tests' | 'likely' | 'bulkDensityKgPerL' | 'units'> & {
    readonly result: Pick<SeasonResult, 'today'>;
  },
): NitrateGeometry {
  const panel = layout.nitrate;
  const grams = (mgPerKg: number) => gramsPerM2FromMgPerKg(mgPerKg, data.bulkDensityKgPerL, 30);
  const shownTests = (data.tests ?? []).filter(
    ({ day }) => day >= series.span.from && day <= series.span.to,
  );
  const likely = likelyWithin(data.likely ?? [], series.span);
  const most = Math.max(
    1,
    topOf(series.readyTop),
    ...likely.map(({ high }) => grams(high)),
    data.cropBand ? grams(data.cropBand.highMgPerKg) : 0,
    ...shownTests.map((test) => grams(test.mgPerKg)),
  );
  const { y, ticks } = axis(panel, 0, most * 1.12, data.units.nitrogen, 3);
  const labTicks = scaleLinear()
    .domain([0, (most * 1.12) / grams(1)])
    .ticks(3)
    .map((value) => ({ value, y: y(grams(value)) }));
  const edges = Array.from(series.readyTop);
  const { cropBand } = data;
  const enough: EnoughLine[] = cropBand
    ? [
        { name: 'from', mgPerKg: cropBand.lowMgPerKg, y: y(grams(cropBand.lowMgPerKg)) },
        ...(cropBand.highMgPerKg > cropBand.lowMgPerKg
          ? [
              {
                name: 'past' as const,
                mgPerKg: cropBand.highMgPerKg,
                y: y(grams(cropBand.highMgPerKg)),
              },
            ]
          : []),
      ]
    : [];
  const band = likelyShape(likely, layout, (mgPerKg) => y(grams(mgPerKg)));
  return {
    panel,
    y,
    ticks,
    labTicks,
    path:
      lineOver(layout, series.span.from, (index) => y(series.readyTop[index] ?? 0))(edges) ?? '',
    likely: band,
    enough,
    tests: shownTests.map(({ day, mgPerKg }) => {
      const x = layout.x(day + 0.5);
      const wide = textWidth(testWords(mgPerKg)) + 14;
      const today = layout.x(data.result.today + 0.5);
      const isFree = (from: number, to: number) =>
        from >= layout.left && to <= layout.right && (today <= from || today >= to);
      const side = isFree(x, x + wide) ? 'after' : isFree(x - wide, x) ? 'before' : null;
      return { x, y: y(grams(mgPerKg)), mgPerKg, side };
    }),
  };
}

function likelyShape(
  likely: readonly LikelyNitrate[],
  layout: SeasonLayout,
  y: (mgPerKg: number) => number,
): NitrateGeometry['likely'] {
  if (likely.length < 2) return null;
  const x = ({ day }: LikelyNitrate): number => layout.x(day + 1);
  const edge = (end: 'low' | 'high'): string =>
    line<LikelyNitrate>()
      .x(x)
      .y((one) => y(one[end]))(likely) ?? '';
  return {
    path:
      area<LikelyNitrate>()
        .x(x)
        .y0((one) => y(one.low))
        .y1((one) => y(one.high))(likely) ?? '',
    edges: `${edge('low')} ${edge('high')}`,
  };
}

/** The days of the view that are imagined, as stretches in px. */
export function imaginedStretches(
  result: Pick<SeasonResult, 'kind' | 'firstDay'>,
  series: Pick<SeasonSeries, 'span'>,
  layout: Pick<SeasonLayout, 'x'>,
): readonly Stretch[] {
  const stretches: Stretch[] = [];
  const imagined = dayKinds.indexOf('imagined');
  const isImagined = (day: number) => result.kind[day - result.firstDay] === imagined;
  for (let day = series.span.from; day <= series.span.to; day += 1) {
    if (!isImagined(day)) continue;
    const from = day;
    while (day < series.span.to && isImagined(day + 1)) day += 1;
    stretches.push({ x: layout.x(from), width: layout.x(day + 1) - layout.x(from) });
  }
  return stretches;
}
