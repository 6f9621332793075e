import { dayOf } from '../../core/days';
import { flowKinds } from '../../core/season/flows';
import type { CoverState, NitrogenState } from '../../core/season/verdict';
import type { Bed, Garden } from '../../document/schema';
import type { BedResults } from '../../store/contract';

/** How the beds stood when the week began. */
export interface WeekBefore {
  /** YYYY-MM-DD */
  readonly from: string;
  readonly to: string;
  readonly states: Readonly<
    Record<string, { readonly nitrogen: NitrogenState; readonly cover: CoverState }>
  >;
}

export interface ChangedBed {
  readonly bed: Bed;
  readonly was: NitrogenState;
  readonly results: BedResults;
}

/** What a week brought. */
export interface WeekNews {
  readonly rainMillimetres: number;
  readonly rainDays: number;
  /** grams of nitrogen washed out of each bed, most first; none for beds that lost next to nothing */
  readonly washed: readonly { readonly bed: Bed; readonly grams: number }[];
  readonly nitrogen: readonly ChangedBed[];
  readonly cover: readonly {
    readonly bed: Bed;
    readonly was: CoverState;
    readonly results: BedResults;
  }[];
}

/** Days with less are no days of rain (the usual line of weather services). */
const wetDay = 1;
/** Under this nobody would notice what was washed out [g N/m2]; ours. */
const leastWashed = 0.05;

const washedOut = flowKinds.flatMap(({ to }, index) => (to === 'leached' ? [index] : []));

/** How the beds stand now, to be held against them when the week is over. */
export const weekBefore = (
  from: string,
  to: string,
  bedResults: Readonly<Record<string, BedResults>>,
): WeekBefore => ({
  from,
  to,
  states: Object.fromEntries(
    Object.entries(bedResults).map(([id, { verdict }]) => [
      id,
      { nitrogen: verdict.state, cover: verdict.coverState },
    ]),
  ),
});

/**
 * Rain, what was washed out, and which beds are in another state than when the week began.
 *
 * @returns null until every bed has been reckoned for the week's last day
 */
export function weekNews(
  garden: Garden,
  before: WeekBefore,
  bedResults: Readonly<Record<string, BedResults>>,
): WeekNews | null {
  const [first, last] = [dayOf(before.from) + 1, dayOf(before.to)];
  const beds = garden.beds.flatMap((bed) => {
    const results = bedResults[bed.id];
    return results?.season.today === last ? [{ bed, results }] : [];
  });
  if (beds.length < garden.beds.length) return null;
  const week = (series: ArrayLike<number>, { season }: BedResults): number[] =>
    Array.from({ length: last - first + 1 }, (_, index) => {
      return series[first + index - season.firstDay] ?? 0;
    });
  const sum = (values: readonly number[]): number => values.reduce((total, one) => total + one, 0);
  const open = beds.find(({ bed }) => bed.roof === 'open') ?? beds[0];
  const rain = open ? week(open.results.season.rain, open.results) : [];
  const changed = beds.flatMap(({ bed, results }) => {
    const was = before.states[bed.id];
    return was ? [{ bed, results, was }] : [];
  });
  return {
    rainMillimetres: sum(rain),
    rainDays: rain.filter((millimetres) => millimetres >= wetDay).length,
    washed: beds
      .map(({ bed, results }) => ({
        bed,
        perM2: sum(washedOut.map((index) => sum(week(results.season.flows[index] ?? [], results)))),
      }))
      .filter(({ perM2 }) => perM2 >= leastWashed)
      .map(({ bed, perM2 }) => ({ bed, grams: perM2 * bed.areaM2 }))
      .sort((one, other) => other.grams - one.grams),
    nitrogen: changed
      .filter(({ was, results }) => was.nitrogen !== results.verdict.state)
      .map(({ bed, was, results }) => ({ bed, was: was.nitrogen, results })),
    cover: changed
      .filter(({ was, results }) => was.cover !== results.verdict.coverState)
      .map(({ bed, was, results }) => ({ bed, was: was.cover, results })),
  };
}
