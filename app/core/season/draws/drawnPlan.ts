import type { BedSeason, LayerInput } from '../input';
import { lowerDepthFor, runPlan, type RunPlan, type WeatherPlan } from '../runPlan';
import { sameDayOrder } from '../sameDay';

/** A run's plan that is right for every draw of a bed. */
export interface DrawnPlan {
  readonly plan: RunPlan;
  /** puts same-day layers whose order hangs on drawn numbers in order; after each draw was written */
  reorder(): void;
}

const isAlike = (one: LayerInput, other: LayerInput): boolean =>
  one.materialId === other.materialId &&
  one.placement === other.placement &&
  one.condition === other.condition;

/**
 * @param input the bed that draws are written into; only masses, contents, needs and coefficients
 *   may change from draw to draw
 * @param weather the plan that the draws' weather is written into
 */
export function drawnPlan(input: BedSeason, weather: WeatherPlan): DrawnPlan {
  const plan = runPlan(input, lowerDepthFor(input), weather);
  const days = [...plan.layers.values()].filter((layers) =>
    layers.some((one, at) => layers.slice(at + 1).some((other) => isAlike(one, other))),
  );
  return {
    plan,
    reorder() {
      for (const layers of days) (layers as LayerInput[]).sort(sameDayOrder);
    },
  };
}
