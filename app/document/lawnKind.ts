import { dayOf, type DayNumber } from '../core/days';
import type { RecordedDay } from '../core/season/ahead';
import { droughtDays, droughtLine } from '../tables/lawnGrowthWater';
import { laidOutOnce } from './laidOut';
import { lawnTexture, lawnUnder, runInDays } from './lawnWeather';
import type { Garden, Lawn, LawnKind, Mowing } from './schema';
import { recordOf } from './weatherRecord';

/** Kinds that drought turns lean; the others are said to be poor already. */
const lush: readonly LawnKind[] = ['fed', 'ordinary', 'clover-rich'];
/** Of the days that count, so many must be known: nobody is told of a drought that was imagined. */
const knownShare = 0.9;

interface Known {
  readonly record: readonly RecordedDay[];
  /** by lawn and day: a lawn is asked about once for each of its layers */
  readonly shares: Map<string, number | null>;
}
/** Beside the weather of today stands that of a week ago, which may know less rain. */
const remembered = laidOutOnce<Known>(4);
/** The same of gardens that may still be changed, for as long as weather and log are the same objects. */
const loose = new WeakMap<Garden['weather'], WeakMap<Garden['events'], Known>>();

function knownOf(garden: Garden): Known {
  const make = (): Known => ({ record: recordOf(garden, Infinity), shares: new Map() });
  if (Object.isFrozen(garden)) return remembered(garden, '', make);
  const { weather, events } = garden;
  let byEvents = loose.get(weather);
  if (!byEvents) loose.set(weather, (byEvents = new WeakMap()));
  let known = byEvents.get(events);
  if (!known) byEvents.set(events, (known = make()));
  return known;
}

function reckoned(
  garden: Garden,
  grass: Lawn['grass'],
  day: DayNumber,
  whole: readonly RecordedDay[],
): number | null {
  const first = day - droughtDays - runInDays;
  const record = whole.filter((one) => one.day >= first && one.day < day);
  const isWhole = (one: RecordedDay): boolean =>
    one.minimumCelsius !== null && one.maximumCelsius !== null && one.rainMillimetres !== null;
  if (record.filter(isWhole).length < knownShare * (droughtDays + runInDays)) return null;
  const { water } = lawnUnder(garden, grass, day - droughtDays, day - 1, day - 1, 1, record);
  return water.reduce((sum, share) => sum + share, 0) / droughtDays;
}

/**
 * Share of its wanted water that a lawn got over the two weeks before a day, 0-1, from measured
 * weather alone; null where too little of it was measured to say.
 */
export function lawnWaterShare(
  garden: Garden,
  grass: Lawn['grass'],
  day: DayNumber,
): number | null {
  const { latitudeDegrees, elevationMetres } = garden.garden;
  const key = [grass, lawnTexture(garden), latitudeDegrees, elevationMetres ?? 0, day].join();
  const { record, shares } = knownOf(garden);
  const known = shares.get(key);
  if (known !== undefined) return known;
  const share = reckoned(garden, grass, day, record);
  shares.set(key, share);
  return share;
}

/** A lawn's kind on a day: its own, or lean when it had too little water before. */
export function lawnKindOn(garden: Garden, lawn: Lawn, day: DayNumber): LawnKind {
  if (!lush.includes(lawn.kind)) return lawn.kind;
  const share = lawnWaterShare(garden, lawn.grass, day);
  return share !== null && share < droughtLine.typical ? 'lean' : lawn.kind;
}

/**
 * What a mowing is of: what the gardener said of it, else its lawn's kind, which drought turns
 * lean by itself. Of a mowing that lies ahead only the weather up to the garden's own day counts.
 */
export function mowingKind(garden: Garden, lawn: Lawn, mowing: Mowing): LawnKind {
  if (mowing.kind !== null) return mowing.kind;
  const { today } = garden.garden;
  const last = today === null ? Infinity : dayOf(today) + 1;
  return lawnKindOn(garden, lawn, Math.min(dayOf(mowing.date), last));
}
