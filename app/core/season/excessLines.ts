import type { ExcessClass } from './input';
import type { LineId, Limits, Lines } from './limits';

type LinedClass = Exclude<ExcessClass, 'legume' | 'cover'>;

const overFedRow: Readonly<Record<LinedClass, LineId>> = {
  'tender storage': 'over-fed tender storage',
  storage: 'over-fed storage',
  fruit: 'over-fed fruit',
  flower: 'over-fed flower',
  leaf: 'over-fed leaf',
  head: 'over-fed head',
  perennial: 'over-fed perennial',
};
const roomRow: Readonly<Record<LinedClass, LineId>> = {
  'tender storage': 'room tender storage',
  storage: 'room storage',
  fruit: 'room fruit',
  flower: 'room flower',
  leaf: 'room leaf',
  head: 'room head',
  perennial: 'room perennial',
};

const isLined = (excessClass: ExcessClass): excessClass is LinedClass =>
  excessClass !== 'legume' && excessClass !== 'cover';

export interface ClassNeed {
  readonly excessClass: ExcessClass;
  /** g N per m2 of bed */
  readonly need: number;
}

export interface ClassLines {
  readonly lines: Lines;
  /** row of the class with the largest need */
  readonly row: LineId;
  readonly excessClass: LinedClass;
}

const weightedMean = (
  parts: readonly { readonly line: number; readonly need: number }[],
): number => {
  const finite = parts.filter((part) => Number.isFinite(part.line));
  const need = finite.reduce((sum, part) => sum + part.need, 0);
  if (need <= 0) return Infinity;
  return finite.reduce((sum, part) => sum + part.line * part.need, 0) / need;
};

/**
 * The lines of what grows on a bed. Several classes on one bed share the line by their need, so
 * that moving a planting's share a little moves the line a little; one class alone has its row.
 *
 * @returns null where legumes and cover crops hold at least half of the need: they have rules of
 *   their own
 */
export function classLines(
  needs: readonly ClassNeed[],
  limits: Limits,
  use: 'over-fed' | 'room',
): ClassLines | null {
  const total = needs.reduce((sum, one) => sum + one.need, 0);
  const lined = needs.filter((one) => isLined(one.excessClass) && one.need > 0);
  const linedNeed = lined.reduce((sum, one) => sum + one.need, 0);
  if (linedNeed <= 0 || linedNeed <= total / 2) return null;
  const largest = lined.reduce((best, one) => (one.need > best.need ? one : best));
  if (!isLined(largest.excessClass)) return null;
  const rows = use === 'room' ? roomRow : overFedRow;
  const linesOf = (one: ClassNeed): Lines =>
    limits.lines[isLined(one.excessClass) ? rows[one.excessClass] : 'room storage'];
  const mean = (weight: keyof Lines): number =>
    weightedMean(lined.map((one) => ({ line: linesOf(one)[weight], need: one.need })));
  return {
    lines: { note: mean('note'), caution: mean('caution'), stop: mean('stop') },
    row: rows[largest.excessClass],
    excessClass: largest.excessClass,
  };
}
