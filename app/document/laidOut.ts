import type { Garden } from './schema';

type Weather = Garden['weather'];

const gauges = new WeakMap<Garden['events'], string>();
/** Rain gauges that were read: they change the record as the weather itself does. */
export function gaugesOf({ events }: Pick<Garden, 'events'>): string {
  const known = gauges.get(events);
  if (known !== undefined) return known;
  const text = events
    .flatMap((event) =>
      event.kind === 'rain gauge' ? [`${event.date} ${String(event.millimetres)}`] : [],
    )
    .join();
  if (Object.isFrozen(events)) gauges.set(events, text);
  return text;
}

/**
 * Remembers what was made of a garden's weather for as long as that weather stays as it is: beds
 * share it, and an edit of a bed does not touch it. Only of gardens that nobody can change any more,
 * as all are that the store holds; of others it is made anew each time.
 *
 * @param most  so many are kept of one weather, those last used; what each weighs decides
 * @param make  what comes of it must hang on weather, gauges and key alone
 * @returns a function of garden, key and maker; what it gives back must not be changed
 */
export function laidOutOnce<Value>(
  most: number,
): (garden: Garden, key: string, make: () => Value) => Value {
  const kept = new WeakMap<Weather, Map<string, Value>>();
  return (garden, ownKey, make) => {
    if (!Object.isFrozen(garden) || !Object.isFrozen(garden.weather)) return make();
    const key = `${ownKey} ${gaugesOf(garden)}`;
    let values = kept.get(garden.weather);
    if (!values) kept.set(garden.weather, (values = new Map()));
    const found = values.get(key);
    const value = found ?? make();
    // last used, last in order
    values.delete(key);
    values.set(key, value);
    if (values.size > most) values.delete(values.keys().next().value!);
    return value;
  };
}
