import type { DayNumber } from '../../days';
import type { LayerInput } from '../input';
import type { Limits } from '../limits';
import { isStanding } from '../plantingAccount';
import { at, lastDayOf, meanDays } from '../seasonAccount';
import type { Caution } from '../verdict';
import type { Run } from './facts';
import { factCaution } from './makeCaution';
import { handsHigh } from './plantSize';

/** Soil of the last five days, so that one warm afternoon does not count. */
const soilWarmth = (run: Run, day: DayNumber): number =>
  meanDays(run.result.soilTemperature, run.result, day - 4, day) ??
  at(run.result.soilTemperature, run.result, day);

/** A cover on cold soil under a crop that wants it warm: in the ground and small, or due within weeks. */
export function coldSoilCautions(
  run: Run,
  day: DayNumber,
  limits: Limits,
  layerId: string | null,
): Caution[] {
  const { numbers } = limits;
  const warmth = soilWarmth(run, day);
  for (const planting of run.input.plantings) {
    const wanted = planting.crop.warmSoilCelsius;
    if (wanted === null || warmth >= wanted) continue;
    const isSmall =
      isStanding(planting, day) &&
      handsHigh(run, planting, day, limits) < numbers['stems clear until'];
    const isDue = planting.startDay > day && planting.startDay - day <= numbers['warm soil window'];
    if (!isSmall && !isDue) continue;
    let warm: DayNumber | null = null;
    for (let one = day + 1; one <= lastDayOf(run.result) && warm === null; one += 1)
      if (soilWarmth(run, one) >= wanted) warm = one;
    return [
      factCaution('cold soil', 'cold soil', limits, {
        number: warmth,
        threshold: wanted,
        unit: 'deg C',
        date: warm,
        detail: { plantingId: planting.id },
        layerId,
      }),
    ];
  }
  return [];
}

/** Rotting greens draw the seed fly where the bed is cold and wet and beans, corn or peas are due. */
export function seedFlyCautions(
  run: Run,
  layers: readonly LayerInput[],
  limits: Limits,
): Caution[] {
  const { numbers } = limits;
  const { result } = run;
  for (const layer of layers) {
    if (!layer.isGreens || layer.condition === 'crisp') continue;
    const warmth = soilWarmth(run, layer.day);
    const wetness = meanDays(result.availableWaterTop, result, layer.day - 6, layer.day) ?? 0;
    if (warmth >= numbers['seed fly soil'] || wetness < numbers['seed fly wet']) continue;
    const sown = run.input.plantings.find(
      (planting) =>
        planting.sown &&
        planting.crop.seedFlyRisk &&
        planting.startDay >= layer.day &&
        planting.startDay - layer.day <= numbers['seed fly days'],
    );
    if (!sown) continue;
    return [
      factCaution('seed fly', 'seed fly', limits, {
        number: sown.startDay - layer.day,
        threshold: numbers['seed fly days'],
        unit: 'days',
        date: layer.day + numbers['seed fly days'] + 1,
        detail: { plantingId: sown.id, soilCelsius: warmth },
        layerId: layer.id,
      }),
    ];
  }
  return [];
}
