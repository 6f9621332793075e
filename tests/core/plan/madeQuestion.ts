import { textFromDay } from '../../../app/core/days';
import type { PlanQuestion, PlanWishes } from '../../../app/core/plan/question';
import { planQuestion } from '../../../app/document/planQuestion';
import type { Garden } from '../../../app/document/schema';
import { planGarden } from '../../bench/plan/planGarden';

/** A made-up garden with a mowing that nobody has found a place for yet. */
export function gardenWithMowing(seed: number, litres = 150): Garden {
  const { garden, today } = planGarden(seed);
  return {
    ...garden,
    mowings: [
      ...garden.mowings,
      {
        id: 'mowing-now',
        date: textFromDay(today),
        lawnId: 'lawn-0',
        amount: {
          text: `${litres} L`,
          quantity: { kind: 'volume', litres },
          certainty: 'plain',
        },
        wetness: 'dry',
        kind: null,
        rest: { to: 'undecided' },
      },
    ],
  };
}

export const madeQuestion = (
  seed: number,
  weeks = 4,
  wishes?: PlanWishes,
  litres?: number,
): PlanQuestion =>
  planQuestion(gardenWithMowing(seed, litres), planGarden(seed).today, wishes, weeks);

/** The first beds of a question and nothing else. */
export const withBeds = (question: PlanQuestion, beds: number): PlanQuestion => ({
  ...question,
  beds: question.beds.slice(0, beds),
});
