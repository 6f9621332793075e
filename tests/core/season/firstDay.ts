import type { BedState } from '../../../app/core/season/bedState';
import { startingState } from '../../../app/core/season/startingState';
import { lowerDepthFor } from '../../../app/core/season/runPlan';
import { poolIndex } from '../../../app/core/season/ways';
import { type DayReport, stepDay } from '../../../app/core/season/day';
import { flowIndex, flowKinds, type Place, type Pool } from '../../../app/core/season/flows';
import type { BedSeason, SeasonWeather } from '../../../app/core/season/input';
import { steadyWeather } from './handMadeBed';

interface Stepped {
  readonly state: BedState;
  readonly flows: Float64Array;
  readonly report: DayReport;
  readonly flow: (from: Place, to: Place, why: string) => number;
}

/** The first day of a bed, after a change to its morning. */
export function firstDayOf(bed: BedSeason, morning: (state: BedState) => void = () => {}): Stepped {
  const lowerDepth = lowerDepthFor(bed);
  const state = startingState(bed, lowerDepth);
  morning(state);
  const flows = new Float64Array(flowKinds.length);
  const report = stepDay(bed, state, flows, 0);
  return { state, flows, report, flow: (from, to, why) => flows[flowIndex(from, to, why)]! };
}

/** 20 C every day, the same rain every day. */
export const warm = (rain = 0, days = 365): SeasonWeather => {
  const weather = steadyWeather(days, 14, 26);
  weather.rainMillimetres.fill(rain);
  return weather;
};
export const set = (state: BedState, pool: Pool, grams: number): void =>
  void (state.nitrogen[poolIndex[pool]] = grams);
