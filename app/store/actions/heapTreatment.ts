import { dayOf } from '../../core/days';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import { mowingAccount } from '../../document/accounts';
import type { Garden, Lawn, Stock } from '../../document/schema';

/** A heap that got clippings which are held back carries from then on what they carry. */
export function treatmentOfHeap(heap: Stock, { name, treatment }: Lawn): Stock['treatment'] {
  if (heap.treatment.answer === 'treated') return heap.treatment;
  if (treatment.answer !== 'treated') return { answer: 'unknown' };
  const product = `${treatment.product ?? 'something'}, on clippings of ${name}`.slice(0, 200);
  return {
    answer: 'treated',
    product,
    label: 'silent',
    ...(treatment.date === undefined ? {} : { date: treatment.date }),
  };
}

/** Dry weight under which nothing of a mowing went there: rounding of what was laid (ours). */
const leastKilograms = 0.01;

/** What a lawn is said to have got holds for heaps on which clippings of it lie already, too. */
export function markHeapsOf(garden: Garden, lawnId: string): void {
  const lawn = garden.lawns.find(({ id }) => id === lawnId);
  if (!lawn) return;
  for (const heap of garden.stock) {
    const isHeldBack = garden.mowings.some(
      (mowing) =>
        mowing.lawnId === lawnId &&
        mowing.rest.to === 'heap' &&
        mowing.rest.stockId === heap.id &&
        mowingAccount(garden, mowing).leftDryKilograms > leastKilograms &&
        lawnHeldBack(garden, lawn, dayOf(mowing.date)) !== null,
    );
    if (isHeldBack) heap.treatment = treatmentOfHeap(heap, lawn);
  }
}
