import type { DayNumber } from '../days';
import { effectiveCount } from '../season/draws/bands';
import { drawWeigher } from '../season/draws/drawWeight';
import {
  mostBlocks,
  openBlock,
  poorShare,
  sharedDraws,
  type DrawsQuestion,
  type SharedDraws,
} from '../season/draws/runDraws';
import type { BedSeason } from '../season/input';
import type { Limits } from '../season/limits';
import { newWatch, watchSeason, type SeasonWatch } from '../season/watchSeason';
import type { PlanOdds } from './answer';
import type { PlanWeights } from './question';
import { looksOf, sharesOf, spellsOf } from './spells';
import { aimAt, nitrogenDistance, supplyOn, type SpellAim } from './standing';

/** A bed as it is and with other things laid on it, all in the same imagined seasons. */
export interface PairedQuestion {
  readonly base: DrawsQuestion;
  /** the same bed, day, seed and count with layers more */
  readonly others: readonly DrawsQuestion[];
  /** days of the plan, a week apart, within the run and not before today */
  readonly days: readonly DayNumber[];
  readonly weights: PlanWeights;
}

/** Shares of the imagined seasons in which a bed ends nearer to what it wants; together 1. */
export interface PairedOdds {
  readonly better: number;
  readonly worse: number;
  /** nearer or further by next to nothing */
  readonly alike: number;
}

export interface PairedAnswer {
  readonly bedId: string;
  /** imagined seasons that were run of each */
  readonly count: number;
  /** what they are worth once a test or a look has weighed them */
  readonly effectiveCount: number;
  /** against the bed as it is, in the order asked */
  readonly others: readonly PairedOdds[];
}

/** A comparison under way, one imagined season of all beds at a time. */
export interface PairedRun {
  readonly isDone: boolean;
  /** imagined seasons run, of all beds together, and how many it will be */
  readonly done: number;
  readonly of: number;
  next(): void;
  answer(): PairedAnswer;
}

/** A difference of distance below this [g N per m2 of bed] is none: no gardener could tell it (ours). */
export const leastDifference = 0.05;

/**
 * Distance of one imagined season [g N per m2 of bed]: as `standingOf` has it of the likely course,
 * from what a draw keeps.
 */
function distanceOf(
  input: BedSeason,
  watch: SeasonWatch,
  aims: readonly SpellAim[],
  ground: ReadonlyMap<number, number>,
  weights: PlanWeights,
): number {
  let nitrogen = 0;
  for (const aim of aims)
    if (aim.share > 0)
      nitrogen += aim.share * nitrogenDistance(supplyOn(input, watch, aim.judgedOn), aim, weights);
  let bare = 0;
  for (const { index, hidden } of watch.looks) bare += (ground.get(index) ?? 0) * (1 - hidden);
  return nitrogen + weights.groundGrams * bare;
}

/**
 * Runs a bed as it is and with each of some additions through the same imagined seasons, and counts
 * in which of them an addition is better: the bed ends nearer to what it wants. How far it is from
 * that is the distance the weekly plan is made by (model section 11): grams of nitrogen short of,
 * or over, what it can use, too much counting by kind of crop, and bare ground. The wants of a
 * season are those of the bed as it is, so that an addition cannot move its own mark.
 *
 * Season by season every uncertain number and the weather are the same for all of them, so they
 * differ by the additions alone. Tests and looks weigh the seasons as in `startDraws`, by the bed
 * as it is; where they leave too few, more are drawn in the same way.
 *
 * @returns a pure function of the question: the same seed, the same odds
 * @validity additions on or after today: what was laid before would change what a test should find
 * @source distance and weights: our own, `app/tables/planning.ts`
 */
export function startPaired(
  { base, others, days, weights }: PairedQuestion,
  limits: Limits,
  shared: SharedDraws = sharedDraws(base),
): PairedRun {
  const { count } = base;
  const { firstDay, today, bedId } = base.input;
  const weigher = drawWeigher(base);
  const looks = looksOf(days, base.input.lastDay);
  const spells = spellsOf(base.input, looks);
  const shares = sharesOf(looks);
  const ground = new Map(looks.map(({ day }, look) => [day - firstDay, shares[look]!]));
  const looked = [...new Set([...weigher.lookDays, ...ground.keys()])];
  const alsoOn = spells
    .map(({ judgedOn }) => judgedOn - firstDay)
    .filter((day) => day > today - firstDay);
  const all = [base, ...others];
  const watch = newWatch(base.input, looked, alsoOn);
  const seasonWeights: number[] = [];
  const better = others.map((): number[] => []);
  const worse = others.map((): number[] => []);
  let blocks = 1;
  let open = all.map((one) => openBlock(one, shared.block(0)));
  let done = 0;

  const next = (): void => {
    let aims: readonly SpellAim[] = [];
    let asItIs = 0;
    open.forEach((bed, at) => {
      bed.write(done % count);
      watchSeason(bed.input, bed.plan, watch);
      if (at === 0) {
        aims = spells.map((spell) => ({
          ...spell,
          ...aimAt(bed.input, watch, spell.judgedOn, limits, weights),
        }));
        seasonWeights.push(weigher.weight(bed.input, watch));
      }
      const distance = distanceOf(bed.input, watch, aims, ground, weights);
      if (at === 0) {
        asItIs = distance;
        return;
      }
      better[at - 1]!.push(asItIs - distance > leastDifference ? 1 : 0);
      worse[at - 1]!.push(distance - asItIs > leastDifference ? 1 : 0);
    });
    done += 1;
    if (done < blocks * count || blocks === mostBlocks) return;
    if (effectiveCount(Float64Array.from(seasonWeights)) >= poorShare * count) return;
    open = all.map((one) => openBlock(one, shared.block(blocks)));
    blocks += 1;
  };

  return {
    get isDone() {
      return done >= blocks * count;
    },
    get done() {
      return done * all.length;
    },
    get of() {
      return blocks * count * all.length;
    },
    next,
    answer: () => {
      const total = seasonWeights.reduce((sum, weight) => sum + weight, 0);
      // none fits what was measured: better all alike, said to be worth nothing
      const weighed = total > 0 ? seasonWeights : seasonWeights.map(() => 1);
      const sum = total > 0 ? total : weighed.length;
      const odds = (is: readonly number[]): number =>
        is.reduce((share, one, at) => share + one * weighed[at]!, 0) / sum;
      return {
        bedId,
        count: done,
        effectiveCount: total > 0 ? effectiveCount(Float64Array.from(seasonWeights)) : 0,
        others: others.map((_, at): PairedOdds => {
          const isBetter = odds(better[at]!);
          const isWorse = odds(worse[at]!);
          return {
            better: isBetter,
            worse: isWorse,
            alike: Math.max(0, 1 - isBetter - isWorse),
          };
        }),
      };
    },
  };
}

/** `startPaired` to the end. */
export function runPaired(
  question: PairedQuestion,
  limits: Limits,
  shared?: SharedDraws,
): PairedAnswer {
  const run = startPaired(question, limits, shared);
  while (!run.isDone) run.next();
  return run.answer();
}

/** Odds of the first addition in whole seasons; null where nothing was added. */
export const oddsOf = ({ others, count }: PairedAnswer): PlanOdds | null => {
  const [line] = others;
  if (!line) return null;
  const better = Math.round(line.better * count);
  return { better, worse: Math.min(count - better, Math.round(line.worse * count)), of: count };
};
