import { failure, success, type Result } from '../../core/result';
import { bedsMadeOf } from '../bedPast';
import type { Garden } from '../schema';
import type { BedChangeFailure } from './changeFailure';

/** The garden with beds put away from a day on: gone from plans and lists, with their logs kept. */
export function retireBeds(
  garden: Garden,
  bedIds: readonly string[],
  on: string,
  today: string,
): Result<Garden, BedChangeFailure> {
  if (on > today) return failure({ kind: 'still to come' });
  const beds = garden.beds.filter(({ id }) => bedIds.includes(id));
  if (beds.length === 0 || beds.length < bedIds.length) return failure({ kind: 'no bed' });
  for (const { name, ground } of beds)
    if (ground && on <= ground.on)
      return failure({ kind: 'made since', bed: name, date: ground.on });
  return success({
    ...garden,
    beds: garden.beds.filter(({ id }) => !bedIds.includes(id)),
    retiredBeds: [...(garden.retiredBeds ?? []), ...beds.map((bed) => ({ ...bed, retired: on }))],
  });
}

/** The garden with a retired bed in use again, as if it had been lying there all the while. */
export function bringBack(garden: Garden, bedId: string): Result<Garden, BedChangeFailure> {
  const found = garden.retiredBeds?.find(({ id }) => id === bedId);
  if (!found) return failure({ kind: 'no bed' });
  const since = bedsMadeOf(garden, bedId).map(({ name }) => name);
  if (since.length > 0) return failure({ kind: 'made of it', beds: since });
  if (garden.beds.some(({ name }) => name === found.name))
    return failure({ kind: 'name', name: found.name });
  const { retired: _retired, ...bed } = found;
  const rest = (garden.retiredBeds ?? []).filter(({ id }) => id !== bedId);
  const { retiredBeds: _all, ...without } = garden;
  return success({
    ...without,
    beds: [...garden.beds, bed],
    ...(rest.length > 0 && { retiredBeds: rest }),
  });
}
