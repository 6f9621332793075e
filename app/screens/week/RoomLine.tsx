import type { Bed, Garden, Mowing } from '../../document/schema';
import { mowingMass } from '../../document/accounts';
import type { BedResults } from '../../store/contract';
import { openMowings } from '../../store/selectors';
import { countOf } from '../../words/figures';
import { useShown } from '../shown';
import { useGarden } from '../store';

/** What one usual container of this garden's clippings holds of nitrogen [g], by its latest mowing. */
function usualContainer(
  garden: Garden,
): { readonly one: string; readonly many: string; readonly grams: number } | null {
  const inContainers = (mowing: Mowing) => mowing.amount.quantity.kind === 'containers';
  const latest =
    openMowings(garden).find(inContainers) ??
    garden.mowings
      .filter(inContainers)
      .reduce<Mowing | null>((best, one) => (best && best.date >= one.date ? best : one), null);
  if (!latest || latest.amount.quantity.kind !== 'containers') return null;
  const { count, containerId } = latest.amount.quantity;
  const container = garden.containers.find(({ id }) => id === containerId);
  if (!container || count <= 0) return null;
  return {
    one: container.name,
    many: container.plural,
    grams: mowingMass(garden, latest).nitrogenGrams / count,
  };
}

/** How many bags of greens the bed has room for to the end of the season, where it has any. */
export function RoomLine({ bed, results }: { readonly bed: Bed; readonly results: BedResults }) {
  const garden = useGarden();
  const shown = useShown();
  const { room, state } = results.verdict;
  if (room === null || (state !== 'short' && state !== 'about right')) return null;
  const grams = room * bed.areaM2;
  const container = usualContainer(garden);
  const count = container ? grams / container.grams : 0;
  const words =
    container && count >= 0.25
      ? countOf(count, container.one, container.many)
      : shown.estimate(grams, shown.units.nitrogen);
  return room <= 0 ? (
    <p className="small">No room for greens this season.</p>
  ) : (
    <p className="small">
      Room for about {words} {container && count >= 0.25 ? 'of clippings' : 'of nitrogen in greens'}{' '}
      in all, to the end of the season.
    </p>
  );
}
