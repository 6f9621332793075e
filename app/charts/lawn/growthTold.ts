import type { LawnChartData } from './geometry';

type Week = LawnChartData['weeks'][number];

/** What the drawing comes to in words: its best week, and what all weeks that begin after today grow. */
export function growthTold({ weeks, today }: Pick<LawnChartData, 'weeks' | 'today'>): {
  readonly best: Week | null;
  readonly rest: number;
} {
  return {
    best: weeks.reduce<Week | null>(
      (most, one) => (one.typical > (most?.typical ?? 0) ? one : most),
      null,
    ),
    rest: weeks.reduce((sum, { from, typical }) => (from > today ? sum + typical : sum), 0),
  };
}
