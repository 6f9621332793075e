import type { ReadingContext } from '../../../amounts/amount';
import { materialFrom, mowingOf } from '../../../document/materialValues';
import type { Application, Garden } from '../../../document/schema';
import type { LayingPart } from '../../../store/contract';
import { amountWords } from '../../amountWords';
import { placementWords } from '../../choices';
import type { Shown } from '../../shown';
import { weeksWords, type WeeksAhead } from './alternatives';

function stuffOf(garden: Garden, from: Application['from']): string {
  const mowing = mowingOf(garden, from);
  if (mowing) {
    const lawn = garden.lawns.find(({ id }) => id === mowing.lawnId);
    return lawn ? `clippings of ${lawn.name}` : 'clippings';
  }
  const stock = from.source === 'stock' && garden.stock.find(({ id }) => id === from.stockId);
  return stock ? stock.name : materialFrom(garden, from).name.toLowerCase();
}

/** "6 mm of clippings of Back lawn, limp, with 1 bag of leaves, in a week" */
export function alternativeWords(
  garden: Garden,
  context: ReadingContext,
  shown: Shown,
  parts: readonly LayingPart[],
  weeks: WeeksAhead,
  placement: Application['placement'] = 'laid',
): string {
  const [main, brown] = parts;
  if (!main) return '';
  const amountOf = (part: LayingPart): string =>
    `${amountWords(part.amount, garden, context, shown)} of ${stuffOf(garden, part.from)}`;
  const isGreen = materialFrom(garden, main.from).row.materialClass === 'green';
  return [
    amountOf(main),
    ...(isGreen ? [main.condition] : []),
    ...(brown ? [`with ${amountOf(brown)}`] : []),
    ...(placement === 'laid' ? [] : [placementWords[placement]]),
    weeksWords[weeks],
  ].join(', ');
}
