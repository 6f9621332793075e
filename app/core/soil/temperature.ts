import type { Coefficients } from '../season/coefficients';

const activation = 308.56;
const offset = 46.02;
const curve = (celsius: number): number =>
  Math.exp(activation * (1 / (10 + offset) - 1 / (celsius + offset)));
const at15 = curve(15);
const at1 = curve(1) / at15;

/**
 * Speed of decomposition by temperature, 1 at 15 C.
 *
 *     f = exp(308.56 (1/56.02 - 1/(T + 46.02))) / f(15);  0 up to -1 C, a straight line between -1 C and 1 C
 *
 * @source Lloyd & Taylor 1994, T in C, scaled to 15 C; the cut below 1 C is the project's own
 */
export function temperatureFactor(celsius: number): number {
  if (celsius <= -1) return 0;
  if (celsius < 1) return (at1 * (celsius + 1)) / 2;
  return curve(celsius) / at15;
}

/**
 * Soil temperature of the top layer after a day: it follows the air, more slowly and cooler under
 * a cover.
 *
 * @source shape after Zheng, Hunt & Running 1993 (11-day mean) and Parker & Larson 1962 (1-2 C
 *   cooler under mulch); the rates are assumed
 */
export function soilTemperatureAfter(
  soilCelsius: number,
  airCelsius: number,
  coverFraction: number,
  c: Coefficients,
): number {
  const cooling = c.coverCooling * coverFraction * Math.min(1, Math.max(0, (airCelsius - 8) / 8));
  return (
    soilCelsius +
    c.soilWarmingRate * (1 - c.coverDamping * coverFraction) * (airCelsius - cooling - soilCelsius)
  );
}
