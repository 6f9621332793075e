import type { DayNumber } from '../../core/days';
import type { CrowdedSpell } from '../../core/season/cautions/crowded';
import type { SeasonResult } from '../../core/season/result';
import type { Weight } from '../../core/season/verdict';
import type { FigureInText } from '../../words/why';
import type { LayerOnChart } from '../season/data';

/** A planting by its days; some of them are typed, the others come from the crop. */
export interface StripPlanting {
  readonly id: string;
  readonly name: string;
  readonly sown: boolean;
  readonly share: number;
  readonly start: DayNumber;
  readonly flower: DayNumber | null;
  readonly pick: DayNumber | null;
  /** day it leaves the bed; null: nobody says */
  readonly end: DayNumber | null;
  readonly isEndTyped: boolean;
  /** where it began before it was taken hold of: while it is moved it keeps its lane */
  readonly heldFrom?: DayNumber;
}

/** Something that does not go together, at the day where it shows. */
export interface StripTrouble {
  readonly id: string;
  readonly day: DayNumber;
  readonly weight: Weight;
  readonly says: string;
  /** those of its figures that open what stands behind them */
  readonly figures?: readonly FigureInText[];
}

/** What a run tells a strip. */
export type StripRun = Pick<SeasonResult, 'firstDay' | 'days' | 'today' | 'kind'> & {
  readonly pools: Pick<SeasonResult['pools'], 'mineralTop'>;
  readonly start: Pick<SeasonResult['start'], 'mineralTop'>;
};

/** Where what lies ready is in most imagined seasons [g N/m2]. */
export interface StripRange {
  /** of the season; the first of each list is the evening before it, then comes every evening */
  readonly firstDay: DayNumber;
  readonly low: Float64Array;
  readonly high: Float64Array;
  /** imagined seasons that were run, and what they are worth once tests and looks weighed them */
  readonly count: number;
  readonly effectiveCount: number;
}

/** One bed of the season: plain data, no store. */
export interface BedStrip {
  readonly bedId: string;
  readonly name: string;
  /** null: its sums have not come yet */
  readonly run: StripRun | null;
  readonly bulkDensityKgPerL: number;
  /** of a season that has not begun; `to come` while it is worked at; left out where none is told */
  readonly range?: StripRange | 'to come' | 'not there';
  readonly plantings: readonly StripPlanting[];
  readonly layers: readonly LayerOnChart[];
  readonly crowded: readonly CrowdedSpell[];
  readonly troubles: readonly StripTrouble[];
}
