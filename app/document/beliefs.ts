import type { Faults } from './faults';
import type { Garden } from './schema';

/**
 * Days of things that belong together and cannot be in another order.
 *
 * What looks impossible and is lawful:
 *
 * | what | meaning |
 * |---|---|
 * | two soil tests of a bed on one day | the later entry counts |
 * | two readings of the rain gauge on one day | both count: it was emptied in between |
 * | several picks, waterings, layers on a day | all count, in the order of a day, never of the file |
 * | shares of a bed that add up to more than it | plants stand in between each other: a note |
 * | cleared before the first pick | nothing was picked |
 * | a layer from a store laid before the day its amount was noted | the amount is what was left on that day |
 * | a bed known from a day after today | it is not used until then |
 * | entries of days before a bed is known | they stand in its log and are left out of the sums |
 * | a plant that stays for years, cleared after seasons nobody wrote about | it stood through them |
 * | an amount of nothing | a layer that leaves no trace |
 * | days, months or years without weather | filled up to five days, else imagined from the usual weather, and marked |
 */
export function orderFaults(garden: Garden, faults: Faults): void {
  const plantings = new Map(garden.plantings.map((planting) => [planting.id, planting]));
  garden.events.forEach((event, index) => {
    if (event.kind !== 'harvest') return;
    const planting = plantings.get(event.plantingId);
    if (!planting) return;
    const { started, cleared, how } = planting;
    if (event.date < started) {
      const what = `it lies before its planting was ${how} (${started}): change one of the two days`;
      faults.broken('events', index, null, what);
    } else if (cleared !== null && event.date > cleared) {
      const what = `it lies after its planting was cleared (${cleared}): change one of the two days`;
      faults.broken('events', index, null, what);
    }
  });
  const mown = new Map(garden.mowings.map(({ id, date }) => [id, date]));
  garden.applications.forEach(({ from, date }, index) => {
    if (from.source !== 'mowing') return;
    const day = mown.get(from.mowingId);
    if (day === undefined || date >= day) return;
    const what = `it was laid before it was mown (${day}): change one of the two days`;
    faults.broken('applications', index, null, what);
  });
}
