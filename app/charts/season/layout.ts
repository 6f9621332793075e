import { scaleLinear } from 'd3-scale';
import type { DayNumber } from '../../core/days';
import type { DaySpan } from './data';

/** A horizontal slice of the chart, in px from its top. */
export interface Panel {
  readonly top: number;
  readonly bottom: number;
}

/** Where everything stands; the drawing is as wide as it is told and never narrower than `leastWidth`. */
export interface SeasonLayout {
  readonly width: number;
  readonly height: number;
  /** no room for words at the right: they stand below the drawing, units under their titles */
  readonly isNarrow: boolean;
  readonly left: number;
  readonly right: number;
  /** left edge of the key beside the panels */
  readonly keyX: number;
  readonly supply: Panel;
  readonly nitrate: Panel;
  readonly state: Panel;
  readonly layers: Panel;
  readonly plantings: readonly Panel[];
  readonly rain: Panel;
  readonly warmth: Panel;
  readonly axis: Panel;
  /** all but the axis, from the top down */
  readonly panels: readonly Panel[];
  /** left edge of a day in px; the right edge is x(day + 1) */
  readonly x: (day: DayNumber) => number;
  /** the day under a px, kept within the span */
  readonly dayAt: (px: number) => DayNumber;
}

export const leastWidth = 280;
/** from here on the words stand at the ends of what they name */
export const leastWideWidth = 700;
const margins = {
  wide: { left: 40, right: 278 },
  narrow: { left: 30, right: 28 },
} as const;
/** between the laboratory's numbers at the right of a panel and the key */
const keyLift = 40;
/** from one line of the key to the next: where it has a value that is pressed, where it has none */
export const keyRowSteps = { value: 24, mark: 19 } as const;
/** room above each panel for its title */
const titleHeights = { wide: 34, narrow: 50 } as const;
/** between the first panel and its title stands a row for today and the imagined days */
export const supplyTitleLift = 30;
/** the row's baseline above the panel */
export const dayRowLift = 8;

const heights = {
  head: 14,
  supply: 264,
  nitrate: 104,
  state: 24,
  layers: 58,
  planting: 36,
  rain: 52,
  warmth: 60,
  axis: 30,
} as const;

/** What the two tall panels are still read at, where the paper is short. */
const leastHeights = { supply: 120, nitrate: 60 } as const;

/**
 * @param tallest what the paper has room for; the tall panels give way as far as they can be read
 */
export function seasonLayout(
  containerWidth: number,
  span: DaySpan,
  plantingCount: number,
  tallest = Infinity,
): SeasonLayout {
  const width = Math.max(leastWidth, Math.round(containerWidth));
  const isNarrow = width < leastWideWidth;
  const margin = isNarrow ? margins.narrow : margins.wide;
  const titleHeight: number = isNarrow ? titleHeights.narrow : titleHeights.wide;
  const left = margin.left;
  const right = width - margin.right;
  const keyX = right + keyLift;
  const rows = Math.max(1, plantingCount);
  const whole =
    Object.values(heights).reduce((sum, height) => sum + height, 0) +
    7 * titleHeight +
    8 +
    (rows - 1) * (heights.planting + 2);
  const over = Math.max(0, whole - tallest);
  const supplyLess = Math.min(over, heights.supply - leastHeights.supply);
  const nitrateLess = Math.min(over - supplyLess, heights.nitrate - leastHeights.nitrate);
  let y: number = heights.head;
  const panel = (height: number, title = titleHeight): Panel => {
    const top = y + title;
    y = top + height;
    return { top, bottom: y };
  };
  const supply = panel(heights.supply - supplyLess, titleHeight + 8);
  const nitrate = panel(heights.nitrate - nitrateLess);
  const state = panel(heights.state);
  const plantings = Array.from({ length: rows }, (_value, index) =>
    panel(heights.planting, index === 0 ? titleHeight : 2),
  );
  const layers = panel(heights.layers);
  const rain = panel(heights.rain);
  const warmth = panel(heights.warmth);
  const axis = panel(heights.axis, 0);

  const days = span.to - span.from + 1;
  const scale = scaleLinear()
    .domain([span.from, span.from + days])
    .range([left, right]);
  return {
    width,
    height: y,
    isNarrow,
    left,
    right,
    keyX,
    supply,
    nitrate,
    state,
    layers,
    plantings,
    rain,
    warmth,
    axis,
    panels: [supply, nitrate, state, ...plantings, layers, rain, warmth],
    x: (day) => scale(day),
    dayAt: (px) => Math.max(span.from, Math.min(span.to, Math.floor(scale.invert(px)))),
  };
}
