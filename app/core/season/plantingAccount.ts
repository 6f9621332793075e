import { wantedShare } from '../crop/need';
import type { DayNumber } from '../days';
import type { BedSeason, PlantingInput } from './input';
import type { SeasonResult } from './result';
import { at, lastDayOf, mineralInReach, sumDays } from './seasonAccount';
import { watchedOf, type WatchedPlanting, type WatchedSeason } from './watchedSeason';

/** What one planting has, gets and wants, seen from the evening of a day; g N per m2 of bed. */
export interface PlantingAccount {
  readonly planting: PlantingInput;
  readonly result: WatchedPlanting;
  /** share of the bed's supply that is this planting's */
  readonly supplyShare: number;
  /** last day on which it can use anything */
  readonly horizon: DayNumber;
  /** total need at its share, to its clearing; a legume's less the fixation still to come */
  readonly need: number;
  /** of it what it wants by the end of the run */
  readonly needOfRun: number;
  /** taken up and fixed so far, harvests included, and on the ground the bed was made of too */
  readonly inCrop: number;
  readonly inReach: number;
  readonly release: number;
  readonly tieUp: number;
  /** need of the days after today */
  readonly stillWanted: number;
  /** what the forecast gives of it, luxury apart */
  readonly forecastTaken: number;
}

/** In the ground on the evening of a day; on the day of clearing it is gone. */
export const isStanding = (planting: PlantingInput, day: DayNumber): boolean =>
  planting.startDay <= day && (planting.clearingDay === null || day < planting.clearingDay);

/** Day from which this season's growth counts: of a plant that stays for years when it grows again. */
export const growsFrom = ({ seasons, startDay }: PlantingInput): DayNumber =>
  seasons?.at(-1)?.startDay ?? startDay;

export const standingPlantings = (input: BedSeason, day: DayNumber): readonly PlantingInput[] =>
  input.plantings.filter((planting) => isStanding(planting, day));

/** The planting that a bed's own published numbers are read for: the first that stands today, else the last. */
export function mainPlanting(input: BedSeason): PlantingInput | undefined {
  const standing = standingPlantings(input, input.today);
  return standing[0] ?? input.plantings.at(-1);
}

export function plantingResult<Planting extends { readonly id: string }>(
  result: { readonly plantings: readonly Planting[] },
  id: string,
): Planting {
  const found = result.plantings.find((planting) => planting.id === id);
  if (!found) throw new Error(`The run knows no planting ${id}`);
  return found;
}

/** A legume whose fixation can still make good what the soil does not give. */
export const canFix = (planting: PlantingInput): boolean =>
  planting.crop.legume !== null && planting.nodulesSeen !== false;

/**
 * Luxury uptake of one planting on a day. The run keeps it for the bed as a whole; plantings want
 * it in proportion to the day's need (legumes none), so that is how it is shared out.
 */
function luxuryOn(
  input: BedSeason,
  result: WatchedSeason,
  planting: PlantingInput,
  day: DayNumber,
): number {
  const index = Math.min(result.days - 1, Math.max(0, day - result.firstDay));
  return luxuryShare(
    planting,
    plantingResult(result, planting.id).dailyNeed,
    result.luxury[index] ?? 0,
    needsOfLuxury(input, result),
    index,
  );
}

/** Daily needs of the plantings that take luxury. */
const needsOfLuxury = (input: BedSeason, result: WatchedSeason): readonly Float64Array[] =>
  input.plantings
    .filter(({ crop }) => crop.legume === null)
    .map(({ id }) => plantingResult(result, id).dailyNeed);

function luxuryShare(
  planting: PlantingInput,
  ownNeed: Float64Array,
  ofBed: number,
  needs: readonly Float64Array[],
  index: number,
): number {
  if (ofBed === 0 || planting.crop.legume !== null) return 0;
  let needOfBed = 0;
  for (const need of needs) needOfBed += need[index] ?? 0;
  return needOfBed > 0 ? (ofBed * (ownNeed[index] ?? 0)) / needOfBed : 0;
}

/** What a planting takes on a day towards its need: from the soil, luxury apart, and from the air. */
export const takenOn = (
  input: BedSeason,
  result: WatchedSeason,
  planting: PlantingInput,
  day: DayNumber,
): number => {
  const own = plantingResult(result, planting.id);
  return (
    at(own.dailyUptake, result, day) -
    luxuryOn(input, result, planting, day) +
    at(own.dailyFixed, result, day)
  );
};

/** `takenOn` summed over the days of a forecast, without looking each day's things up anew. */
function takenBetween(
  input: BedSeason,
  result: WatchedSeason,
  planting: PlantingInput,
  fromDay: DayNumber,
  toDay: DayNumber,
): number {
  const own = plantingResult(result, planting.id);
  const needs = needsOfLuxury(input, result);
  const last = Math.min(toDay, lastDayOf(result)) - result.firstDay;
  let taken = 0;
  for (let index = fromDay - result.firstDay; index <= last; index += 1)
    taken +=
      (own.dailyUptake[index] ?? 0) -
      luxuryShare(planting, own.dailyNeed, result.luxury[index] ?? 0, needs, index) +
      (own.dailyFixed[index] ?? 0);
  return taken;
}

/**
 * What a planting wants after the last day of a run, to its clearing: garlic that is set in autumn
 * wants next to nothing before the year is out. By how much of its usual time it stands (the days
 * stand in for a warmth nobody knows yet), less what the run has; of a legume the soil's usual share.
 * What stays for years is judged season by season, and has none.
 */
function neededLater(planting: PlantingInput, demand: number, horizon: DayNumber, last: DayNumber) {
  const { crop, share, seasons, startDay, usualEndDay } = planting;
  if (seasons || horizon <= last) return 0;
  const stood = (horizon - startDay) / Math.max(1, usualEndDay - startDay);
  const later = Math.max(0, crop.need * share * wantedShare(crop, stood) - demand);
  return canFix(planting) ? later * (1 - (crop.legume?.usualShareFixed ?? 0)) : later;
}

/**
 * The accounts of all plantings standing on the evening of `today`. Supply is shared by share of
 * the bed; where shares add to more than the bed they share all of it.
 */
export function plantingAccounts(
  input: BedSeason,
  run: SeasonResult | WatchedSeason,
  today: DayNumber,
): readonly PlantingAccount[] {
  const result = 'released' in run ? run : watchedOf(run);
  const standing = standingPlantings(input, today);
  const planted = standing.reduce((sum, planting) => sum + planting.share, 0);
  return standing.map((planting) => {
    const own = plantingResult(result, planting.id);
    const supplyShare = planting.share / Math.max(1, planted);
    const horizon = planting.clearingDay ?? Math.max(today, planting.usualEndDay);
    const tomorrow = today + 1;
    const fixedToCome = sumDays(own.dailyFixed, result, tomorrow, horizon);
    const takenSoFar = sumDays(own.dailyUptake, result, planting.startDay, today);
    const fixedSoFar = sumDays(own.dailyFixed, result, planting.startDay, today);
    // a plant that stays for years counts from the season it grows in
    const takenBefore = growsFrom(planting) <= result.firstDay ? (own.takenBefore ?? 0) : 0;
    const needOfRun = canFix(planting) ? own.demand - fixedToCome : own.demand;
    return {
      planting,
      result: own,
      supplyShare,
      horizon,
      need: needOfRun + neededLater(planting, own.demand, horizon, lastDayOf(result)),
      needOfRun,
      inCrop: takenBefore + takenSoFar + fixedSoFar,
      inReach: supplyShare * mineralInReach(result, today),
      release: supplyShare * sumDays(result.released, result, tomorrow, horizon),
      tieUp: supplyShare * sumDays(result.tiedUp, result, tomorrow, horizon),
      stillWanted: sumDays(own.dailyNeed, result, tomorrow, horizon),
      forecastTaken: takenBetween(input, result, planting, tomorrow, horizon),
    };
  });
}

/** Share of what is still wanted that the forecast meets, 0-1; 1 when nothing is wanted. */
export function forecastMetOf(accounts: readonly PlantingAccount[]): number {
  const wanted = accounts.reduce((sum, account) => sum + account.stillWanted, 0);
  if (wanted <= 0) return 1;
  return accounts.reduce((sum, account) => sum + account.forecastTaken, 0) / wanted;
}

/** Share of the total need that is still open, 0-1. */
export function openShareOf(accounts: readonly PlantingAccount[]): number {
  const total = accounts.reduce((sum, account) => sum + account.result.demand, 0);
  if (total <= 0) return 0;
  return accounts.reduce((sum, account) => sum + account.stillWanted, 0) / total;
}
