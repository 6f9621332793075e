import type { DayNumber } from '../../core/days';
import type { SeasonResult } from '../../core/season/result';
import type { BedVerdict, NitrogenState } from '../../core/season/verdict';
import type { Stuff } from '../cover/data';
import type { ChartUnits } from '../../words/chartUnits';
import type { DayOrigins } from './origin';

export interface PlantingOnChart {
  readonly id: string;
  /** "Climbing beans" */
  readonly name: string;
  readonly sown: boolean;
  /** null: does not flower, or not known */
  readonly flowerDay: DayNumber | null;
  readonly firstHarvestDay: DayNumber | null;
  /** grown to be laid or dug in: nobody counts what it could use, and what it takes it gives back */
  readonly isCoverCrop?: boolean;
}

export interface LayerOnChart {
  readonly id: string;
  /** "Clippings" */
  readonly name: string;
  readonly day: DayNumber;
  /** as laid [mm] */
  readonly laidDepth: number;
  /** hoed or dug in: no cover came of it */
  readonly inSoil?: boolean;
  /** what it is drawn as */
  readonly stuff?: Stuff;
}

/** The ends between which 8 imagined seasons of 10 lie on one evening [mg/kg]. */
export interface LikelyNitrate {
  readonly day: DayNumber;
  readonly low: number;
  readonly high: number;
}

/** Everything the season chart shows of one bed: plain data, no store. */
export interface SeasonChartData {
  readonly result: SeasonResult;
  readonly verdict: Pick<BedVerdict, 'state' | 'turnsOn'>;
  /** what was known of the state on past days, oldest first */
  readonly history?: readonly { readonly day: DayNumber; readonly state: NitrogenState }[];
  /** nitrate-N of 0-30 cm that is enough for the crop, as published; null when nothing is planted */
  readonly cropBand: {
    readonly lowMgPerKg: number;
    readonly highMgPerKg: number;
  } | null;
  readonly bulkDensityKgPerL: number;
  /** where nitrate-N of 0-30 cm lies in 8 imagined seasons of 10, evening by evening, rising days */
  readonly likely?: readonly LikelyNitrate[];
  /** laboratory tests of 0-30 cm */
  readonly tests?: readonly { readonly day: DayNumber; readonly mgPerKg: number }[];
  /** where each day's weather is known from; a day that is not there is called measured */
  readonly origins?: DayOrigins;
  readonly plantings: readonly PlantingOnChart[];
  readonly layers: readonly LayerOnChart[];
  readonly units: ChartUnits;
}

/** Days shown, both included. */
export interface DaySpan {
  readonly from: DayNumber;
  readonly to: DayNumber;
}

export const zooms = ['season', 'month', 'fortnight'] as const;
export type Zoom = (typeof zooms)[number];

const daysOfZoom = { month: 31, fortnight: 14 } as const;

/**
 * The days a zoom shows: all of `whole`, or a stretch of whole weeks or a month around a day,
 * moved to stay within `whole`.
 */
export function spanOf(zoom: Zoom, around: DayNumber, whole: DaySpan): DaySpan {
  if (zoom === 'season') return whole;
  const length = Math.min(daysOfZoom[zoom], whole.to - whole.from + 1);
  const from = Math.max(
    whole.from,
    Math.min(around - Math.floor(length / 2), whole.to - length + 1),
  );
  return { from, to: from + length - 1 };
}
