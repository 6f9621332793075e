import type { Garden } from '../schema';

/**
 * The latest day by today of which something is written down for a bed, its own changes of size
 * and its making among it; null where nothing is.
 */
export function lastEntry(garden: Garden, bedId: string, today: string): string | null {
  const bed = garden.beds.find(({ id }) => id === bedId);
  const days = [
    ...garden.applications.filter((one) => one.bedId === bedId).map(({ date }) => date),
    ...garden.events.flatMap((one) => ('bedId' in one && one.bedId === bedId ? [one.date] : [])),
    ...garden.plantings
      .filter((one) => one.bedId === bedId)
      .flatMap(({ started, cleared }) => [started, cleared ?? started])
      .filter((day) => day <= today),
    ...(bed?.ground ? [bed.ground.on] : []),
    ...(bed?.earlierAreas?.slice(-1).map(({ until }) => until) ?? []),
  ];
  return days.reduce<string | null>(
    (last, day) => (last === null || day > last ? day : last),
    null,
  );
}
