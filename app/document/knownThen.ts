import { textFromDay, type DayNumber } from '../core/days';
import type { Application, Garden, GardenEvent, Planting } from './schema';

type PickOut<Entry> = (list: Entry[], last: string) => Entry[];

/**
 * Picks out of a list what was known on a day: once, of a list that nobody can change any more, so
 * that an edit of another list leaves this one the same object.
 */
function pickedOnce<Entry>(pick: PickOut<Entry>): PickOut<Entry> {
  const kept = new WeakMap<Entry[], { readonly last: string; readonly picked: Entry[] }>();
  return (list, last) => {
    const before = kept.get(list);
    if (before?.last === last) return before.picked;
    const picked = pick(list, last);
    if (Object.isFrozen(list)) {
      Object.freeze(picked);
      kept.set(list, { last, picked });
    }
    return picked;
  };
}

// days that are written out sort as they come
const dated = <Entry extends { readonly date: string }>(list: Entry[], last: string): Entry[] =>
  list.filter(({ date }) => date <= last);
const applications = pickedOnce<Application>(dated);
const events = pickedOnce<GardenEvent>(dated);
const plantings = pickedOnce<Planting>((list, last) =>
  list
    .filter(({ started }) => started <= last)
    .map((planting) =>
      planting.cleared !== null && planting.cleared > last
        ? { ...planting, cleared: null }
        : planting,
    ),
);

const known = new WeakMap<Garden, { readonly today: DayNumber; readonly garden: Garden }>();

/**
 * The garden with what came after `today` taken out; an end that was not yet known is open again.
 * Made once for all beds where nobody can change the garden any more.
 */
export function knownThen(garden: Garden, today: DayNumber): Garden {
  const before = known.get(garden);
  if (before?.today === today) return before.garden;
  const last = textFromDay(today);
  const then: Garden = {
    ...garden,
    plantings: plantings(garden.plantings, last),
    applications: applications(garden.applications, last),
    events: events(garden.events, last),
  };
  if (Object.isFrozen(garden)) known.set(garden, { today, garden: Object.freeze(then) });
  return then;
}
