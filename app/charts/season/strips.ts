import { scaleLinear } from 'd3-scale';
import type { DayNumber } from '../../core/days';
import { dayKinds } from '../../core/season/input';
import type { PlantingResult, SeasonResult } from '../../core/season/result';
import type { NitrogenState } from '../../core/season/verdict';
import { dayShort } from '../../words/chartFormat';
import type { ChartUnit } from '../../words/chartUnits';
import { textWidth } from '../textWidth';
import type { DaySpan, LayerOnChart, PlantingOnChart, SeasonChartData } from './data';
import type { SeasonLayout } from './layout';

export interface StateSegment {
  readonly state: NitrogenState;
  readonly from: DayNumber;
  readonly to: DayNumber;
  readonly x: number;
  readonly width: number;
  readonly wordFits: boolean;
  /** where its word begins */
  readonly wordX: number;
}

const markWidth = 20;

/**
 * The state over past days in runs of one state: each weekly entry holds until the next, the last
 * one until yesterday, and today's own state is its own. Nothing is said of days to come.
 */
export function stateSegments(
  data: Pick<SeasonChartData, 'history' | 'verdict' | 'result'>,
  span: DaySpan,
  layout: SeasonLayout,
): readonly StateSegment[] {
  const { today } = data.result;
  const known = [
    ...(data.history ?? []).filter((entry) => entry.day < today),
    { day: today, state: data.verdict.state },
  ];
  const runs: { state: NitrogenState; from: DayNumber; to: DayNumber }[] = [];
  known.forEach((entry, index) => {
    const to = (known[index + 1]?.day ?? today + 1) - 1;
    const last = runs.at(-1);
    if (last?.state === entry.state) last.to = to;
    else runs.push({ state: entry.state, from: entry.day, to });
  });
  return runs.flatMap((run) => {
    const from = Math.max(run.from, span.from);
    const to = Math.min(run.to, span.to);
    if (to < from) return [];
    const x = layout.x(from);
    const width = layout.x(to + 1) - x;
    // today's word may run on into the days of which nothing is said
    const room = run.to === today ? layout.right - x : width;
    return [
      {
        state: run.state,
        from,
        to,
        x,
        width,
        wordFits: room > markWidth + 6 + textWidth(run.state),
        wordX: x + markWidth + 4,
      },
    ];
  });
}

export interface LayerMark {
  readonly layer: LayerOnChart;
  /** the middle of its day */
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  /** its date, where there is room for it */
  readonly label: string | null;
}

/** below the line of the layers: bars of what went into the soil, and dates [px] */
export const labelRoom = 24;
/** a strip of thin layers only is not blown up past this [mm] */
const leastDeepest = 20;

/** Depth at the upper end of the strip of layers, round in the shown unit [mm]. */
export function deepestShown(layers: readonly LayerOnChart[]): number {
  return layers.reduce((most, layer) => Math.max(most, layer.laidDepth), leastDeepest);
}

/** Layings as bars on their day, as tall as they were deep; the deepest in view fills the strip. */
export function layerMarks(
  data: Pick<SeasonChartData, 'layers' | 'units'>,
  span: DaySpan,
  layout: SeasonLayout,
): readonly LayerMark[] {
  const bottom = layout.layers.bottom - labelRoom;
  const shown = data.layers.filter((layer) => layer.day >= span.from && layer.day <= span.to);
  const deepest = deepestShown(shown);
  const height = scaleLinear()
    .domain([0, deepest])
    .range([0, bottom - layout.layers.top]);
  let free = -Infinity;
  return shown
    .toSorted((a, b) => a.day - b.day)
    .map((layer) => {
      const x = layout.x(layer.day + 0.5);
      const text = dayShort(layer.day, data.units);
      const half = textWidth(text) / 2;
      const fits = x - half > free && x + half <= layout.right;
      if (fits) free = x + half + 4;
      return {
        layer,
        x,
        width: Math.max(4, Math.min(12, layout.x(1) - layout.x(0) - 2)),
        top: bottom - height(layer.laidDepth),
        bottom,
        label: fits ? text : null,
      };
    });
}

export const stages = ['start', 'flower', 'pick', 'cleared'] as const;
export type Stage = (typeof stages)[number];

export interface StageMark {
  readonly stage: Stage;
  readonly day: DayNumber;
  readonly x: number;
}

/** A leaf on a stem: where it springs from, how long it is, and on which side. */
export interface Leaf {
  readonly x: number;
  readonly length: number;
  readonly isUp: boolean;
}

export interface PlantingBar {
  readonly id: string;
  readonly name: string;
  /** where its name begins: at its start, or before it where there is too little room after it */
  readonly nameX: number;
  readonly x: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  readonly marks: readonly StageMark[];
  readonly leaves: readonly Leaf[];
}

type PlantingRun = Pick<PlantingResult, 'id' | 'startDay' | 'clearingDay'>;
interface PlantingsWithRuns {
  readonly plantings: readonly PlantingOnChart[];
  readonly result: { readonly plantings: readonly PlantingRun[] };
}

/** The plantings that stand on some day of the view, each with its run: one row each. */
export const plantingsInView = (
  data: PlantingsWithRuns,
  span: DaySpan,
): readonly { readonly planting: PlantingOnChart; readonly run: PlantingRun }[] =>
  data.plantings.flatMap((planting) => {
    const run = data.result.plantings.find((candidate) => candidate.id === planting.id);
    const stands =
      run !== undefined &&
      run.startDay <= span.to &&
      (run.clearingDay === null || run.clearingDay > span.from);
    return stands ? [{ planting, run }] : [];
  });

/** Each planting as a bar over its days in the ground, with a mark at each of its stages in view. */
export function plantingBars(
  data: PlantingsWithRuns,
  span: DaySpan,
  layout: Pick<SeasonLayout, 'x' | 'width' | 'plantings'>,
): readonly PlantingBar[] {
  return plantingsInView(data, span).flatMap(({ planting, run }, index) => {
    const row = layout.plantings[index];
    if (!row) return [];
    const end = run.clearingDay ?? span.to + 1;
    const from = Math.max(run.startDay, span.from);
    const to = Math.min(end, span.to + 1);
    const bar = { x: layout.x(from), width: layout.x(to) - layout.x(from) };
    const nameWidth = textWidth(planting.name, true);
    const nameX = Math.max(0, Math.min(bar.x + 5, layout.width - nameWidth));
    const days: readonly (readonly [Stage, DayNumber | null])[] = [
      ['start', run.startDay],
      ['flower', planting.flowerDay],
      ['pick', planting.firstHarvestDay],
      ['cleared', run.clearingDay],
    ];
    const marks = days.flatMap(([stage, day]): StageMark[] => {
      if (day === null || day < span.from || day > span.to || day > end) return [];
      return [{ stage, day, x: layout.x(day) }];
    });
    const taken = marks.map((mark) => mark.x);
    const leaves = leavesAlong(run, end, layout).filter(
      (leaf) =>
        leaf.x > bar.x &&
        leaf.x < bar.x + bar.width - leafLengths.full &&
        taken.every((x) => Math.abs(x - leaf.x - leaf.length / 2) > leafLengths.full),
    );
    return [{ id: planting.id, name: planting.name, nameX, ...bar, ...row, marks, leaves }];
  });
}

/** between two leaves, and how long the first and the last are [px] */
const leafGap = 15;
const leafLengths = { first: 3, full: 8 } as const;

/** Leaves from start to end, in turn above and below, longer as the crop gets on. */
function leavesAlong(
  { startDay }: Pick<PlantingResult, 'startDay'>,
  end: DayNumber,
  layout: Pick<SeasonLayout, 'x'>,
): readonly Leaf[] {
  const from = layout.x(startDay);
  const to = layout.x(end);
  const count = Math.max(0, Math.floor((to - from) / leafGap));
  return Array.from({ length: count }, (_value, index): Leaf => {
    const along = (index + 0.5) / count;
    return {
      x: from + along * (to - from),
      // the latter half of a season is spent full-grown
      length: leafLengths.first + Math.min(1, 2 * along) * (leafLengths.full - leafLengths.first),
      isUp: index % 2 === 0,
    };
  });
}

/** Where words lie in the strips, so that no upright line is drawn through them. */
export function wordsInStrips(
  segments: readonly StateSegment[],
  bars: readonly PlantingBar[],
  layout: SeasonLayout,
): readonly { readonly top: number; readonly from: number; readonly to: number }[] {
  const over = (top: number, from: number, words: string, strong = false) => ({
    top,
    from: from - 4,
    to: from + textWidth(words, strong) + 4,
  });
  return [
    ...segments
      .filter(({ wordFits }) => wordFits)
      .map(({ wordX, state }) => over(layout.state.top, wordX - markWidth, `    ${state}`)),
    ...bars.map(({ top, name, nameX }) => over(top, nameX, name, true)),
  ];
}

export interface RainBar {
  readonly day: DayNumber;
  readonly x: number;
  readonly width: number;
  /** px of rain, and of watering on top of it */
  readonly rain: number;
  readonly watered: number;
  readonly kind: 'measured' | 'filled' | 'imagined';
}

/** Rain and watering of each day with any; the scale ends at a round number at or past the wettest day of the view. */
export function rainBars(
  result: SeasonResult,
  span: DaySpan,
  layout: SeasonLayout,
  unit: ChartUnit,
): { readonly bars: readonly RainBar[]; readonly top: number } {
  const days = Array.from({ length: span.to - span.from + 1 }, (_value, index) => {
    const at = span.from - result.firstDay + index;
    return {
      day: span.from + index,
      rain: result.rain[at] ?? 0,
      watered: result.watered[at] ?? 0,
      kind: dayKinds[result.kind[at] ?? 0] ?? 'measured',
    };
  });
  const most = days.reduce((wettest, day) => Math.max(wettest, day.rain + day.watered), 10);
  const top =
    scaleLinear()
      .domain([0, most * unit.perInside])
      .nice(4)
      .domain()[1] ?? 1;
  const height = scaleLinear()
    .domain([0, top / unit.perInside])
    .range([0, layout.rain.bottom - layout.rain.top]);
  const width = Math.max(1, layout.x(1) - layout.x(0) - 0.6);
  return {
    top,
    bars: days
      .filter((day) => day.rain + day.watered > 0)
      .map((day) => ({
        day: day.day,
        x: layout.x(day.day),
        width,
        rain: height(day.rain),
        watered: height(day.watered),
        kind: day.kind,
      })),
  };
}
