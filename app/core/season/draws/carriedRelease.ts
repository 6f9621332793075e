import type { DayNumber } from '../../days';
import { startingState } from '../startingState';
import { stepDay } from '../day';
import { flowIndex, flowKinds, type FlowIndex } from '../flows';
import type { BedSeason } from '../input';
import { weatherPlan } from '../runPlan';
import { bandOf, type Band } from './bands';
import { makeDraws, type Draws } from './columns';
import { drawnBed } from './drawnBed';
import { drawnPlan } from './drawnPlan';
import type { SeasonSpread } from './spread';

const given: readonly FlowIndex[] = [
  flowIndex('youngHumus', 'mineralTop', 'released by last year’s humus'),
  flowIndex('dugMicrobes', 'mineralTop', 'released'),
  flowIndex('slow', 'mineralTop', 'released from compost'),
  flowIndex('coverFree', 'mineralTop', 'washed in'),
];
const taken: readonly FlowIndex[] = [
  flowIndex('mineralTop', 'dugMicrobes', 'held back'),
  flowIndex('mineralTop', 'coverMicrobes', 'held back from the soil'),
];

const sumOf = (flows: Float64Array, which: readonly FlowIndex[]): number =>
  which.reduce((sum, flow) => sum + flows[flow]!, 0);

/** What is asked about one season's end. Plain data: it may cross to a worker. */
export interface CarriedQuestion {
  /** a run to the end of the next season, with nothing laid from that season on */
  readonly input: BedSeason;
  readonly spread: SeasonSpread;
  /** first day of the next season */
  readonly fromDay: DayNumber;
}

/** A question about ends of a bed's seasons, and the draws that answer it. */
export interface CarriedQuestions {
  readonly bedId: string;
  readonly seed: number;
  readonly count: number;
  readonly ends: readonly CarriedQuestion[];
}

/** What is left at one season's end gives in the next, from `fromDay` on. */
export interface CarriedAnswer {
  readonly fromDay: DayNumber;
  readonly expected: Band;
}

/**
 * What cover, residues, compost and young humus give to the soil from a day on, less what rotting
 * takes from it, over the draws of a bed; the soil's own store is left out, it gives in any year.
 *
 * @returns g N/m2 of bed from `fromDay` to the run's end, 10-50-90; below 0 where browns take more
 * @validity one weather for all draws: the range is of materials, soil and speeds, not of the year
 */
export function carriedRelease({ input, spread, fromDay }: CarriedQuestion, draws: Draws): Band {
  const bed = drawnBed(input, spread, draws);
  const weather = weatherPlan(input.weather, input.firstDay, input.latitudeDegrees);
  const { plan, reorder } = drawnPlan(bed.input, weather);
  const flows = new Float64Array(flowKinds.length);
  const days = input.lastDay - input.firstDay + 1;
  const released = new Float64Array(draws.count);
  for (let draw = 0; draw < draws.count; draw++) {
    bed.write(draw);
    reorder();
    const state = startingState(bed.input, plan.lowerDepth, plan, false);
    flows.fill(0);
    for (let index = 0; index < days; index++) {
      if (index === fromDay - input.firstDay) flows.fill(0);
      stepDay(bed.input, state, flows, index);
    }
    released[draw] = sumOf(flows, given) - sumOf(flows, taken);
  }
  return bandOf(released, new Float64Array(draws.count).fill(1));
}

/** `carriedRelease` of each season's end that is asked about, in the same draws. */
export function answerCarried({ seed, count, ends }: CarriedQuestions): readonly CarriedAnswer[] {
  const draws = makeDraws(seed, count);
  return ends.map((end) => ({ fromDay: end.fromDay, expected: carriedRelease(end, draws) }));
}
