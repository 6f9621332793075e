/** Bell curve of growth on temperature for one kind of grass. */
export interface GrowthCurve {
  /** temperature of fastest growth */
  readonly bestCelsius: number;
  /** how far from it growth falls to 61 per cent */
  readonly spreadCelsius: number;
  /** warm-season grass does not slow above its best */
  readonly slowsInHeat: boolean;
}

/**
 * Growth on a day as a share of the fastest.
 *
 *     g = exp(-1/2 ((T - Tbest) / s)^2)
 *
 * @param meanCelsius  T, the day's mean air temperature; Tbest `bestCelsius`, s `spreadCelsius`
 * @returns 0-1
 * @validity temperature alone: neither water, light nor feeding is in it
 * @source Gelernter & Stowell 2005; constants are rows of the caller
 */
export function growthPotential(meanCelsius: number, curve: GrowthCurve): number {
  const away = meanCelsius - curve.bestCelsius;
  if (away > 0 && !curve.slowsInHeat) return 1;
  return Math.exp(-0.5 * (away / curve.spreadCelsius) ** 2);
}

const daysOfMonth = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** Growth of a whole normal year, in days of fastest growth. `monthlyMeanCelsius`: January first. */
export const growthOfYear = (monthlyMeanCelsius: readonly number[], curve: GrowthCurve): number =>
  daysOfMonth.reduce(
    (sum, days, month) => sum + days * growthPotential(monthlyMeanCelsius[month] ?? NaN, curve),
    0,
  );

/**
 * Share of a normal year's growth that falls on the days given.
 * @param dailyMeanCelsius  the days since the last mowing
 * @returns above 0; more than 1 only for more than a year of days. 0 where it never grows
 */
export function shareOfYearGrown(
  dailyMeanCelsius: readonly number[],
  monthlyMeanCelsius: readonly number[],
  curve: GrowthCurve,
): number {
  const year = growthOfYear(monthlyMeanCelsius, curve);
  if (!(year > 0)) return 0;
  return dailyMeanCelsius.reduce((sum, mean) => sum + growthPotential(mean, curve), 0) / year;
}

/** Dry matter a lawn gives over a share of a year's growth [kg]. */
export const expectedDryKilograms = (
  areaM2: number,
  yearlyDryGramsPerM2: number,
  shareOfYear: number,
): number => (areaM2 * yearlyDryGramsPerM2 * shareOfYear) / 1000;

/** A mowing beyond this many times the expected growth is asked about; our own choice. */
export const askedAboutTimes = 3;

/** Why a mowing is asked about, or null when it is believable. */
export interface MowingQuestion {
  /** how many times the expected growth it is */
  readonly times: number;
  readonly expectedDryKilograms: number;
}

/**
 * A mowing of more than three times the growth since the one before is asked about, never
 * refused: a weighed bag, a wrong lawn or area, or a missed entry may be behind it.
 *
 * @param dryKilograms  likely dry matter of the mowing
 * @param grownDryKilograms  expected since the last mowing, see `expectedDryKilograms`
 */
export function mowingQuestion(
  dryKilograms: number,
  grownDryKilograms: number,
): MowingQuestion | null {
  const times = grownDryKilograms > 0 ? dryKilograms / grownDryKilograms : Infinity;
  return times > askedAboutTimes ? { times, expectedDryKilograms: grownDryKilograms } : null;
}
