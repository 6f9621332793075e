import type { DayNumber } from '../core/days';
import type { Band } from '../core/season/draws/bands';
import {
  answerCarried,
  type CarriedAnswer,
  type CarriedQuestion,
  type CarriedQuestions,
} from '../core/season/draws/carriedRelease';
import type { BedSeason } from '../core/season/input';
import type { SeasonResult } from '../core/season/result';
import { seasonAccounts, seasonsOf, type SeasonAccount } from '../core/season/seasonAccounts';
import type { Garden } from './schema';
import { bedSeason, typicalSeed } from './seasonInput';
import { seasonSpread } from './seasonSpread';

/** Seasons of a bed's run, each with what it leaves to the next. */
export interface BedSeasonAccount extends SeasonAccount {
  /**
   * what is left of it gives in the season after [g N/m2 of bed, 10-50-90], the soil's own store
   * apart; null for seasons longer ago than the last that is over, whose next is known
   */
  readonly expectedNextSeason: Band | null;
}

/** Enough for a range that is shown with one digit. */
const draws = 60;

/** The run with nothing laid, dug, sown or watered after a season's end, to the end of the next. */
function leftAlone(input: BedSeason, lastDay: DayNumber, nextEnd: DayNumber): BedSeason {
  const isBefore = ({ day }: { readonly day: DayNumber }): boolean => day <= lastDay;
  return {
    ...input,
    lastDay: nextEnd,
    seasonStarts: input.seasonStarts.filter((day) => day <= nextEnd),
    layers: input.layers.filter(isBefore),
    events: input.events.filter(isBefore),
    plantings: input.plantings.filter(
      (planting) => (planting.standsSince ?? planting.startDay) <= lastDay,
    ),
  };
}

/**
 * What is asked about the ends of the last two of a bed's seasons. It is asked apart from the
 * accounts themselves, because its answer takes as long as some hundred runs.
 *
 * @param input the bed's run of `today`, as `bedSeason` gives it
 * @throws when the garden has no such bed
 */
export function carriedQuestions(garden: Garden, input: BedSeason): CarriedQuestions {
  const { bedId, today } = input;
  const further = bedSeason(garden, bedId, today, { throughNextSeason: true });
  const spread = seasonSpread(garden, bedId);
  const own = seasonsOf(input);
  const seasons = seasonsOf(further);
  const ends = own.flatMap(({ lastDay }, at): CarriedQuestion[] => {
    const next = seasons[at + 1];
    if (next === undefined || at < own.length - 2) return [];
    return [{ input: leftAlone(further, lastDay, next.lastDay), spread, fromDay: next.firstDay }];
  });
  return { bedId, seed: typicalSeed, count: draws, ends };
}

/**
 * The accounts of a bed's seasons.
 *
 * @param input,result the bed's run of `today`, as `bedSeason` and `runSeason` give it
 * @param answers to `carriedQuestions`; none leave what is expected out
 */
export const seasonAccountsWith = (
  garden: Garden,
  input: BedSeason,
  result: SeasonResult,
  answers: readonly CarriedAnswer[],
): readonly BedSeasonAccount[] =>
  seasonAccounts(input, result, garden.garden.seasonStartMonth).map((account) => ({
    ...account,
    expectedNextSeason:
      answers.find(({ fromDay }) => fromDay === account.lastDay + 1)?.expected ?? null,
  }));

/**
 * The accounts with all that is expected, reckoned on the spot.
 *
 * @throws when the garden has no such bed
 */
export const bedSeasonAccounts = (
  garden: Garden,
  input: BedSeason,
  result: SeasonResult,
): readonly BedSeasonAccount[] =>
  seasonAccountsWith(garden, input, result, answerCarried(carriedQuestions(garden, input)));
