import type { Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { countOf } from '../../words/figures';
import { useShown } from '../shown';
import { useGarden } from '../store';
import { leastPart, usualContainer } from './layAdvice';

/** How many bags of greens the bed has room for to the end of the season, where it has any. */
export function RoomLine({ bed, results }: { readonly bed: Bed; readonly results: BedResults }) {
  const garden = useGarden();
  const shown = useShown();
  const { room, state } = results.verdict;
  if (room === null || (state !== 'short' && state !== 'about right')) return null;
  const grams = room * bed.areaM2;
  const container = usualContainer(garden);
  const count = container ? grams / container.grams : 0;
  const isCounted = container !== null && count >= leastPart;
  const words = isCounted
    ? countOf(count, container.one, container.many)
    : shown.estimate(grams, shown.units.nitrogen);
  return room <= 0 ? (
    <p className="small">No room for greens this season.</p>
  ) : (
    <p className="small">
      Room for about {words} {isCounted ? 'of clippings' : 'of nitrogen in greens'} in all, to the
      end of the season.
    </p>
  );
}
