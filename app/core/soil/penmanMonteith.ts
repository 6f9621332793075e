import { extraterrestrialRadiation, millimetresPerMegajoule, sunOfDay } from './evapotranspiration';

/** How the air's moisture was measured on a day. */
export type Humidity =
  | { readonly kind: 'vapour pressure'; readonly kilopascals: number }
  | { readonly kind: 'dew point'; readonly celsius: number }
  | { readonly kind: 'relative'; readonly lowestPercent: number; readonly highestPercent: number }
  | { readonly kind: 'mean relative'; readonly percent: number };

export interface Wind {
  readonly metresPerSecond: number;
  /** height of the instrument above the ground [m] */
  readonly heightMetres: number;
}

export type Sun =
  | { readonly kind: 'hours'; readonly hours: number }
  | { readonly kind: 'radiation'; readonly megajoules: number };

/** What was measured on a day; null where it was not. */
export interface MeasuredDay {
  readonly minimumCelsius: number;
  readonly maximumCelsius: number;
  readonly latitudeDegrees: number;
  /** J, 1-366 */
  readonly dayOfYear: number;
  readonly elevationMetres: number;
  readonly humidity: Humidity | null;
  readonly wind: Wind | null;
  readonly sun: Sun | null;
}

/** What stands in for a measurement that is missing (rows of `app/tables/weatherGaps.ts`). */
export interface WeatherGaps {
  /** wind at 2 m [m/s] */
  readonly wind: number;
  /** kRs, share of the radiation above the air for each root of a degree between night and day */
  readonly radiationPerRootDegree: number;
}

const mean = (day: MeasuredDay): number => (day.minimumCelsius + day.maximumCelsius) / 2;

/** Air pressure by elevation [kPa], 101.3 ((293 - 0.0065 z)/293)^5.26 (FAO-56 eq. 7). */
export const airPressure = (elevationMetres: number): number =>
  101.3 * ((293 - 0.0065 * elevationMetres) / 293) ** 5.26;

/** Psychrometric constant [kPa/C], 0.665e-3 P (FAO-56 eq. 8). */
export const psychrometricConstant = (kilopascals: number): number => 0.665e-3 * kilopascals;

/** Vapour pressure of saturated air [kPa], 0.6108 exp(17.27 T/(T + 237.3)) (FAO-56 eq. 11). */
export const saturationPressure = (celsius: number): number =>
  0.6108 * Math.exp((17.27 * celsius) / (celsius + 237.3));

/** Slope of it [kPa/C], 4098 e0(T)/(T + 237.3)^2 (FAO-56 eq. 13). */
export const saturationSlope = (celsius: number): number =>
  (4098 * saturationPressure(celsius)) / (celsius + 237.3) ** 2;

/** Mean of the saturation pressures of night and day [kPa] (FAO-56 eq. 12). */
export const meanSaturationPressure = (minimumCelsius: number, maximumCelsius: number): number =>
  (saturationPressure(minimumCelsius) + saturationPressure(maximumCelsius)) / 2;

/**
 * Actual vapour pressure [kPa]: as measured, from the dew point (eq. 14), from the day's highest
 * and lowest relative humidity (eq. 17), from their mean (eq. 19); that of the coldest moment
 * where nothing was measured (eq. 48).
 *
 * @source FAO-56; eq. 17 and 48 worked in Examples 18 and 20, eq. 14 and 19 recalled
 */
export function vapourPressure(day: MeasuredDay): number {
  const { humidity, minimumCelsius, maximumCelsius } = day;
  if (humidity === null) return saturationPressure(minimumCelsius);
  switch (humidity.kind) {
    case 'vapour pressure':
      return humidity.kilopascals;
    case 'dew point':
      return saturationPressure(humidity.celsius);
    case 'relative':
      return (
        (saturationPressure(minimumCelsius) * humidity.highestPercent +
          saturationPressure(maximumCelsius) * humidity.lowestPercent) /
        200
      );
    case 'mean relative':
      return (meanSaturationPressure(minimumCelsius, maximumCelsius) * humidity.percent) / 100;
  }
}

/** Wind at 2 m from another height [m/s], u 4.87/ln(67.8 z - 5.42) (FAO-56 eq. 47). */
export const windAtTwoMetres = ({ metresPerSecond, heightMetres }: Wind): number =>
  (metresPerSecond * 4.87) / Math.log(67.8 * heightMetres - 5.42);

/** Hours of daylight, 24 ws/pi (FAO-56 eq. 34). */
export const daylightHours = (latitudeDegrees: number, dayOfYear: number): number =>
  (24 * sunOfDay(latitudeDegrees, dayOfYear).sunset) / Math.PI;

/** Radiation of a day, MJ/m2. */
export interface DayRadiation {
  /** Rs, sun and sky on the ground */
  readonly solar: number;
  /** Rso, the same without a cloud */
  readonly clearSky: number;
  /** Rns, what short grass keeps of it */
  readonly shortwave: number;
  /** Rnl, heat given off to the sky */
  readonly longwave: number;
  /** Rn, the balance */
  readonly net: number;
}

/**
 * Radiation of a day over short grass.
 *
 *     Rs  = (0.25 + 0.50 n/N) Ra  from hours of sun n;  kRs sqrt(Tmax - Tmin) Ra  without them
 *     Rso = (0.75 + 2e-5 z) Ra
 *     Rns = (1 - 0.23) Rs
 *     Rnl = 4.903e-9 (Tmax^4 + Tmin^4)/2 (0.34 - 0.14 sqrt(ea)) (1.35 Rs/Rso - 0.35)   T in K, Rs/Rso <= 1
 *
 * Radiation that was estimated from temperatures is never above the clear sky's. In polar night,
 * without any radiation, the sky counts as clear.
 *
 * @source FAO-56 eq. 35, 37-40, 50; worked in Examples 10, 17, 18 and 20
 */
export function radiationOfDay(day: MeasuredDay, gaps: WeatherGaps): DayRadiation {
  const { latitudeDegrees, dayOfYear, minimumCelsius, maximumCelsius, sun } = day;
  const aboveAir = extraterrestrialRadiation(latitudeDegrees, dayOfYear);
  const clearSky = (0.75 + 2e-5 * day.elevationMetres) * aboveAir;
  const hours = daylightHours(latitudeDegrees, dayOfYear);
  const solar =
    sun?.kind === 'radiation'
      ? sun.megajoules
      : sun?.kind === 'hours'
        ? (0.25 + (hours > 0 ? 0.5 * Math.min(1, sun.hours / hours) : 0)) * aboveAir
        : Math.min(
            clearSky,
            gaps.radiationPerRootDegree *
              Math.sqrt(Math.max(0, maximumCelsius - minimumCelsius)) *
              aboveAir,
          );
  const shortwave = (1 - 0.23) * solar;
  const brightness = clearSky > 0 ? Math.min(1, solar / clearSky) : 1;
  const longwave =
    ((4.903e-9 * ((maximumCelsius + 273.16) ** 4 + (minimumCelsius + 273.16) ** 4)) / 2) *
    (0.34 - 0.14 * Math.sqrt(vapourPressure(day))) *
    (1.35 * brightness - 0.35);
  return { solar, clearSky, shortwave, longwave, net: shortwave - longwave };
}

/**
 * Reference evapotranspiration of short grass, mm/day, from as much weather as was measured.
 *
 *     ET0 = [0.408 D (Rn - G) + g 900/(T + 273) u2 (es - ea)] / [D + g (1 + 0.34 u2)]
 *
 * @param soilHeat G, MJ/m2/day; 0 for single days (eq. 42), other only for monthly means
 * @returns never below 0
 * @source FAO-56 eq. 6; worked in Examples 17, 18 and 20. With unknown wind the paper gives -7 % at
 *   1 m/s and +6 % at 3 m/s in place of 2
 */
export function penmanMonteith(day: MeasuredDay, gaps: WeatherGaps, soilHeat = 0): number {
  const celsius = mean(day);
  const slope = saturationSlope(celsius);
  const constant = psychrometricConstant(airPressure(day.elevationMetres));
  const wind = day.wind === null ? gaps.wind : windAtTwoMetres(day.wind);
  const lacking =
    meanSaturationPressure(day.minimumCelsius, day.maximumCelsius) - vapourPressure(day);
  const energy = millimetresPerMegajoule * slope * (radiationOfDay(day, gaps).net - soilHeat);
  const drying = (constant * 900 * wind * lacking) / (celsius + 273);
  return Math.max(0, (energy + drying) / (slope + constant * (1 + 0.34 * wind)));
}
