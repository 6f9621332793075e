import type { DayNumber } from '../../core/days';
import type { SeasonResult } from '../../core/season/result';
import type { CoverState } from '../../core/season/verdict';
import type { ChartUnits } from '../../words/chartUnits';

/** How a material is drawn. */
export const stuffs = ['greens', 'leaves', 'straw', 'compost', 'other'] as const;
export type Stuff = (typeof stuffs)[number];

export interface CoverLayerShown {
  readonly id: string;
  /** "Clippings" */
  readonly name: string;
  readonly stuff: Stuff;
  readonly day: DayNumber;
  /** as laid [mm] */
  readonly laidDepth: number;
}

/** Everything the drawing of a bed's cover shows. */
export interface CoverChartData {
  readonly result: SeasonResult;
  /** layers laid on the bed, in any order; those dug or hoed in are not cover and do not belong here */
  readonly layers: readonly CoverLayerShown[];
  readonly coverState: CoverState;
  /** the evening drawn; `result.today` when left out */
  readonly day?: DayNumber;
  readonly units: ChartUnits;
}
