import { dayOf, seasonStart, type DayNumber } from '../core/days';
import { factCaution } from '../core/season/cautions/makeCaution';
import { treatmentFinding } from '../core/season/cautions/treatment';
import type { Caution } from '../core/season/verdict';
import { limits } from '../tables/thresholds';
import { treatmentFacts } from './cautionFacts';
import type { Garden, Lawn } from './schema';

/**
 * Whether clippings cut from a lawn on a day are held back from beds that are eaten from, by what
 * was put on it. A lawn nobody was asked about yet is not: the question comes before its first use.
 *
 * @returns the caution a layer of them would get, without a layer; null where nothing is known
 *   that holds them back
 * @source the same rule and table as the cautions of a layer (`treatmentFinding`)
 */
export function lawnHeldBack(garden: Garden, lawn: Lawn, cutOn: DayNumber): Caution | null {
  if (lawn.treatment.answer === 'not asked') return null;
  const source = {
    kind: 'lawn',
    name: lawn.name,
    mayCarryWeedkiller: true,
    treatment: treatmentFacts(lawn.treatment),
    earlierTreatments: (lawn.earlierTreatments ?? []).map(treatmentFacts),
    mowingDays: garden.mowings
      .filter(({ lawnId }) => lawnId === lawn.id)
      .map(({ date }) => dayOf(date)),
    creepingGrass: lawn.creepingGrass,
    seedHeadsSeen: null,
  } as const;
  const found = treatmentFinding(
    source,
    cutOn,
    seasonStart(cutOn, garden.garden.seasonStartMonth),
    { food: true, sensitive: false },
    limits,
  );
  if (!found) return null;
  const { number, threshold, unit, date } = found;
  const detail = { source: lawn.name, product: found.product };
  return factCaution('treated lawn', found.row, limits, { number, threshold, unit, date, detail });
}
