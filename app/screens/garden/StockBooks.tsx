import { useDeferredValue, useMemo } from 'react';
import { Figured } from '../../controls/Figured';
import { heapAccount, leavesToKeep } from '../../document/heapAccount';
import { materialById } from '../../document/materialValues';
import type { Garden, Stock } from '../../document/schema';
import { monthWord } from '../../words/chartFormat';
import { withRange } from '../../words/ranges';
import { putOnWords, storeBooks } from '../../words/stockWords';
import { monthOf, yearOf, type DayNumber } from '../../core/days';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { useToday } from '../useReadingContext';
import { juneFigures } from '../why/restWhys';
import { putOnFigures, shrunkFigures, storeFigures } from '../why/stockWhys';
import { stockLine } from './stockLine';

/** The books of a heap or of a store of leaves: what went in, what is left, what to keep. */
export function StockBooks({ stock }: { readonly stock: Stock }) {
  const garden = useGarden();
  const today = useToday();
  if (stock.role === 'heap') return <HeapBooks garden={garden} heap={stock} today={today} />;
  return (
    <>
      <StoreBooks garden={garden} store={stock} />
      {materialById(garden, stock.materialId).row.id.startsWith('leaves-') && (
        <LeafBooks garden={garden} leaves={stock} today={today} />
      )}
    </>
  );
}

/** What its line above says of it, with what stands behind that. */
function StoreBooks({ garden, store }: { readonly garden: Garden; readonly store: Stock }) {
  const line = stockLine(garden, store, useShown());
  const books = storeBooks(line);
  if (books.length === 0) return null;
  return (
    <div className="stock-books">
      <Figured
        says={`By its books since then: ${books.join(', ')}${line.isDry ? ', all by dry weight' : ''}.`}
        figures={storeFigures(books, line, materialById(garden, store.materialId))}
      />
    </div>
  );
}

function HeapBooks(props: {
  readonly garden: Garden;
  readonly heap: Stock;
  readonly today: DayNumber;
}) {
  const { garden, heap, today } = props;
  const shown = useShown();
  const { estimate, units } = shown;
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
  const given = [
    estimate(putOn.dryKilograms, units.mass),
    estimate(putOn.nitrogenGrams, units.nitrogen),
  ];
  const shrunk = [
    withRange(left.dryKilograms, units.mass),
    withRange(left.nitrogenGrams, units.nitrogen),
  ];
  return (
    <div className="stock-books">
      <Figured
        says={`Put on it since, ${put}: ${given.join(' of dry weight with ')} of nitrogen.`}
        figures={putOnFigures(given, account, shown)}
      />
      <Figured
        says={`With what was there before, it should have shrunk to ${shrunk.join(' dry, with ')} of nitrogen${
          takenDryKilograms > 0
            ? `; ${estimate(takenDryKilograms, units.mass)} of it were taken off and laid`
            : ''
        }.`}
        figures={shrunkFigures(shrunk, account, shown)}
      />
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
  const grass = estimate(keep.clippingsLitres, units.volume);
  const wanted = estimate(keep.leavesLitres, units.volume);
  const onHand = estimate(keep.onHandLitres, units.volume);
  return (
    <Figured
      says={
        `To keep for ${month}: if all the grass of that month came to the heap, about ${grass}, it would want ${wanted} of these leaves with it. ` +
        `There are ${onHand}: ${keep.onHandLitres >= keep.leavesLitres ? 'enough.' : 'gather more, or leave some of the grass lying.'}`
      }
      figures={juneFigures({ ...keep, bagLitres: null }, { units })}
    />
  );
}
