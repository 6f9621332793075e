import type { DayNumber } from '../../days';
import { mgPerKgFromGramsPerM2 } from '../../units';
import type { BedSeason } from '../input';
import type { Limits } from '../limits';
import { judgeNitrogen } from '../nitrogenState';
import { nitrogenStates, type NitrogenState } from '../verdict';
import type { SeasonWatch } from '../watchSeason';
import { bandReader, effectiveCount } from './bands';
import { mattersMost, type Influence } from './mattersMost';
import { isOverFed, windowOf, type OverFeeding, type OverFeedingWindow } from './overFeeding';
import { quantileDots } from './quantileDots';
import type { DrawsAnswer, DrawsKept, Headline } from './runDraws';

/** Share of all plantings' need of the season that was met; 1 where nothing was wanted. */
function needMetIn({ plantings }: SeasonWatch): number {
  let need = 0;
  let met = 0;
  for (const { thisSeason } of plantings) {
    need += thisSeason.need;
    // what one was paid of arrears from before is no help to another
    met += Math.min(thisSeason.need, thisSeason.met);
  }
  return need > 0 ? met / need : 1;
}

const fixedIn = ({ plantings }: SeasonWatch): number =>
  plantings.reduce((sum, { thisSeason }) => sum + thisSeason.fixed, 0);

const sumOf = (weights: Float64Array): number => weights.reduce((sum, weight) => sum + weight, 0);

/** What a bed is judged by today, over its draws. */
export function drawsOutcome(bed: BedSeason, limits: Limits): DrawsKept<DrawsAnswer> {
  const { firstDay, lastDay, today, bedId } = bed;
  const perGram = mgPerKgFromGramsPerM2(1, bed.soil.bulkDensityKgPerL, 30);
  const nitrateDays: DayNumber[] = [];
  for (let day = firstDay; day < lastDay; day += 7) nitrateDays.push(day);
  nitrateDays.push(lastDay);
  const empty = (): Float64Array => new Float64Array(0);
  let weights = empty();
  let columns: Record<Headline, Float64Array> = {
    ratio: empty(),
    needMet: empty(),
    fixed: empty(),
    leached: empty(),
  };
  let nitrate = nitrateDays.map(empty);
  const states: NitrogenState[] = [];
  /** the window of each draw in which it is over-fed, else null; and the windows there are */
  const overFedIn: (string | null)[] = [];
  const windows = new Map<string, OverFeedingWindow>();
  let hasRatio = true;

  const oddsOf = (isSo: (draw: number) => boolean, all: number): number =>
    weights.reduce((sum, weight, draw) => (isSo(draw) ? sum + weight : sum), 0) / all;

  const overFeeding = (all: number): OverFeeding | null => {
    let most: OverFeeding | null = null;
    for (const [plantingId, window] of windows) {
      const odds = oddsOf((draw) => overFedIn[draw] === plantingId, all);
      if (most === null || odds > most.odds) most = { ...window, odds };
    }
    // on a bed of several such crops one names the harm, and the odds are those of the bed
    return most && { ...most, odds: oddsOf((draw) => overFedIn[draw] !== null, all) };
  };

  return {
    grow(draws) {
      const grown = (column: Float64Array): Float64Array => {
        const larger = new Float64Array(draws);
        larger.set(column);
        return larger;
      };
      weights = grown(weights);
      columns = {
        ratio: grown(columns.ratio),
        needMet: grown(columns.needMet),
        fixed: grown(columns.fixed),
        leached: grown(columns.leached),
      };
      nitrate = nitrate.map(grown);
    },
    keep(draw, input, watch, weight) {
      const judged = judgeNitrogen(input, watch, today, limits);
      states.push(judged?.state ?? 'nothing planted');
      hasRatio &&= judged !== null;
      columns.ratio[draw] = judged?.ratio ?? 0;
      columns.needMet[draw] = needMetIn(watch);
      columns.fixed[draw] = fixedIn(watch);
      columns.leached[draw] = watch.leached;
      const { mineralTop } = watch.pools;
      for (let week = 0; week < nitrate.length; week++)
        nitrate[week]![draw] = mineralTop[nitrateDays[week]! - firstDay]! * perGram;
      const window = judged && windowOf(judged, limits);
      if (window) windows.set(window.plantingId, window);
      const isPast = judged && window && isOverFed(judged, window, input, watch, limits);
      overFedIn.push(isPast ? window.plantingId : null);
      weights[draw] = weight;
    },
    worth: () => effectiveCount(weights),
    answer(spread, blocks) {
      const total = sumOf(weights);
      // No draw came near a test: better all of them, said to be worth nothing, than one by chance.
      if (!(total > 0)) weights.fill(1);
      const all = sumOf(weights);
      const bandOfDraws = bandReader(weights);
      const influences = (outcome: Float64Array): readonly Influence[] =>
        mattersMost(spread, blocks, outcome, weights);
      return {
        bedId,
        count: weights.length,
        effectiveCount: total > 0 ? effectiveCount(weights) : 0,
        states: Object.fromEntries(
          nitrogenStates.map((state) => [state, oddsOf((draw) => states[draw] === state, all)]),
        ) as Record<NitrogenState, number>,
        ratio: hasRatio ? bandOfDraws(columns.ratio) : null,
        ratioDots: hasRatio ? quantileDots(columns.ratio, weights) : null,
        needMet: bandOfDraws(columns.needMet),
        fixed: bandOfDraws(columns.fixed),
        leached: bandOfDraws(columns.leached),
        nitrateDays,
        nitrate: nitrate.map(bandOfDraws),
        overFeeding: overFeeding(all),
        mattersMost: {
          ratio: hasRatio ? influences(columns.ratio) : [],
          needMet: influences(columns.needMet),
          fixed: influences(columns.fixed),
          leached: influences(columns.leached),
        },
      };
    },
  };
}
