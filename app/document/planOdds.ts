import { seasonEnd, textFromDay, type DayNumber } from '../core/days';
import type { PlanAnswer, PlanLayer } from '../core/plan/answer';
import type { PairedQuestion } from '../core/plan/pairedDraws';
import { planWeights } from '../tables/planning';
import { drawsQuestion, type YearsOfGarden } from './drawsQuestion';
import { lawnOutlook } from './lawnOutlook';
import { comingMowing, usualPlanWeeks } from './planQuestion';
import type { Application, Garden } from './schema';

/** Days of the weekly plan: today and then once a week, within the season. */
export const planDays = (garden: Garden, today: DayNumber): readonly DayNumber[] => {
  const lastDay = seasonEnd(today, garden.garden.seasonStartMonth);
  return Array.from({ length: usualPlanWeeks }, (_unused, week) => today + 7 * week).filter(
    (day) => day <= lastDay,
  );
};

/** The garden with what is to be mown today for these layers, mown. */
function asIfMown(garden: Garden, layers: readonly PlanLayer[], today: DayNumber): Garden {
  const mowings = new Map(garden.mowings.map((mowing) => [mowing.id, mowing]));
  for (const { ref } of layers) {
    if (ref.source !== 'coming') continue;
    const { kind } = lawnOutlook(garden, ref.lawnId, ref.day, today);
    const mowing = comingMowing(ref.lawnId, ref.day, kind);
    mowings.set(mowing.id, mowing);
  }
  return mowings.size === garden.mowings.length
    ? garden
    : { ...garden, mowings: [...mowings.values()] };
}

const fromOf = ({ ref }: PlanLayer): Application['from'] => {
  if (ref.source === 'stock') return ref;
  if (ref.source === 'mowing') return ref;
  return { source: 'mowing', mowingId: comingMowing(ref.lawnId, ref.day, null).id };
};

/** A layer of the plan as it would be written down. */
const applicationOf = (bedId: string, layer: PlanLayer): Application => ({
  id: layer.layerId,
  date: textFromDay(layer.day),
  bedId,
  from: fromOf(layer),
  amount: {
    text: '',
    quantity: { kind: 'volume', litres: layer.amount.litres },
    certainty: 'plain',
  },
  condition: layer.condition,
  wetness: 'dry',
  placement: layer.placement,
  mixtureId: null,
  passedStops: [],
});

/**
 * What is asked of the engine about each line of a plan: its bed as it is against itself with the
 * line's layers, in the same imagined seasons.
 *
 * @param plan made of this garden on `today`
 * @param count imagined seasons of each
 * @returns in the order of the plan's lines
 * @throws as `bedSeason`
 */
export function planOddsQuestions(
  garden: Garden,
  today: DayNumber,
  { lines }: Pick<PlanAnswer, 'lines'>,
  count: number,
): readonly PairedQuestion[] {
  const laidOut: YearsOfGarden = new Map();
  const days = planDays(garden, today);
  return lines.map(({ bedId, layers }): PairedQuestion => {
    const mown = asIfMown(garden, layers, today);
    const extraApplications = layers.map((layer) => applicationOf(bedId, layer));
    return {
      base: drawsQuestion(garden, bedId, today, count, { laidOut }),
      others: [drawsQuestion(mown, bedId, today, count, { laidOut, extraApplications })],
      days,
      weights: planWeights,
    };
  });
}
