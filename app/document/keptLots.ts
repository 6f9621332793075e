import { lotOf, type Lot } from '../core/lawn/clippings';
import type { LotInput } from '../core/lawn/lotInput';
import type { Amount } from './schema';

const lots = new WeakMap<Amount, { readonly of: string; readonly lot: Lot }>();

/** All that a lot hangs on; its draws tell one row used twice from two rows alike. */
const keyOf = (input: LotInput): string =>
  `${String(input.moistureNowPercent === input.stuff.moisturePercent)} ${JSON.stringify(input)}`;

/**
 * `lotOf`, whose draws are remembered beside the amount they are of: an edit changes one amount of a
 * whole log. What else the lot hangs on (a container weighed anew, another material) makes it anew.
 *
 * @param amount as the garden holds it
 * @param input  what `lotInputOf` makes of it
 */
export function lotOfAmount(amount: Amount, input: LotInput): Lot {
  const of = keyOf(input);
  const known = lots.get(amount);
  if (known?.of === of) return known.lot;
  const lot = lotOf(input);
  lots.set(amount, { of, lot });
  return lot;
}
