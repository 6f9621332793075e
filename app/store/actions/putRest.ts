import type { Garden, Stock } from '../../document/schema';
import { dryGrass, dryStores } from '../../document/dryStores';
import { stepNames } from '../../words/stepNames';
import type { RestWish } from '../contract';
import { freshIds } from '../freshIds';
import { changeIn } from './changing';
import { treatmentOfClippings } from './stockTreatment';

const isAlike = (one: Stock['treatment'], other: Stock['treatment']): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/**
 * The store that dry clippings of a lawn go to. Grass of lawns that were treated otherwise is kept
 * apart: what was put on them goes with it.
 */
function dryStoreFor(garden: Garden, lawnId: string, date: string): Stock {
  const lawn = garden.lawns.find(({ id }) => id === lawnId);
  if (!lawn) throw new Error(`No lawn ${lawnId}`);
  const stores = dryStores(garden);
  const same = stores.find(({ treatment }) => isAlike(treatment, treatmentOfClippings(lawn)));
  if (same) {
    // begun by clippings dried before it, or on the same day: none of them is lost
    if (same.amount === null && same.date > date) same.date = date;
    return same;
  }
  const store: Stock = {
    id: freshIds('stock', garden.stock)(),
    name: stores.length === 0 ? stepNames.dryStore : `${stepNames.dryStore}, ${lawn.name}`,
    materialId: dryGrass,
    role: 'store',
    amount: null,
    date,
    treatment: { ...treatmentOfClippings(lawn) },
  };
  garden.stock.push(store);
  return garden.stock.at(-1)!;
}

/** Writes down where the rest of a mowing goes; a store for dry grass is begun where there is none. */
export function putRest(garden: Garden, mowingId: string, rest: RestWish): void {
  const mowing = garden.mowings.find(({ id }) => id === mowingId);
  if (!mowing) return;
  changeIn(garden, 'mowings', mowingId, {
    rest:
      rest.to === 'dry'
        ? { to: 'store', stockId: dryStoreFor(garden, mowing.lawnId, mowing.date).id }
        : rest,
  });
}
