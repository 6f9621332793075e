import type { Coefficients } from '../../core/season/coefficients';
import { coverCoefficients } from '../../tables/coefficients/coverCoefficients';
import { cropUptakeCoefficients } from '../../tables/coefficients/cropUptakeCoefficients';
import { decompositionCoefficients } from '../../tables/coefficients/decompositionCoefficients';
import { soilCoefficients } from '../../tables/coefficients/soilCoefficients';
import type { Row } from '../../tables/shapes';
import { rateHeadings, ratesLead, rateWords } from '../../words/rateWords';
import { CitedRows } from '../CitedRows';

type Rates = Partial<Readonly<Record<keyof Coefficients, Row>>>;

const groups: Readonly<Record<keyof typeof rateHeadings, Rates>> = {
  rotting: decompositionCoefficients,
  cover: coverCoefficients,
  soil: soilCoefficients,
  crops: cropUptakeCoefficients,
};

const named = (rates: Rates): readonly { name: string; row: Row }[] =>
  (Object.entries(rates) as [keyof Coefficients, Row][]).map(([key, row]) => ({
    name: rateWords[key],
    row,
  }));

/** Every number of the day's sums, with its range, where it is from and how well it is known. */
export function RateTable() {
  return (
    <>
      <p className="soft">{ratesLead}</p>
      {(Object.keys(groups) as (keyof typeof groups)[]).map((group) => (
        <section key={group} className="section" aria-labelledby={`rates-${group}`}>
          <h2 id={`rates-${group}`} className="section-head">
            {rateHeadings[group]}
          </h2>
          <CitedRows
            rows={named(groups[group])}
            label={`${rateHeadings[group]}: each number with its source`}
          />
        </section>
      ))}
    </>
  );
}
