import type { DayNumber } from '../../days';
import type { BedSeason } from '../input';
import { bandReader, effectiveCount } from './bands';
import { sharedDraws, startDrawing } from './runDraws';
import type { DrawsKept, DrawsQuestion, DrawsRun, SharedDraws } from './runDraws';

/** Where what lies ready in a bed's top 30 cm is in most imagined next seasons. */
export interface NextSeasonRange {
  readonly bedId: string;
  readonly firstDay: DayNumber;
  /** imagined seasons that were run, and what they are worth once tests and looks weighed them */
  readonly count: number;
  readonly effectiveCount: number;
  /**
   * g N/m2, 10, 50 and 90 % of the imagined seasons: the evening before the first day, then every
   * evening of the season
   */
  readonly low: Float64Array;
  readonly middle: Float64Array;
  readonly high: Float64Array;
}

function rangeKept(bed: BedSeason): DrawsKept<NextSeasonRange> {
  const firstDay = bed.seasonStarts.at(-1);
  if (firstDay === undefined || firstDay <= bed.today)
    throw new RangeError(`The run of ${bed.bedId} ends before the next season`);
  const before = firstDay - bed.firstDay - 1;
  const evenings = bed.lastDay - firstDay + 2;
  let weights = new Float64Array(0);
  /** by evening: a value per draw */
  let ready = Array.from({ length: evenings }, () => new Float64Array(0));
  return {
    grow(draws) {
      const grown = (column: Float64Array): Float64Array<ArrayBuffer> => {
        const larger = new Float64Array(draws);
        larger.set(column);
        return larger;
      };
      weights = grown(weights);
      ready = ready.map(grown);
    },
    keep(draw, _input, { pools: { mineralTop } }, weight) {
      for (let evening = 0; evening < evenings; evening++)
        ready[evening]![draw] = mineralTop[before + evening]!;
      weights[draw] = weight;
    },
    worth: () => effectiveCount(weights),
    answer() {
      const worth = effectiveCount(weights);
      // no draw came near a test: all of them, said to be worth nothing
      if (!(worth > 0)) weights.fill(1);
      const bandOf = bandReader(weights);
      const bands = ready.map((draws) => bandOf(draws));
      return {
        bedId: bed.bedId,
        firstDay,
        count: weights.length,
        effectiveCount: worth,
        low: Float64Array.from(bands, ({ low }) => low),
        middle: Float64Array.from(bands, ({ middle }) => middle),
        high: Float64Array.from(bands, ({ high }) => high),
      };
    },
  };
}

/**
 * The imagined seasons of a bed gone on with through the season after the one that holds today:
 * each begins with what its own imagined season left behind, in the same draw of every uncertain
 * quantity, under weather of its own. Tests and what was seen weigh them as they weigh this season.
 *
 * @param question about a run to the end of that season, as `nextSeason` takes it
 * @validity as `nextSeason`; what will be laid is what is written down, in all of them
 * @source readings of ranges: model section 10
 * @throws RangeError where the run knows no season after this one
 */
export const startNextSeason = (
  question: DrawsQuestion,
  shared: SharedDraws = sharedDraws(question),
): DrawsRun<NextSeasonRange> => startDrawing(question, rangeKept(question.input), shared);
