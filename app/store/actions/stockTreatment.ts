import { dayOf } from '../../core/days';
import { lawnHeldBack } from '../../document/lawnHeldBack';
import { mowingAccount } from '../../document/accounts';
import type { Garden, Lawn, Stock, Treatment } from '../../document/schema';

/** What of a lawn's treatments goes with its clippings: a label that forbids, else the last. */
export function treatmentOfClippings({ treatment, earlierTreatments = [] }: Lawn): Treatment {
  const all = [treatment, ...earlierTreatments];
  return (
    all.find(({ answer, label }) => answer === 'treated' && label === 'forbids') ??
    (treatment.answer === 'nothing' ? earlierTreatments[0] : undefined) ??
    treatment
  );
}

/** A heap that got clippings which are held back carries from then on what they carry. */
export function treatmentOfHeap(heap: Stock, lawn: Lawn): Stock['treatment'] {
  const treatment = treatmentOfClippings(lawn);
  if (heap.treatment.answer === 'treated') return heap.treatment;
  if (treatment.answer !== 'treated') return { answer: 'unknown' };
  const product = `${treatment.product ?? 'something'}, on clippings of ${lawn.name}`.slice(0, 200);
  return {
    answer: 'treated',
    product,
    label: 'silent',
    ...(treatment.date === undefined ? {} : { date: treatment.date }),
  };
}

/** A store with dried clippings that are held back carries what a store begun after the answer does. */
function treatmentOfStore(store: Stock, lawn: Lawn): Stock['treatment'] {
  return store.treatment.answer === 'treated' ? store.treatment : { ...treatmentOfClippings(lawn) };
}

/** Dry weight under which nothing of a mowing went there: rounding of what was laid (ours). */
const leastKilograms = 0.01;

/** What a lawn is said to have got holds for heaps and stores that clippings of it went to, too. */
export function markStockOf(garden: Garden, lawnId: string): void {
  const lawn = garden.lawns.find(({ id }) => id === lawnId);
  if (!lawn) return;
  for (const mowing of garden.mowings) {
    const { rest } = mowing;
    if (mowing.lawnId !== lawnId || (rest.to !== 'heap' && rest.to !== 'store')) continue;
    const stock = garden.stock.find(({ id }) => id === rest.stockId);
    if (
      !stock ||
      mowingAccount(garden, mowing).leftDryKilograms <= leastKilograms ||
      lawnHeldBack(garden, lawn, dayOf(mowing.date)) === null
    )
      continue;
    stock.treatment =
      rest.to === 'heap' ? treatmentOfHeap(stock, lawn) : treatmentOfStore(stock, lawn);
  }
}
