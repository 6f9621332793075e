/**
 * A unit as it stands on the screen. `app/amounts` chooses which; words and charts only use it.
 *
 *     shown = inside / size + zero
 */
export interface ShownUnit {
  /** after the number: "kg", "sq ft" */
  readonly symbol: string;
  /** inside units in one of these */
  readonly size: number;
  /** where the scale starts: 32 for Fahrenheit, else 0 */
  readonly zero: number;
  /** `fraction`: halves, quarters, eighths, as on a ruler in inches; `whole`: degrees, which have no natural nought */
  readonly style: 'decimal' | 'fraction' | 'whole';
  /** the word after one, and after more than one, for sentences and screen readers */
  readonly one: string;
  readonly many: string;
}

export const toShown = (inside: number, unit: ShownUnit): number => inside / unit.size + unit.zero;
export const fromShown = (shown: number, unit: ShownUnit): number =>
  (shown - unit.zero) * unit.size;
