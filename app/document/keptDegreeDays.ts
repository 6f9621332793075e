import { usualDegreeDays } from '../core/season/ahead';

type Asked = Parameters<typeof usualDegreeDays>;
type Record = Asked[0];
type Normals = Asked[1];

interface Kept {
  readonly lows: Normals['minimumCelsius'];
  readonly highs: Normals['maximumCelsius'];
  readonly sums: Map<string, number>;
}

const kept = new WeakMap<Record, Kept>();
/** A garden has a few dozen plantings; of each two or three days are asked. */
const most = 2_000;

/**
 * `usualDegreeDays`, remembered with the record it was summed over: a bed's question asks for the
 * same clock twice, and a whole garden's after every edit. Only of normals that nobody can change
 * any more, as those of the store's garden are; its record stays one and the same while its weather
 * does.
 */
export function usualDegreeDaysKept(...asked: Asked): number {
  const [record, normals, ...rest] = asked;
  const { minimumCelsius: lows, maximumCelsius: highs } = normals;
  if (!Object.isFrozen(lows) || !Object.isFrozen(highs)) return usualDegreeDays(...asked);
  let own = kept.get(record);
  if (own?.lows !== lows || own.highs !== highs || own.sums.size >= most) {
    own = { lows, highs, sums: new Map() };
    kept.set(record, own);
  }
  const key = rest.join();
  const known = own.sums.get(key);
  if (known !== undefined) return known;
  const sum = usualDegreeDays(...asked);
  own.sums.set(key, sum);
  return sum;
}
