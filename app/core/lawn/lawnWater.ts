import { adjustedDepletionShare, waterStress } from '../soil/evapotranspiration';
import { growthPotential, type GrowthCurve } from './growth';

/** What a lawn's roots can draw on. */
export interface LawnGround {
  /** water that roots can take when the soil is full [mm] (FAO-56 eq. 82) */
  readonly available: number;
  /** FAO-56 p of turf (Table 22) */
  readonly depletionShare: number;
  /** FAO-56 Kc of turf (Table 12) */
  readonly cropCoefficient: number;
}

/** Days of weather, one entry a day. */
export interface LawnWeather {
  readonly meanCelsius: ArrayLike<number>;
  readonly rainMillimetres: ArrayLike<number>;
  /** reference evapotranspiration [mm] */
  readonly evapotranspiration: ArrayLike<number>;
}

export interface LawnDays {
  /** growth as a share of the fastest, by warmth and water together 0-1 */
  readonly growth: Float64Array;
  /** share of its wanted water that the grass gets 0-1 (FAO-56 Ks) */
  readonly water: Float64Array;
}

/**
 * How a lawn fared day by day, from one bucket of water and the warmth of the days.
 *
 *     Dr = max(0, Dr - P + Ks Kc ET0), at most TAW      Ks from the depletion after the day's rain
 *     growth = g(T) Ks
 *
 * The bucket is full before the first day: run it in for two months. Nothing is watered.
 * That growth falls in step with transpiration is assumed.
 *
 * @source water: Allen et al. 1998 (FAO-56) eq. 81, 84, 85; warmth: `growthPotential`
 */
export function lawnDays(weather: LawnWeather, ground: LawnGround, curve: GrowthCurve): LawnDays {
  const days = weather.meanCelsius.length;
  const growth = new Float64Array(days);
  const water = new Float64Array(days);
  let depletion = 0;
  for (let day = 0; day < days; day++) {
    const wanted = ground.cropCoefficient * (weather.evapotranspiration[day] ?? 0);
    depletion = Math.max(0, depletion - (weather.rainMillimetres[day] ?? 0));
    const share = adjustedDepletionShare(ground.depletionShare, wanted);
    const stress = waterStress(depletion, ground.available, share);
    depletion = Math.min(ground.available, depletion + stress * wanted);
    water[day] = stress;
    growth[day] = stress * growthPotential(weather.meanCelsius[day] ?? NaN, curve);
  }
  return { growth, water };
}
