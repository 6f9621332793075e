/** Where the sun stands on a day of the year. */
export interface SunOfDay {
  /** dr, inverse relative distance of earth and sun */
  readonly distance: number;
  /** d, declination [rad] */
  readonly declination: number;
  /** ws, hour angle of sunset [rad], 0 in polar night, pi in polar day */
  readonly sunset: number;
}

/**
 * The sun over a latitude on a day of the year.
 *
 * The argument of the sunset angle's arccos is cut to [-1, 1], so polar day and night work.
 *
 * @param dayOfYear J, 1-366
 * @source Allen et al. 1998 (FAO-56) eq. 23-25; worked in its Example 8
 */
export function sunOfDay(latitudeDegrees: number, dayOfYear: number): SunOfDay {
  const latitude = (latitudeDegrees * Math.PI) / 180;
  const turn = (2 * Math.PI * dayOfYear) / 365;
  const declination = 0.409 * Math.sin(turn - 1.39);
  return {
    distance: 1 + 0.033 * Math.cos(turn),
    declination,
    sunset: Math.acos(Math.min(1, Math.max(-1, -Math.tan(latitude) * Math.tan(declination)))),
  };
}

/**
 * Extraterrestrial radiation, MJ/m2/day.
 *
 *     Ra = 24(60)/pi 0.0820 dr [ws sin(phi) sin(d) + cos(phi) cos(d) sin(ws)]
 *
 * @param dayOfYear J, 1-366
 * @source Allen et al. 1998 (FAO-56) eq. 21; worked in its Example 8
 */
export function extraterrestrialRadiation(latitudeDegrees: number, dayOfYear: number): number {
  const latitude = (latitudeDegrees * Math.PI) / 180;
  const { distance, declination, sunset } = sunOfDay(latitudeDegrees, dayOfYear);
  return (
    ((24 * 60) / Math.PI) *
    0.082 *
    distance *
    (sunset * Math.sin(latitude) * Math.sin(declination) +
      Math.cos(latitude) * Math.cos(declination) * Math.sin(sunset))
  );
}

/** Millimetres of water that a MJ/m2 can evaporate (FAO-56 eq. 20). */
export const millimetresPerMegajoule = 0.408;

/**
 * Reference evapotranspiration from temperatures alone, mm/day.
 *
 *     ET0 = 0.0023 (Tmean + 17.8) sqrt(Tmax - Tmin) 0.408 Ra
 *
 * @source Hargreaves & Samani 1985 as FAO-56 eq. 52
 */
export function hargreavesReferenceEvapotranspiration(
  minimumCelsius: number,
  maximumCelsius: number,
  latitudeDegrees: number,
  dayOfYear: number,
): number {
  return hargreavesUnder(
    extraterrestrialRadiation(latitudeDegrees, dayOfYear),
    minimumCelsius,
    maximumCelsius,
  );
}

/** The same under a radiation that is known, Ra [MJ/m2/day]: it is one for all years and draws. */
export function hargreavesUnder(
  radiation: number,
  minimumCelsius: number,
  maximumCelsius: number,
): number {
  const mean = (minimumCelsius + maximumCelsius) / 2;
  const spread = Math.sqrt(Math.max(0, maximumCelsius - minimumCelsius));
  return Math.max(0, 0.0023 * (mean + 17.8) * spread * millimetresPerMegajoule * radiation);
}

/** Total available water of a root zone, mm (FAO-56 eq. 82); depths in mm. */
export const totalAvailableWater = (
  fieldCapacity: number,
  wiltingPoint: number,
  rootMillimetres: number,
): number => (fieldCapacity - wiltingPoint) * rootMillimetres;

/** Share of it that can be used before the crop slows: p + 0.04 (5 - ETc), 0.1-0.8 (FAO-56 Table 22 note). */
export const adjustedDepletionShare = (tableShare: number, cropMillimetresPerDay: number): number =>
  Math.min(0.8, Math.max(0.1, tableShare + 0.04 * (5 - cropMillimetresPerDay)));

/** Water stress factor 0-1 (FAO-56 eq. 84). */
export function waterStress(depletion: number, available: number, depletionShare: number): number {
  if (available <= 0) return 0;
  const readily = depletionShare * available;
  if (depletion <= readily) return 1;
  return Math.max(0, (available - depletion) / ((1 - depletionShare) * available));
}
