import { countOf, twoFigures } from './figures';

/** What growth is counted in: the gardener's own bags, else weight. */
export interface GrowthUnit {
  readonly one: string;
  readonly many: string;
  /** "bags a week" */
  readonly aWeek: string;
  /** counted in quarters, as bags are; weight is said in two figures */
  readonly isCounted: boolean;
}

/** "1 1/2 bags", "12 kg" */
export const growthText = (amount: number, unit: GrowthUnit): string =>
  unit.isCounted ? countOf(amount, unit.one, unit.many) : `${twoFigures(amount)} ${unit.many}`;

/** The one sentence that the drawing comes to. */
export function lawnFinding(
  facts: {
    readonly best: { readonly amount: number; readonly when: string } | null;
    readonly mowings: number;
    readonly ratio: number;
    readonly rest: number;
  },
  unit: GrowthUnit,
): string {
  const { best, mowings, ratio, rest } = facts;
  const most = best
    ? `It grows fastest around ${best.when}, some ${growthText(best.amount, unit)} a week.`
    : 'It hardly grows this season.';
  const learnt =
    mowings === 0
      ? ' No mowing has told yet how it differs from its kind.'
      : ratio > 1.05
        ? ` Its mowings say it gives more than its kind usually does.`
        : ratio < 0.95
          ? ` Its mowings say it gives less than its kind usually does.`
          : ` Its mowings say it is as its kind usually is.`;
  return `${most}${learnt} From today to the season’s end about ${growthText(rest, unit)} are still to come.`;
}

export const lawnChartWords = {
  title: 'What it grows',
  expected: 'expected, a blade a week',
  expectedAhead: 'the same, weeks to come',
  band: 'likely, 8 weeks in 10',
  usual: 'as its kind usually grows',
  mown: 'mown, spread over the days it grew',
  mownTorn: 'mown, higher than there is room: the number says how much a week',
  firstMown: 'first mowing logged, days it grew not known',
  nothing: 'Nothing is reckoned to grow in this season, and no mowing is written down.',
  notReckoned: 'Growth is reckoned for the season of today only.',
  today: 'today',
  ahead: 'imagined from here',
  table: 'The same numbers as a table',
  hideTable: 'Hide the table',
} as const;
