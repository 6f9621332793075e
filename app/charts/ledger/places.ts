import type { CameIn, Holding, WentOut } from '../../core/season/ledger';
import type { LedgerPlace, LedgerStream, LedgerWay } from '../../core/season/ledgerStreams';

/** What a stream or a place is coloured as: a source, or a kind of end. */
export type WayKind =
  | 'ready'
  | 'soil'
  | 'last year'
  | 'compost'
  | 'dug in'
  | 'cover'
  | 'rain'
  | 'air'
  | 'crop'
  | 'gas'
  | 'water'
  | 'hand';

export const placeKind: Readonly<Record<Holding, WayKind>> = {
  'ready in the soil': 'ready',
  'in the cover': 'cover',
  'rotting in the soil': 'dug in',
  'in compost': 'compost',
  'in young humus': 'last year',
  'in the crop': 'crop',
  'in the soil itself': 'soil',
};

const cameInKind: Readonly<Record<CameIn, WayKind>> = {
  'laid on': 'cover',
  'dug in': 'dug in',
  'compost and manure': 'compost',
  rain: 'rain',
  'fixed from the air': 'air',
  'reached by deeper roots': 'soil',
};

const wentOutKind: Readonly<Record<WentOut, WayKind>> = {
  picked: 'crop',
  'cleared away': 'crop',
  'raked off': 'hand',
  'lost to the air': 'gas',
  'washed out': 'water',
  'lost from wet soil': 'gas',
  'left below shallower roots': 'water',
};

/** Places from the left to the right; within one column none gives to another. */
const columns: readonly (readonly Holding[])[] = [
  ['in compost'],
  ['in the cover'],
  ['rotting in the soil'],
  ['in young humus', 'in the soil itself'],
  ['ready in the soil'],
  ['in the crop'],
];

export const isPlace = (end: LedgerStream['from'] | LedgerStream['to']): end is Holding =>
  Object.hasOwn(placeKind, end);
export const isCameIn = (end: LedgerStream['from']): end is CameIn =>
  Object.hasOwn(cameInKind, end);

/** The colour of a stream: of where it leads where that is the point of it, else of where it springs. */
export function streamKind({ from, to }: Pick<LedgerStream, 'from' | 'to'>): WayKind {
  if (!isPlace(to)) return wentOutKind[to];
  if (isCameIn(from)) return cameInKind[from];
  return to === 'in the crop' ? 'crop' : placeKind[from];
}

/** less than this is told as nothing [g/m2] */
export const leastShown = 0.005;

export const throughput = (place: LedgerPlace): number =>
  Math.max(place.opening + place.cameIn, place.wentOut + place.end);

/** The places through which anything passed, column by column; empty columns are left out. */
export function placesInColumns({ places }: LedgerWay): readonly (readonly LedgerPlace[])[] {
  return columns
    .map((names) =>
      names.flatMap((name) =>
        places.filter((place) => place.holding === name && throughput(place) >= leastShown),
      ),
    )
    .filter((column) => column.length > 0);
}

/**
 * Why nitrogen turns back within the bed, or null for a stream that leads on. Such a stream goes
 * under at the right and springs again at the left, with the same mark at both ends.
 */
export function turnOf({
  from,
  to,
}: Pick<LedgerStream, 'from' | 'to'>): 'held back' | 'left' | null {
  if (!isPlace(to)) return null;
  if (from === 'in the crop') return 'left';
  return from === 'ready in the soil' && to !== 'in the crop' ? 'held back' : null;
}
