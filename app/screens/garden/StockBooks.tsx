import { useDeferredValue, useMemo } from 'react';
import { heapAccount, leavesToKeep } from '../../document/heapAccount';
import { materialById } from '../../document/materialValues';
import type { Garden, Stock } from '../../document/schema';
import { monthWord } from '../../words/chartFormat';
import { withRange } from '../../words/ranges';
import { putOnWords } from '../../words/stockWords';
import { monthOf, yearOf, type DayNumber } from '../../core/days';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';

/** The books of a heap or of a store of leaves: what went in, what is left, what to keep. */
export function StockBooks({ stock }: { readonly stock: Stock }) {
  const garden = useGarden();
  const today = useToday();
  const { row } = materialById(garden, stock.materialId);
  if (stock.role === 'heap') return <HeapBooks garden={garden} heap={stock} today={today} />;
  if (row.id.startsWith('leaves-'))
    return <LeafBooks garden={garden} leaves={stock} today={today} />;
  return null;
}

function HeapBooks(props: {
  readonly garden: Garden;
  readonly heap: Stock;
  readonly today: DayNumber;
}) {
  const { garden, heap, today } = props;
  const { estimate, units } = useShown();
  const account = useMemo(() => heapAccount(garden, heap, today), [garden, heap, today]);
  const { entries, putOn, left, takenDryKilograms } = account;
  const count = (wanted: (typeof entries)[number]['what']): number =>
    entries.filter(({ what }) => what === wanted).length;
  const put = putOnWords(count('clippings'), count('leaves'), count('raked off'));
  if (entries.length === 0)
    return (
      <p className="small soft">
        Nothing was put on it since it was written down. What goes there from This week is kept
        account of here.
      </p>
    );
  return (
    <div>
      <p>
        Put on it since, {put}: {estimate(putOn.dryKilograms, units.mass)} of dry weight with{' '}
        {estimate(putOn.nitrogenGrams, units.nitrogen)} of nitrogen.
      </p>
      <p>
        With what was there before, it should have shrunk to{' '}
        {withRange(left.dryKilograms, units.mass)} dry, with{' '}
        {withRange(left.nitrogenGrams, units.nitrogen)} of nitrogen
        {takenDryKilograms > 0
          ? `; ${estimate(takenDryKilograms, units.mass)} of it were taken off and laid`
          : ''}
        .
      </p>
      <p className="small soft">
        How a heap shrinks is recalled, not read anywhere, and heaps differ: the range is wide, and
        a lab’s test of the compost is worth more.
      </p>
    </div>
  );
}

function LeafBooks(props: {
  readonly garden: Garden;
  readonly leaves: Stock;
  readonly today: DayNumber;
}) {
  const { garden, leaves, today } = props;
  const { estimate, units } = useShown();
  // the lawns of a whole month are grown for it: fields do not wait for that
  const weighed = useDeferredValue(garden);
  const keep = useMemo(() => leavesToKeep(weighed, leaves, today), [weighed, leaves, today]);
  if (keep === null) return null;
  const month = `${monthWord(monthOf(keep.monthFirst))} ${yearOf(keep.monthFirst)}`;
  return (
    <p>
      To keep for {month}: if all the grass of that month came to the heap, about{' '}
      {estimate(keep.clippingsLitres, units.volume)}, it would want{' '}
      {estimate(keep.leavesLitres, units.volume)} of these leaves with it.{' '}
      {keep.onHandLitres >= keep.leavesLitres
        ? `There are ${estimate(keep.onHandLitres, units.volume)}: enough.`
        : `There are ${estimate(keep.onHandLitres, units.volume)}: gather more, or leave some of the grass lying.`}
    </p>
  );
}
