import { partnerForRatio, type MixtureShare } from '../cover/mix';
import type { PlanQuestion, PlanSource } from './question';

/** So many litres of a source as a part of a mixture. */
export const shareOf = ({ oneMillimetre: one }: PlanSource, litres: number): MixtureShare => ({
  freshKilograms: one.freshKgPerM2 * litres,
  moistureFraction: 1 - one.dryKgPerM2 / one.freshKgPerM2,
  carbonFraction: one.carbon / (1000 * one.dryKgPerM2),
  nitrogenFraction: one.nitrogen / (1000 * one.dryKgPerM2),
});

/** Litres of leaves that bring so much of greens to the ratio wanted of a heap; 0 where none do. */
export function leavesToMix(
  { weights }: Pick<PlanQuestion, 'weights'>,
  greens: PlanSource,
  litres: number,
  leaves: PlanSource,
): number {
  const wanted = partnerForRatio(
    shareOf(greens, litres),
    shareOf(leaves, 1),
    weights.heapCarbonToNitrogen,
  );
  return wanted.ok ? wanted.value / leaves.oneMillimetre.freshKgPerM2 : 0;
}

/** Kept dry since autumn: what a heap of fresh grass wants, and nobody has again before the next one. */
const isLeaves = ({ role, ref, oneMillimetre }: PlanSource): boolean =>
  role === 'browns' &&
  ref.source === 'stock' &&
  oneMillimetre.materialId.startsWith('leaves') &&
  oneMillimetre.freshKgPerM2 > 0;

/**
 * Leaves that are not laid on beds but kept to be mixed with the grass of this and the coming weeks
 * that goes on the heap: the flush of early summer is rich and wet, and leaves are scarce by then.
 *
 * @returns litres by source id; nothing without a heap
 */
export function keptLeaves(question: PlanQuestion): ReadonlyMap<string, number> {
  const { weights, sources, days, heapStockId } = question;
  const kept = new Map<string, number>();
  if (heapStockId === null) return kept;
  const until = days[Math.min(days.length, weights.keptWeeks) - 1] ?? question.today;
  const greens = sources.filter(
    ({ role, ref, day, heldBack }) =>
      role === 'greens' && ref.source !== 'stock' && heldBack === null && (day ?? 0) <= until,
  );
  const all = sources.filter(isLeaves);
  const [first] = all;
  if (!first) return kept;
  let open = greens.reduce(
    (sum, one) => sum + leavesToMix(question, one, weights.heapShare * one.litres, first),
    0,
  );
  for (const one of all) {
    const litres = Math.min(open, weights.keptMost * one.litres);
    if (litres > 0) kept.set(one.id, litres);
    open -= litres;
  }
  return kept;
}
