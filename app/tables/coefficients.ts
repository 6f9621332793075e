import type { Coefficients } from '../core/season/coefficients';
import { coverCoefficients } from './coefficients/coverCoefficients';
import { cropUptakeCoefficients } from './coefficients/cropUptakeCoefficients';
import { decompositionCoefficients } from './coefficients/decompositionCoefficients';
import { soilCoefficients } from './coefficients/soilCoefficients';
import type { Row } from './shapes';

/** One cited row for every coefficient the day needs; a missing or misspelt key does not compile. */
export const coefficientRows = {
  ...decompositionCoefficients,
  ...coverCoefficients,
  ...soilCoefficients,
  ...cropUptakeCoefficients,
} as const satisfies Record<keyof Coefficients, Row>;

const coefficientNames = Object.keys(coefficientRows) as (keyof Coefficients)[];

/** The likely value of every coefficient, in the units of its row. */
export function typicalCoefficients(): Coefficients {
  return Object.fromEntries(
    coefficientNames.map((name) => [name, coefficientRows[name].typical]),
  ) as unknown as Coefficients;
}
