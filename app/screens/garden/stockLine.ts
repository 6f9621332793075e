import { assertNever } from '../../core/result';
import { materialById } from '../../document/materialValues';
import type { Amount, Garden, Stock } from '../../document/schema';
import { stockAccount } from '../../store/selectors';
import { countOf } from '../../words/figures';
import type { StockLine } from '../../words/stockWords';
import type { Shown } from '../shown';

/** The words typed; where they were typed in another kind of units, what that is in the garden's own. */
function typedWords({ text, quantity }: Amount, { units, estimate }: Shown): string {
  if (quantity.kind !== 'mass' && quantity.kind !== 'volume') return text;
  const isMass = quantity.kind === 'mass';
  const unit = isMass ? units.mass : units.volume;
  const own = new RegExp(`\\b(?:${unit.symbol}|${unit.one}|${unit.many})\\b`, 'i');
  return own.test(text)
    ? text
    : `${text} (${estimate(isMass ? quantity.kilograms : quantity.litres, unit)})`;
}

/** What a heap was given, and what is left of a store, in the measure its start was typed in. */
export function stockLine(garden: Garden, stock: Stock, shown: Shown): StockLine {
  const account = stockAccount(garden, stock.id);
  const isDry =
    !stock.amount ||
    account.startDryKilograms <= 0 ||
    stock.amount.quantity.kind === 'mown' ||
    stock.amount.quantity.kind === 'depth';
  const measured = (dryKilograms: number): string =>
    isDry || !stock.amount
      ? shown.estimate(dryKilograms, shown.units.mass)
      : quantityWords(
          garden,
          stock.amount.quantity,
          Math.max(0, dryKilograms) / account.startDryKilograms,
          shown,
        );
  const some = (dryKilograms: number) => (dryKilograms > 0 ? measured(dryKilograms) : null);
  const isTold = stock.role === 'store' && account.takenDryKilograms > 0;
  return {
    name: materialById(garden, stock.materialId).name,
    start: stock.amount ? typedWords(stock.amount, shown) : 'nothing',
    day: shown.dayWord(stock.date),
    added: some(account.addedDryKilograms),
    laid: some(account.takenDryKilograms),
    left: isTold ? (some(account.leftDryKilograms) ?? '') : null,
    isDry,
  };
}

/** So many times a typed quantity, in the same measure. */
function quantityWords(
  garden: Garden,
  quantity: Amount['quantity'],
  times: number,
  shown: Shown,
): string {
  switch (quantity.kind) {
    case 'containers': {
      const container = garden.containers.find(({ id }) => id === quantity.containerId);
      if (!container) throw new Error(`No container ${quantity.containerId}`);
      return countOf(quantity.count * times, container.name, container.plural);
    }
    case 'mass':
      return shown.estimate(quantity.kilograms * times, shown.units.mass);
    case 'volume':
      return shown.estimate(quantity.litres * times, shown.units.volume);
    case 'mown':
    case 'depth':
      throw new RangeError('No measure of a stock: it is told by dry weight');
    default:
      return assertNever(quantity);
  }
}
