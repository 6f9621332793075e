import { coefficientRows } from '../../tables/coefficients';
import { pairedOddsWords } from '../../words/whatIfWords';
import type { PairedOdds } from '../../core/plan/pairedDraws';
import type { BedResults } from '../../store/contract';
import type { Why } from '../../words/why';
import { whyWords } from '../../words/why';
import { percent } from '../../words/chartFormat';
import { twoFigures } from '../../words/figures';
import type { Shown } from '../shown';
import { forecastWhy, type BedWhyFacts } from './bedWhys';
import { soilGives } from './notInSum';
import { rowSource } from './sourcesOf';

interface Arrival {
  readonly halfBy: number;
  readonly grams: number;
}

/** The day by which half of what a layer brings is in the soil, and how much that is in all. */
export function arrivalWhy({ halfBy, grams }: Arrival, shown: Shown): Why {
  return {
    of: 'When half of it is there.',
    formula:
      'Two runs of the same season and weather, with the layer and without: the first day on which half of all it will bring to the soil has come.',
    inputs: [
      ['Half is there by', shown.day(halfBy)],
      ['Brought in all', shown.estimate(grams, shown.units.nitrogenPerArea)],
    ],
    range: null,
    sources: [
      whyWords.model,
      rowSource('How fast greens on top rot against dug in', coefficientRows.surfaceRateGreen),
    ],
  };
}

/** The most nitrate a bed comes to. */
export function highestNitrateWhy(
  { mgPerKg, day }: { readonly mgPerKg: number; readonly day: number },
  results: BedResults,
  shown: Shown,
): Why {
  return {
    of: 'The most nitrate in the top of the soil.',
    formula: 'The highest evening from today to the season’s end, by the likely course.',
    inputs: [
      ['Most', `${twoFigures(mgPerKg)} mg/kg`],
      ['On', shown.day(day)],
      ['Today', `${twoFigures(results.verdict.nitrateMgPerKg)} mg/kg`],
    ],
    range: null,
    sources: [whyWords.model, ...soilGives(null)],
  };
}

/** Odds of an alternative against the bed as it is. */
export function oddsWhy(odds: PairedOdds): Why {
  return {
    of: 'Against as it is.',
    formula:
      'Bed and alternative run in the same imagined seasons, rows drawn alike. Better is the one that ends nearer to what the plan aims at.',
    inputs: [['Counted', pairedOddsWords(odds)]],
    range: null,
    sources: [whyWords.model],
  };
}

/** Share of what the crop could use, from the season's first morning to its end. */
export function metWhy(facts: BedWhyFacts, share: number): Why {
  const forecast = forecastWhy(facts);
  return {
    ...forecast,
    of: 'Share of what it could use.',
    formula:
      'What roots took and will take, and what they gather from the air, ÷ what the crop wants, day by day from the season’s first morning to its end.',
    inputs: [['It gets', percent(share)], ...forecast.inputs],
  };
}
