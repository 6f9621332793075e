import { dayFromText, seasonEnd, type DayNumber } from '../core/days';
import type { PairedQuestion } from '../core/plan/pairedDraws';
import type { BedQuestion, ProposalQuestion } from '../core/season/bedAnswer';
import { planWeights } from '../tables/planning';
import { bedQuestion } from './bedQuestion';
import { drawsQuestion, type YearsOfGarden } from './drawsQuestion';
import { planDays } from './planOdds';
import type { Application, Garden } from './schema';

export interface WhatIfQuestions {
  /** each alternative by the likely course, in the order asked */
  readonly likely: readonly ProposalQuestion[];
  /** all of them against the bed as it is, season by season */
  readonly imagined: PairedQuestion;
}

/**
 * What is asked of the engine about a bed as it is and with other layers, none of which is laid.
 *
 * @param alternatives layers of each, on or after `today`; an empty one is the bed as it is
 * @param count imagined seasons of each, in which they differ by their layers alone
 * @throws as `bedSeason`
 */
export function whatIfQuestions(
  garden: Garden,
  bedId: string,
  today: DayNumber,
  alternatives: readonly (readonly Application[])[],
  count: number,
): WhatIfQuestions {
  const laidOut: YearsOfGarden = new Map();
  const before: BedQuestion = bedQuestion(garden, bedId, today);
  const after = alternatives.map((layers) => bedQuestion(garden, bedId, today, layers));
  return {
    likely: alternatives.map((layers, at) => ({
      before,
      after: after[at]!,
      layerIds: layers.map(({ id }) => id),
    })),
    imagined: {
      base: drawsQuestion(garden, bedId, today, count, { laidOut, input: before.input }),
      others: alternatives.map((extraApplications, at) =>
        drawsQuestion(garden, bedId, today, count, {
          laidOut,
          extraApplications,
          input: after[at]!.input,
        }),
      ),
      days: planDays(garden, today),
      weights: planWeights,
    },
  };
}

/** Whether a day lies between today and the season's end: a run knows no later one. */
export const isWithinSeason = (garden: Garden, today: DayNumber, date: string): boolean => {
  const day = dayFromText(date);
  return day !== null && day >= today && day <= seasonEnd(today, garden.garden.seasonStartMonth);
};
