import { lotOf, type Lot } from '../core/lawn/clippings';
import type { LotInput } from '../core/lawn/lotInput';
import type { Amount } from './schema';

/** A lot, and all it hangs on. */
interface Known {
  readonly of: string;
  readonly lot: Lot;
}
const lots = new WeakMap<Amount, Known>();
/**
 * Lots by all they hang on: two bags of the same grass hold the same in whichever layer. A log of ten
 * years has thousands of layers and some dozen amounts.
 */
const alike = new Map<string, Known>();
/** So many are kept, those made last. */
const most = 500;

function lotLike(of: string, input: LotInput): Known {
  const known = alike.get(of);
  if (known) return known;
  const made = { of, lot: lotOf(input) };
  alike.set(of, made);
  if (alike.size > most) alike.delete(alike.keys().next().value!);
  return made;
}

/** All that a lot hangs on; its draws tell one row used twice from two rows alike. */
const keyOf = (input: LotInput): string => {
  // only a depth asks how much it lies on
  const areaM2 = input.quantity.kind === 'depth' ? input.areaM2 : null;
  const isUnchanged = input.moistureNowPercent === input.stuff.moisturePercent;
  return `${String(isUnchanged)} ${JSON.stringify({ ...input, areaM2 })}`;
};

/**
 * `lotOf`, whose draws are remembered beside the amount they are of, and for amounts alike: an edit
 * changes one amount of a whole log. What else the lot hangs on (a container weighed anew, another material) makes it anew.
 *
 * @param amount as the garden holds it
 * @param input  what `lotInputOf` makes of it
 */
export function lotOfAmount(amount: Amount, input: LotInput): Lot {
  const of = keyOf(input);
  let known = lots.get(amount);
  if (known?.of !== of) lots.set(amount, (known = lotLike(of, input)));
  return known.lot;
}
