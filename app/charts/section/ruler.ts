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
