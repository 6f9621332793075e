import type { MaterialId } from '../../../app/tables/materials';
import { actingOf, layerOf, releasedPercent, type Site } from '../field';
import type { Cases, Ours } from './shape';

const oregon: Site = { station: 'portland-oregon', first: '2014-03-01', last: '2014-06-11' };
/** Six weeks from the end of April: when cover crops are tilled in there (assumed). */
export const tilledIn =
  (nitrogenPercent: number, id: MaterialId = 'cc-red-clover'): Ours =>
  (values) =>
    releasedPercent(
      oregon,
      [
        layerOf(id, '2014-04-30', 12, values, {
          placement: 'dug',
          nitrogenPercent,
          carbon: (12 / nitrogenPercent) * 40 * actingOf(id, values),
        }),
      ],
      values,
    );
const wholeSeason =
  (id: MaterialId, last: string): Ours =>
  (values) => {
    const site = { ...oregon, last };
    const ready = layerOf(id, '2014-04-30', 12, values, { placement: 'dug' });
    return releasedPercent(site, [ready], values);
  };

/** Dug in on a bed in the field: nitrogen that reached the soil over a bed without. */
export const tilled: Cases = {
  R17: tilledIn(3.5),
  R18: tilledIn(2.5),
  R19: tilledIn(1.5, 'cc-rye-early'),
  NA04: (values) => {
    const layer = layerOf('cc-red-clover', '2014-04-30', 12, values, {
      placement: 'dug',
      nitrogenPercent: 3.5,
      carbon: (12 / 3.5) * 40 * actingOf('cc-red-clover', values),
    });
    return releasedPercent({ ...oregon, last: '2014-09-30' }, [layer], values);
  },
  NA05: wholeSeason('cc-hairy-vetch', '2015-02-28'),
  NA14: wholeSeason('manure-cow-farmyard', '2015-02-28'),
};
