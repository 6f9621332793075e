import { scaleLinear } from 'd3-scale';
import { area, curveBasis } from 'd3-shape';
import type { ChartUnit } from '../../words/chartUnits';
import { spread } from '../spread';
import type { CoverChartData, CoverLayerShown } from './data';

/** A layer as it lies on the evening drawn. */
export interface LyingLayer {
  readonly layer: CoverLayerShown;
  /** mm still lying */
  readonly depth: number;
  /** share of it still lying 0-1 */
  readonly left: number;
  readonly daysOld: number;
}

export interface CoverFacts {
  /** oldest first: the order they lie in, from the soil up */
  readonly lying: readonly LyingLayer[];
  /** laid up to that day, and nothing one could see of them left */
  readonly vanished: readonly LyingLayer[];
  /** all cover as the model has it [mm] */
  readonly totalDepth: number;
  /** share of the ground hidden 0-1 */
  readonly hidden: number;
  readonly day: number;
}

/** thinner than a sheet of paper: nothing to draw */
const leastDepth = 0.1;

/** What lies on a bed on the evening of a day of its run; throws RangeError for other days. */
export function coverFacts(data: Pick<CoverChartData, 'result' | 'layers' | 'day'>): CoverFacts {
  const day = data.day ?? data.result.today;
  const index = day - data.result.firstDay;
  if (index < 0 || index >= data.result.days) throw new RangeError(`Day ${day} is not in this run`);
  const all = data.layers
    .filter((layer) => layer.day <= day)
    // sorting keeps the given order of layers laid on one day
    .toSorted((a, b) => a.day - b.day)
    .map((layer) => {
      const run = data.result.layers.find((candidate) => candidate.id === layer.id);
      return {
        layer,
        depth: run?.depth[index] ?? 0,
        left: run?.left[index] ?? 0,
        daysOld: day - layer.day,
      };
    });
  return {
    lying: all.filter((layer) => layer.depth >= leastDepth),
    vanished: all.filter((layer) => layer.depth < leastDepth),
    totalDepth: data.result.coverDepth[index] ?? 0,
    hidden: data.result.coverFraction[index] ?? 0,
    day,
  };
}

export interface LayerShape {
  readonly lying: LyingLayer;
  /** px of its lower and upper edge */
  readonly bottom: number;
  readonly top: number;
  readonly path: string;
  /** middle of its words */
  readonly labelY: number;
}

export interface CoverGeometry {
  readonly width: number;
  readonly height: number;
  readonly isNarrow: boolean;
  readonly left: number;
  readonly right: number;
  /** the soil's surface, nought of the ruler */
  readonly surface: number;
  readonly pxPerMillimetre: number;
  readonly layers: readonly LayerShape[];
  readonly soil: string;
  readonly ticks: readonly { readonly y: number; readonly value: number }[];
  /** top of all cover */
  readonly top: number;
}

export const leastCoverWidth = 280;
/** from here on the words stand beside their layers; below, under the drawing */
export const leastCoverWideWidth = 820;
const drawnFull = 210;
const drawnBare = 44;
const drawnSoil = 56;
const topMargin = 34;
/** length of the ruler at least, and over bare soil [mm] */
const leastScale = 60;
const bareScale = 20;
const labelGap = 38;

// edges run a little uneven, as on a spade's cut, but never by more than half a layer
const unevenness = (x: number, seed: number): number =>
  0.6 * Math.sin(x / 23 + seed * 1.7) + 0.4 * Math.sin(x / 9 + seed * 3.1);

/**
 * The cut through a bed's cover, to scale in height: one px is the same number of millimetres
 * everywhere, layers stand on each other from the soil up.
 */
export function coverGeometry(
  facts: CoverFacts,
  containerWidth: number,
  unit: ChartUnit,
): CoverGeometry {
  const width = Math.max(leastCoverWidth, Math.round(containerWidth));
  const isNarrow = width < leastCoverWideWidth;
  const left = isNarrow ? 34 : 52;
  const isBare = facts.lying.length === 0;
  // no words beside bare soil: it lies across the whole sheet
  const right = isNarrow || isBare ? width - 2 : left + Math.min(560, (width - left) * 0.46);
  const stacked = facts.lying.reduce((sum, layer) => sum + layer.depth, 0);
  const drawnCover = isBare ? drawnBare : drawnFull;
  const ruler = isBare ? bareScale : Math.max(leastScale, stacked * 1.05);
  const pxPerMillimetre = drawnCover / ruler;
  const labelsNeed = isNarrow
    ? 0
    : Math.max(0, facts.lying.length * labelGap - drawnCover - drawnSoil);
  const surface = topMargin + drawnCover + labelsNeed / 2;
  const height = surface + drawnSoil + labelsNeed / 2;

  const steps = Array.from({ length: 37 }, (_value, index) => left + ((right - left) * index) / 36);
  const edge = (y: number, seed: number, most: number) => (x: number) =>
    y + unevenness(x, seed) * Math.min(1.6, most);
  const between = (low: (x: number) => number, high: (x: number) => number): string =>
    area<number>()
      .x((x) => x)
      .y0((x) => low(x))
      .y1((x) => high(x))
      .curve(curveBasis)(steps) ?? '';

  let under = surface;
  let underEdge = edge(surface, 0, 1.6);
  const shapes = facts.lying.map((lying, index) => {
    const top = under - lying.depth * pxPerMillimetre;
    const topEdge = edge(top, index + 1, (under - top) / 2);
    const shape = { lying, bottom: under, top, path: between(underEdge, topEdge) };
    under = top;
    underEdge = topEdge;
    return shape;
  });
  // from the top down, as one reads
  const middles = shapes.map((shape) => (shape.top + shape.bottom) / 2).toReversed();
  const places = spread(middles, labelGap, topMargin, height - labelGap / 2).toReversed();

  const shown = scaleLinear().domain([0, ruler * unit.perInside]);
  return {
    width,
    height,
    isNarrow,
    left,
    right,
    surface,
    pxPerMillimetre,
    layers: shapes.map((shape, index) => ({ ...shape, labelY: places[index] ?? shape.top })),
    soil: between(() => height, edge(surface, 0, 1.6)),
    ticks: shown
      .ticks(isBare ? 2 : 5)
      .map((value) => ({ value, y: surface - (value / unit.perInside) * pxPerMillimetre })),
    top: under,
  };
}
