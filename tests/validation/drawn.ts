import type { Coefficients } from '../../app/core/season/coefficients';
import { makeDraws } from '../../app/core/season/draws/drawnSeason';
import type { Points } from '../../app/core/season/draws/spread';
import { coefficientRows, typicalCoefficients } from '../../app/tables/coefficients';
import type { Row } from '../../app/tables/shapes';

/** How many draws make a range. */
export const draws = 200;
const hypercube = makeDraws(2025, draws);

/** Coefficients that the program draws: those whose row says for what one value is drawn. */
const drawnRows = Object.entries<Row>(coefficientRows).filter(
  ([, row]) => row.drawnPer !== undefined && row.drawnPer !== 'nothing',
);
export const drawnCoefficients: readonly string[] = drawnRows.map(([name]) => name);

/**
 * One whole set of values: likely ones, or those of a draw by the program's own drawing. The same
 * name in the same draw is the same value, wherever it is asked for.
 */
export class Values {
  readonly coefficients: Coefficients;
  readonly draw: number | null;

  /** @param draw null for likely values */
  constructor(draw: number | null) {
    this.draw = draw;
    this.coefficients = {
      ...typicalCoefficients(),
      ...Object.fromEntries(
        drawnRows.map(([name, row]) => [name, this.of(name, row, row.unit.includes('share'))]),
      ),
    };
  }

  /** A value between the ends of a spread (5 and 95 %); shares never leave 0-1. */
  of(name: string, { low, typical, high }: Points, isShare = false): number {
    if (this.draw === null) return typical;
    const shape = isShare && low > 0 && high < 1 ? 'share' : 'amount';
    return hypercube.value({ name, shape, low, typical, high }, this.draw);
  }

  /** Seed of the imagined weather; the typical run keeps the program's own. */
  get weatherSeed(): number {
    return this.draw === null ? 1 : 1000 + this.draw;
  }
}
