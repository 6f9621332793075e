import { Figured } from '../../controls/Figured';
import type { Bed } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { countOf } from '../../words/figures';
import { useShown } from '../shown';
import { useGarden, useMowings } from '../store';
import { roomWhy } from '../why/bedWhys';
import { leastPart, usualContainer } from './layAdvice';

/** How many bags of greens the bed has room for to the end of the season, where it has any. */
export function RoomLine({ bed, results }: { readonly bed: Bed; readonly results: BedResults }) {
  const garden = useGarden();
  const shown = useShown();
  const draws = useMowings((state) => state.draws[bed.id]);
  const { room, state } = results.verdict;
  if (room === null || (state !== 'short' && state !== 'about right')) return null;
  const grams = room * bed.areaM2;
  const container = usualContainer(garden);
  const count = container ? grams / container.grams : 0;
  const isCounted = container !== null && count >= leastPart;
  const words = isCounted
    ? countOf(count, container.one, container.many)
    : shown.estimate(grams, shown.units.nitrogen);
  const why = roomWhy({ garden, results, draws, shown }, bed.areaM2, isCounted ? container : null);
  return room <= 0 ? (
    <Figured
      className="small"
      says="No room for greens this season."
      figures={[{ text: 'No room', why }]}
    />
  ) : (
    <Figured
      className="small"
      says={`Room for about ${words} ${isCounted ? 'of clippings' : 'of nitrogen in greens'} in all, to the end of the season${state === 'about right' ? ': so much does no harm' : ''}.`}
      figures={[{ text: words, why }]}
    />
  );
}
