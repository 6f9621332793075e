import type { ChartUnits } from '../../words/chartUnits';
import { lengthUnit } from '../../words/sectionWords';
import type { SectionGeometry } from './geometry';
import type { SectionScale } from './scale';

export interface RulerTick {
  readonly y: number;
  /** in the shown unit; '' where there is no room for it */
  readonly label: string;
  readonly isGround: boolean;
}

/** Steps of a ruler [mm], in centimetres and in inches. */
const metricSteps = [50, 100, 200, 300, 500, 1000];
const inchSteps = [2, 4, 6, 12, 24, 36].map((inches) => inches * 25.4);
const leastGap = 26;

/**
 * Marks of the ruler beside a section: heights from what the plants stand on, depths from the soil's
 * surface; what lies between is the cover, which has a scale of its own.
 */
export function rulerTicks(
  { coverTop, surface, bottom, soil }: SectionGeometry,
  { perMillimetre, above }: SectionScale,
  units: ChartUnits,
): readonly RulerTick[] {
  const unit = lengthUnit(units);
  const steps = unit.short === 'cm' ? metricSteps : inchSteps;
  const step = steps.find((one) => one * perMillimetre >= leastGap) ?? steps.at(-1) ?? 1000;
  const label = (millimetres: number): string => String(Math.round(millimetres * unit.perInside));
  const ticks: RulerTick[] = [];
  const highest = surface - above;
  for (let height = step; coverTop - height * perMillimetre >= highest - 0.5; height += step)
    ticks.push({ y: coverTop - height * perMillimetre, label: label(height), isGround: false });
  ticks.push({ y: surface, label: '0', isGround: true });
  const deepest = Math.min(bottom, soil[1].bottom);
  for (let depth = step; surface + depth * perMillimetre <= deepest + 0.5; depth += step)
    ticks.push({ y: surface + depth * perMillimetre, label: label(depth), isGround: false });
  return ticks;
}

/** Steps of the cover's own scale [mm]. */
const coverSteps = [2, 5, 10, 20, 50, 100, 200];
const inchCoverSteps = [1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 8].map((inches) => inches * 25.4);
const leastCoverGap = 15;

/**
 * The cover's own small scale, from the soil's surface up: its steps are drawn as much thicker as
 * the cover is. Empty where not even one step fits.
 *
 * @returns places in px and the height there [mm]
 */
export function coverTicks(
  { coverTop, surface }: SectionGeometry,
  { coverPerMillimetre }: SectionScale,
  units: ChartUnits,
): readonly { readonly y: number; readonly millimetres: number }[] {
  const steps = lengthUnit(units).short === 'cm' ? coverSteps : inchCoverSteps;
  const step = steps.find((one) => one * coverPerMillimetre >= leastCoverGap);
  if (step === undefined) return [];
  const count = Math.floor((surface - coverTop) / (step * coverPerMillimetre) + 1e-9);
  return Array.from({ length: count }, (_one, at) => ({
    y: surface - (at + 1) * step * coverPerMillimetre,
    millimetres: (at + 1) * step,
  }));
}

/** A zigzag across the ruler's line at a height: here the scale is another. */
export const breakPath = (x: number, y: number): string => `M${x - 9} ${y + 3}l6 -7l5 8l7 -7`;
