import { scaleLinear } from 'd3-scale';
import type { DayNumber } from '../../core/days';
import type { ChartUnit } from '../../words/chartUnits';
import type { DaySpan } from '../season/data';
import { readyTopOf } from '../season/series';
import type { BedStrip, StripRun } from './data';

/** The days from left to right, shared by the beds, the lawns and the axis above them. */
export interface StripLayout {
  readonly width: number;
  readonly left: number;
  readonly right: number;
  readonly span: DaySpan;
  /** many beds: each as low as its words and targets allow */
  readonly isCompact: boolean;
  /** left edge of a day in px; the right edge is x(day + 1) */
  readonly x: (day: DayNumber) => number;
  /** the day under a px, kept within the span */
  readonly dayAt: (px: number) => DayNumber;
}

const margins = { left: 38, right: 8 } as const;
export const leastStripWidth = 260;
/** from more beds than these on each is drawn lower, and what is said of it is folded */
export const mostAtFullHeight = 12;

export function stripLayout(
  containerWidth: number,
  span: DaySpan,
  isCompact: boolean,
): StripLayout {
  const width = Math.max(leastStripWidth, Math.round(containerWidth));
  const { left } = margins;
  const right = width - margins.right;
  const scale = scaleLinear([span.from, span.to + 1], [left, right]);
  return {
    width,
    left,
    right,
    span,
    isCompact,
    x: (day) => scale(day),
    dayAt: (px) => Math.max(span.from, Math.min(span.to, Math.floor(scale.invert(px)))),
  };
}

/** How thick a gram is, and how tall a layer: the same for every bed. */
export interface StripScale {
  /** px of thickness that stand for 1 g N/m2 */
  readonly pxPerGram: number;
  /** room for the thickest strip [px] */
  readonly soilHeight: number;
  /** below the surface, round in the shown unit */
  readonly ticks: readonly { readonly value: number; readonly depth: number }[];
  /** px that stand for 1 mm of a layer as it was laid */
  readonly pxPerMillimetre: number;
  readonly layerHeight: number;
}

const heights = {
  soil: { usual: 52, compact: 26 },
  layer: { usual: 22, compact: 10 },
} as const;
/** of two numbers beside a strip [px] */
const leastApart = 14;
/** strips of little are not blown up past this [g/m2] */
const leastMost = 5;
/** nor layers [mm] */
const leastDeepest = 20;

/** The days of a view that a run knows; null: none. */
export function knownSpan(run: StripRun | null, span: DaySpan): DaySpan | null {
  if (!run) return null;
  const from = Math.max(span.from, run.firstDay);
  const to = Math.min(span.to, run.firstDay + run.days - 1);
  return from <= to ? { from, to } : null;
}

/** The thickest strip [g/m2] and the deepest layer [mm] of a view, or the least a scale is made for. */
export function stripExtremes(
  beds: readonly Pick<BedStrip, 'run' | 'range' | 'layers'>[],
  span: DaySpan,
): { readonly most: number; readonly deepest: number } {
  let most = leastMost;
  let deepest = leastDeepest;
  for (const { run, range, layers } of beds) {
    const known = knownSpan(run, span);
    if (run && known) for (const grams of readyTopOf(run, known)) most = Math.max(most, grams);
    if (known && typeof range === 'object')
      for (const grams of range.high) most = Math.max(most, grams);
    for (const { day, laidDepth } of layers)
      if (day >= span.from && day <= span.to) deepest = Math.max(deepest, laidDepth);
  }
  return { most, deepest };
}

/** The one scale of all beds: the thickest strip and the deepest layer in view fill their room. */
export function stripScale(
  { most, deepest }: ReturnType<typeof stripExtremes>,
  unit: ChartUnit,
  isCompact: boolean,
): StripScale {
  const size = isCompact ? 'compact' : 'usual';
  const soilHeight = heights.soil[size];
  const pxPerGram = soilHeight / most;
  const values = scaleLinear([0, most * unit.perInside], [0, soilHeight]).ticks(2);
  return {
    pxPerGram,
    soilHeight,
    ticks: values
      .map((value) => ({ value, depth: (value / unit.perInside) * pxPerGram }))
      .filter(({ depth }) => depth <= soilHeight)
      // with little room the end of the scale says it alone
      .filter(
        ({ depth }, index, all) =>
          index % (all.length - 1) === 0 ||
          (depth >= leastApart && (all.at(-1)?.depth ?? 0) - depth >= leastApart),
      ),
    pxPerMillimetre: heights.layer[size] / deepest,
    layerHeight: heights.layer[size],
  };
}
