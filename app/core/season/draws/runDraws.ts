import type { DayNumber } from '../../days';
import { seedFrom } from '../../random';
import { flowKinds } from '../flows';
import type { BedSeason } from '../input';
import { ownBed } from '../ownInput';
import type { Limits } from '../limits';
import type { NitrogenState } from '../verdict';
import { newWatch, watchSeason, type SeasonWatch } from '../watchSeason';
import type { Band } from './bands';
import { makeDraws, type Draws } from './columns';
import { drawnBed } from './drawnBed';
import { drawnPlan } from './drawnPlan';
import type { WeatherSource } from './drawnWeather';
import { drawsOutcome } from './drawsOutcome';
import { drawWeigher } from './drawWeight';
import { imaginedMonths, type ImaginedMonths } from './imaginedMonths';
import type { Influence } from './mattersMost';
import type { OverFeeding } from './overFeeding';
import type { Look, SignCoefficients } from './signs';
import type { SeasonSpread } from './spread';
import type { TestedNitrate } from './testedNitrate';
import { weatherWriter } from './weatherWriter';

export interface DrawsQuestion {
  readonly input: BedSeason;
  readonly spread: SeasonSpread;
  readonly weather: WeatherSource;
  readonly tests: readonly TestedNitrate[];
  /** what was seen, smelt and felt; weighs the draws far less than a test */
  readonly signs?: {
    readonly looks: readonly Look[];
    readonly coefficients: SignCoefficients;
  };
  readonly seed: number;
  readonly count: number;
}

/** The numbers of a bed that are shown with their range. */
export const headlines = ['ratio', 'needMet', 'fixed', 'leached'] as const;
export type Headline = (typeof headlines)[number];

/** A bed over all its imagined seasons. Bands are 10-50-90; odds are shares of the weight. */
export interface DrawsAnswer {
  readonly bedId: string;
  /** draws that were run: as many as asked, or more where too few of them fitted what was found */
  readonly count: number;
  /** what the weighted draws are worth; well under `count` after a test that few draws foresaw */
  readonly effectiveCount: number;
  readonly states: Readonly<Record<NitrogenState, number>>;
  readonly ratio: Band | null;
  /** the same as dots of equal weight, see `quantileDots` */
  readonly ratioDots: readonly number[] | null;
  /** these three from the first morning of the season that holds today to the run's end */
  readonly needMet: Band;
  readonly fixed: Band;
  readonly leached: Band;
  /** nitrate of 0-30 cm [mg/kg], one band per `nitrateDays`: weekly over the run, and its last day */
  readonly nitrateDays: readonly DayNumber[];
  readonly nitrate: readonly Band[];
  /** odds of too much before flower, fruit or filling; null where no such crop stands today */
  readonly overFeeding: OverFeeding | null;
  /**
   * of each headline the three quantities whose draws move it most, with rank correlation; none
   * where it comes out alike in all draws or there is no such number
   */
  readonly mattersMost: Readonly<Record<Headline, readonly Influence[]>>;
}

/** One hypercube of draws and its weather. */
export interface DrawsBlock {
  readonly draws: Draws;
  readonly months: ImaginedMonths;
}

/** What the draws of a garden share from bed to bed. */
export interface SharedDraws {
  /** the first is what was asked for; later ones are made when a bed's draws prove poor */
  block(at: number): DrawsBlock;
}

/** Months kept of a later block, which few beds want: a year ahead. */
const mostMonthsLater = 13;

/**
 * @returns what `question` shares with those of other beds of one garden: same seed, count, place,
 *   normals and spread of the weather
 */
export function sharedDraws({ input, weather, seed, count }: DrawsQuestion): SharedDraws {
  const blocks: DrawsBlock[] = [];
  const make = (at: number): DrawsBlock => {
    const own = at === 0 ? seed : seedFrom(seed, at);
    const months =
      weather.kind === 'generated'
        ? imaginedMonths(
            input.normals,
            weather.spread,
            input.latitudeDegrees,
            own,
            count,
            at === 0 ? undefined : mostMonthsLater,
          )
        : { write: () => undefined };
    return { draws: makeDraws(own, count), months };
  };
  return { block: (at) => (blocks[at] ??= make(at)) };
}

/** Draws under way, one `next()` at a time, so that whoever runs them can look up in between. */
export interface DrawsRun<Answer> {
  readonly isDone: boolean;
  /** draws run, and how many it will be; the second grows where the draws prove poor */
  readonly done: number;
  readonly of: number;
  /** the days stepped so far, for those who count the work */
  readonly steps: number;
  next(): void;
  /** when it is done */
  answer(): Answer;
}

/** Weighted draws that are worth less than this share of those asked for are too few (ours). */
export const poorShare = 0.1;
/** ... and then as many again are drawn, up to so many times what was asked for (ours). */
export const mostBlocks = 4;

/** A bed that the draws of a block are written into, one by one. */
export function openBlock(
  { input: bed, spread, weather }: DrawsQuestion,
  { draws, months }: DrawsBlock,
) {
  const { input, write } = drawnBed(bed, spread, draws);
  const sky = weatherWriter(input, weather, months);
  const { plan, reorder } = drawnPlan(input, sky.plan);
  return {
    input,
    plan,
    write(draw: number): void {
      write(draw);
      sky.write(draw);
      reorder();
    },
  };
}

/** What is kept of draws, one place per draw, and what it says in the end. */
export interface DrawsKept<Answer> {
  /** makes room for as many draws as there will be; what is kept stays */
  grow(draws: number): void;
  /** takes down the draw that was run last */
  keep(draw: number, input: BedSeason, watch: SeasonWatch, weight: number): void;
  /** what the weighted draws so far are worth */
  worth(): number;
  /** @param blocks the hypercubes that were drawn, in their order */
  answer(spread: SeasonSpread, blocks: readonly Draws[]): Answer;
}

/**
 * Runs a bed in many imagined seasons: every quantity of its spread and the weather to come drawn
 * together, the same seed giving the same answer for ever. A draw is the same day by day as a run
 * of `runSeason`. Tests and what was seen weigh the draws, see `drawWeigher`.
 *
 * Where the weighted draws are worth less than a tenth of what was asked for, a further hypercube
 * of as many, under a seed of its own, joins them, and so on up to four. Each is a fair sample of
 * the same seasons, so together they are one as well, and none is drawn twice.
 *
 * @param kept what of each draw is looked at
 * @param shared with other beds of the garden, so that what is common is made once
 * @source readings of ranges: model section 10
 */
export function startDrawing<Answer>(
  question: DrawsQuestion,
  kept: DrawsKept<Answer>,
  shared: SharedDraws,
): DrawsRun<Answer> {
  const { count, spread } = question;
  const weigher = drawWeigher(question);
  const watch = newWatch(ownBed(question.input), weigher.lookDays);
  const flows = new Float64Array(flowKinds.length);
  let blocks = 1;
  let block = openBlock(question, shared.block(0));
  kept.grow(count);
  let done = 0;

  const next = (): void => {
    block.write(done % count);
    watchSeason(block.input, block.plan, watch, flows);
    kept.keep(done, block.input, watch, weigher.weight(block.input, watch));
    done += 1;
    if (done < blocks * count || blocks === mostBlocks) return;
    if (kept.worth() >= poorShare * count) return;
    block = openBlock(question, shared.block(blocks));
    blocks += 1;
    kept.grow(blocks * count);
  };

  return {
    get isDone() {
      return done >= blocks * count;
    },
    get done() {
      return done;
    },
    get of() {
      return blocks * count;
    },
    get steps() {
      return watch.steps;
    },
    next,
    answer: () =>
      kept.answer(
        spread,
        Array.from({ length: blocks }, (_, at) => shared.block(at).draws),
      ),
  };
}

/** `startDrawing` of what a bed is judged by today. */
export const startDraws = (
  question: DrawsQuestion,
  limits: Limits,
  shared: SharedDraws = sharedDraws(question),
): DrawsRun<DrawsAnswer> =>
  startDrawing(question, drawsOutcome(ownBed(question.input), limits), shared);

/**
 * `startDraws` to the end.
 *
 * @param isStopped asked between draws, for a question that nobody waits for any more
 * @returns null when it was stopped
 */
export function runDraws(
  question: DrawsQuestion,
  limits: Limits,
  isStopped: () => boolean = () => false,
  shared?: SharedDraws,
): DrawsAnswer | null {
  const run = startDraws(question, limits, shared);
  while (!run.isDone) {
    if (isStopped()) return null;
    run.next();
  }
  return run.answer();
}
