import { textFromDay, type DayNumber } from '../core/days';
import { mowingAccount, mowingMass, stockAccount } from '../document/accounts';
import { materialFrom } from '../document/materialValues';
import { ofBed } from '../document/ofBed';
import type { Application, Bed, Garden, Mowing, Planting } from '../document/schema';
import type { MowingsState } from './contract';
import { localToday, todayDayOf, todayTextOf } from './today';

export { mowingAccount, mowingMass, stockAccount };
export type { MowingAccount, StockAccount } from '../document/accounts';

/** Today as a day number: the garden's own, else the computer's. */
export const todayOf = (state: Pick<MowingsState, 'garden' | 'about'>): DayNumber =>
  todayDayOf(state, localToday);

/** Today as `YYYY-MM-DD`. */
export const todayText = (state: Pick<MowingsState, 'garden' | 'about'>): string =>
  todayTextOf(state, localToday);

/** Name of the step that undo would take back, or null. */
export const undoLabel = ({ past }: Pick<MowingsState, 'past'>): string | null =>
  past.at(-1)?.label ?? null;
export const redoLabel = ({ future }: Pick<MowingsState, 'future'>): string | null =>
  future[0]?.label ?? null;

/** Plantings that stand on a bed on a day by their typed dates; without an end they stand. */
export const plantingsOn = (garden: Garden, bedId: string, day: DayNumber): Planting[] => {
  const date = textFromDay(day);
  return ofBed(garden.plantings, bedId).filter(
    ({ started, cleared }) => started <= date && (cleared === null || cleared > date),
  );
};

/** A bed's layers, newest first. */
export const layersOn = (garden: Garden, bedId: string): Application[] =>
  ofBed(garden.applications, bedId).toSorted((one, other) =>
    one.date < other.date ? 1 : one.date > other.date ? -1 : 0,
  );

/** Mowings of which something is still in hand, newest first. */
export const openMowings = (garden: Garden): Mowing[] =>
  garden.mowings
    .filter(
      (mowing) => mowing.rest.to === 'undecided' && mowingAccount(garden, mowing).leftShare > 0.005,
    )
    .sort((one, other) => (one.date < other.date ? 1 : one.date > other.date ? -1 : 0));

/**
 * The lawn or stock whose sprays and feeds must be asked about before a layer is
 * taken from it, or null when it was asked, or cannot carry anything.
 */
export function unaskedSource(
  garden: Garden,
  from: Application['from'],
): { readonly lawnId: string } | { readonly stockId: string } | null {
  if (from.source === 'mowing') {
    const lawnId = garden.mowings.find(({ id }) => id === from.mowingId)?.lawnId;
    const lawn = garden.lawns.find(({ id }) => id === lawnId);
    return lawn?.treatment.answer === 'not asked' ? { lawnId: lawn.id } : null;
  }
  if (from.source === 'elsewhere') return null;
  const stock = garden.stock.find(({ id }) => id === from.stockId);
  const mayCarry = stock !== undefined && materialFrom(garden, from).row.mayCarryWeedkiller;
  return mayCarry && stock.treatment.answer === 'not asked' ? { stockId: stock.id } : null;
}

/** The share of a run's days that nobody measured: "rests on an imagined year". */
export function imaginedShare(kind: Uint8Array): number {
  const imagined = kind.reduce((count, one) => count + (one === 2 ? 1 : 0), 0);
  return kind.length > 0 ? imagined / kind.length : 0;
}

export const bedOf = (garden: Garden, bedId: string): Bed | undefined =>
  garden.beds.find(({ id }) => id === bedId);
