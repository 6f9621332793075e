import { numberText } from '../../amounts/amountText';
import { twoFigures } from '../../words/figures';
import { toShown } from '../../core/shownUnit';
import { mowingMass } from '../../document/accounts';
import type { Application, Bed, Garden, Mowing } from '../../document/schema';
import type { BedResults } from '../../store/contract';
import { mowingAccount, openMowings } from '../../store/selectors';
import { limits } from '../../tables/thresholds';
import type { Shown } from '../shown';

/** What to lay on a bed today, as a person would type it. */
export interface LayAdvice {
  readonly amount: string;
  readonly placement: Application['placement'];
}

/** Under this part of a container nothing is worth carrying (ours). */
export const leastPart = 1 / 4;

/** The container this garden's clippings are counted in, and what one holds of nitrogen. */
export interface UsualContainer {
  readonly one: string;
  readonly many: string;
  readonly litres: number;
  readonly grams: number;
}

/** By the latest mowing that was counted in containers; those in hand come first. */
export function usualContainer(garden: Garden): UsualContainer | null {
  const inContainers = (mowing: Mowing) => mowing.amount.quantity.kind === 'containers';
  const latest =
    openMowings(garden).find(inContainers) ??
    garden.mowings
      .filter(inContainers)
      .reduce<Mowing | null>((best, one) => (best && best.date >= one.date ? best : one), null);
  if (!latest || latest.amount.quantity.kind !== 'containers') return null;
  const { count, containerId } = latest.amount.quantity;
  const container = garden.containers.find(({ id }) => id === containerId);
  if (!container || count <= 0) return null;
  return {
    one: container.name,
    many: container.plural,
    litres: container.litres,
    grams: mowingMass(garden, latest).nitrogenGrams / count,
  };
}

/** Whether a bed has room for so much of greens that it is worth walking there. */
export function hasRoom(garden: Garden, bed: Bed, { verdict }: BedResults): boolean {
  const grams = (verdict.room ?? 0) * bed.areaM2;
  const container = usualContainer(garden);
  // without a container: a third of a millimetre of greens is nothing one can spread (ours)
  return container ? grams >= leastPart * container.grams : (verdict.room ?? 0) >= leastGrams;
}
const leastGrams = 0.5;

const quarters = (count: number): number => Math.max(leastPart, Math.floor(count * 4) / 4);
const counted = (count: number, one: string, many: string): string =>
  `${numberText(count, true)} ${count <= 1 ? one : many}`;

/**
 * How much of the clippings in hand to lay on a bed that has room: what its caution advises where
 * it is short, else one thin layer, no more than there is room for and no more than there is.
 *
 * @param mowing  the clippings in hand
 * @returns null where there is no room
 */
export function layAdvice(
  garden: Garden,
  bed: Bed,
  results: BedResults,
  mowing: Mowing,
  { units }: Pick<Shown, 'units'>,
): LayAdvice | null {
  if (!hasRoom(garden, bed, results)) return null;
  const litresText = (litres: number) =>
    `${twoFigures(toShown(litres, units.volume))} ${units.volume.symbol}`;
  // the advice is about the freshest clippings alone
  const isFreshest = openMowings(garden)[0]?.id === mowing.id;
  const short = (isFreshest && results.cautions.find(({ kind }) => kind === 'short')?.detail) || {};
  const mending = Number(short['mendCount'] ?? 0);
  if (mending > 0)
    return {
      amount: counted(mending, String(short['mendOne']), String(short['mendMany'])),
      placement: 'hoed',
    };
  if (Number(short['mendLitres'] ?? 0) > 0)
    return { amount: litresText(Number(short['mendLitres'])), placement: 'hoed' };
  const whole = mowingMass(garden, mowing);
  if (whole.litres <= 0 || whole.nitrogenGrams <= 0) return null;
  const left = whole.litres * Math.max(0, mowingAccount(garden, mowing).leftShare);
  const room = ((results.verdict.room ?? 0) * bed.areaM2 * whole.litres) / whole.nitrogenGrams;
  // 1 mm on 1 m2 is 1 L
  const thin = limits.lines['layer just cut'].note * bed.areaM2;
  const litres = Math.min(left, room, thin);
  const { quantity } = mowing.amount;
  const container =
    quantity.kind === 'containers'
      ? garden.containers.find(({ id }) => id === quantity.containerId)
      : undefined;
  const amount = container
    ? counted(quarters(litres / container.litres), container.name, container.plural)
    : litresText(litres);
  return { amount, placement: 'laid' };
}
