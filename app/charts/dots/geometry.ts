import { scaleLinear } from 'd3-scale';

/** Radius of a dot [px]. */
export const dotRadius = 6;
const step = 2 * dotRadius + 1;
const inset = 12;
/** px over the highest dot, where the line's own words stand */
const head = 26;
const foot = 24;

export interface DrawnDot {
  readonly value: number;
  readonly x: number;
  readonly y: number;
}

export interface DotsGeometry {
  readonly width: number;
  readonly height: number;
  readonly floor: number;
  /** at the right end of the scale */
  readonly top: number;
  readonly dots: readonly DrawnDot[];
  readonly ticks: readonly { readonly value: number; readonly x: number }[];
  readonly x: (value: number) => number;
  /** a value of the scale, to a tenth */
  readonly valueAt: (x: number) => number;
}

/**
 * Dots over a scale from 0, each at its own value, piled where they would overlap.
 *
 * @param values rising
 * @param line that is in sight as well
 */
export function dotsGeometry(values: readonly number[], line: number, width: number): DotsGeometry {
  const most = Math.max(1.5, 1.2 * line, 1.05 * (values.at(-1) ?? 0));
  const scale = scaleLinear([0, most], [inset, width - inset]).nice();
  const top = scale.domain()[1]!;
  const piles: number[] = [];
  const placed = values.map((value) => {
    const x = scale(value);
    const free = piles.findIndex((last) => x - last >= step);
    const level = free < 0 ? piles.length : free;
    piles[level] = x;
    return { value, x, level };
  });
  const floor = head + Math.max(3, piles.length) * step;
  return {
    width,
    height: floor + foot,
    floor,
    top,
    dots: placed.map(({ value, x, level }) => ({ value, x, y: floor - (level + 0.5) * step })),
    ticks: scale.ticks(Math.max(3, Math.min(8, Math.floor(width / 70)))).map((value) => ({
      value,
      x: scale(value),
    })),
    x: (value) => scale(value),
    valueAt: (x) => Math.round(10 * Math.min(top, Math.max(0, scale.invert(x)))) / 10,
  };
}

/** How many lie past a line. */
export const dotsPast = (values: readonly number[], line: number): number =>
  values.filter((value) => value > line).length;
