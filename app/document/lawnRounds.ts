import { dayOf, type DayNumber } from '../core/days';
import { likelyLot } from '../core/lawn/clippings';
import { logSpreadOfRange } from '../core/lawn/calibration';
import { mowingAccount } from './accounts';
import { lotOfAmount } from './keptLots';
import { lotInputOf } from './layerMass';
import { clippingsOf } from './materialValues';
import type { Garden, Mowing } from './schema';

/** A lawn mown on neighbouring days was mown in parts: they count as one. Our own choice. */
export const sameMowingDays = 3;

/** Likely dry matter and how far it may be off, as the spread of its logarithm. */
export interface Weighed {
  readonly median: number;
  readonly spread: number;
}

/** One mowing of a whole lawn, maybe in parts. */
export interface LawnRound {
  readonly day: DayNumber;
  readonly mowings: readonly Mowing[];
  /** dry matter of each part [kg] */
  readonly dry: readonly Weighed[];
  /** the same as carried off the lawn: what was left lying is not in it */
  readonly taken: readonly Weighed[];
  /** nitrogen carried off [g], without the spread of its content, which all parts share */
  readonly nitrogenTaken: readonly Weighed[];
}

/** Dry matter of one mowing [kg]. */
export function weighMowing(garden: Garden, mowing: Mowing): Weighed {
  const handling = { condition: 'just cut', wetness: mowing.wetness } as const;
  const input = lotInputOf(garden, mowing.amount, clippingsOf(garden, mowing), handling, null);
  const { dryKilograms } = lotOfAmount(mowing.amount, input);
  return { median: dryKilograms.typical, spread: logSpreadOfRange(dryKilograms) };
}

/** Share of a mowing that left the lawn: all of it, less what is said to have been left lying. */
function takenShare(garden: Garden, mowing: Mowing): number {
  if (mowing.rest.to !== 'lawn') return 1;
  const { totalDryKilograms, laidDryKilograms } = mowingAccount(garden, mowing);
  return totalDryKilograms > 0 ? Math.min(1, laidDryKilograms / totalDryKilograms) : 0;
}

const mowingsBetween = (garden: Garden, lawnId: string, from: DayNumber, to: DayNumber) =>
  garden.mowings
    .filter((mowing) => mowing.lawnId === lawnId)
    .map((mowing) => ({ mowing, day: dayOf(mowing.date) }))
    .filter(({ day }) => day >= from && day <= to)
    .sort((one, other) => one.day - other.day);

/**
 * Likely dry matter carried off a lawn from one day to another, both included [kg]: the median of all
 * that `lawnRounds` says was taken, without the draws that its ranges need. Null where nothing was mown.
 */
export function takenKilograms(
  garden: Garden,
  lawnId: string,
  from: DayNumber,
  to: DayNumber,
): number | null {
  const mowings = mowingsBetween(garden, lawnId, from, to);
  if (mowings.length === 0) return null;
  return mowings.reduce((sum, { mowing }) => {
    const handling = { condition: 'just cut', wetness: mowing.wetness } as const;
    const input = lotInputOf(garden, mowing.amount, clippingsOf(garden, mowing), handling, null);
    return sum + likelyLot(input).dryKilograms * takenShare(garden, mowing);
  }, 0);
}

/** Mowings of a lawn from one day to another, both included, oldest first. */
export function lawnRounds(
  garden: Garden,
  lawnId: string,
  from: DayNumber,
  to: DayNumber,
): LawnRound[] {
  const mowings = mowingsBetween(garden, lawnId, from, to);
  const rounds: { day: DayNumber; mowings: Mowing[] }[] = [];
  for (const { mowing, day } of mowings) {
    const open = rounds.at(-1);
    if (open && day - open.day <= sameMowingDays) open.mowings.push(mowing);
    else rounds.push({ day, mowings: [mowing] });
  }
  return rounds.map(({ day, mowings: parts }): LawnRound => {
    const dry = parts.map((mowing) => weighMowing(garden, mowing));
    const taken = parts.map((mowing, at): Weighed => {
      const { median, spread } = dry[at] ?? { median: 0, spread: 0 };
      return { median: median * takenShare(garden, mowing), spread };
    });
    return {
      day,
      mowings: parts,
      dry,
      taken,
      nitrogenTaken: taken.map(({ median, spread }, at) => {
        const mowing = parts[at];
        const content = mowing ? clippingsOf(garden, mowing).nitrogen : 0;
        return { median: median * 1000 * content, spread };
      }),
    };
  });
}
