import type { DayNumber } from '../days';
import type { BedState } from './bedState';
import { startingState } from './startingState';
import { stepDay } from './day';
import { flowKinds } from './flows';
import type { BedSeason, LayerInput } from './input';
import { lowerDepthFor, runPlan } from './runPlan';

/** A bed whose water is asked about. */
export interface WaterQuestion {
  readonly input: BedSeason;
  /** first day of the season that what the cover saved is counted from */
  readonly savedFrom: DayNumber;
  /** range of `coverEvaporationSaving` of the input's coefficients */
  readonly saving: { readonly low: number; readonly high: number };
  /** a layer that would be laid for cover before leaving; its day is not looked at */
  readonly straw: LayerInput;
}

export interface WaterDue {
  readonly day: DayNumber;
  /** poured that evening [mm]: what its cover drinks first, and the soil to half of what roots find easily */
  readonly pour: number;
}

/** What this season's layers did to a bed's water, to today [mm]. */
export interface CoverSaved {
  /** less given off by the soil under them */
  readonly soil: { readonly low: number; readonly typical: number; readonly high: number };
  /** rain and watering that they caught and gave back to the air themselves */
  readonly caught: number;
  /** more within reach of roots today than without them; below 0: less */
  readonly atHand: number;
}

/** What a bed does that nobody waters for two weeks. */
export interface Away {
  /** poured before leaving, to the full [mm] */
  readonly pour: number;
  /** first day on which it is due again; null: not within the days ahead */
  readonly dueWatered: DayNumber | null;
  /** the same with straw laid as well */
  readonly dueCovered: DayNumber | null;
}

export interface WaterAnswer {
  readonly bedId: string;
  /** null: not within `daysAhead`, or nothing grows there */
  readonly due: WaterDue | null;
  /** null: nothing was laid on it this season */
  readonly saved: CoverSaved | null;
  /** null: it needs nothing for two weeks */
  readonly away: Away | null;
}

/** So far ahead it is said when watering is due: an imagined sky says nothing of a later week. */
export const daysAhead = 28;
/** Of somebody who goes away. */
export const daysAway = 14;

/** Goes through a bed's days and shows each evening to `look`, until it has seen enough. */
function goThrough(
  input: BedSeason,
  until: DayNumber,
  look: (day: DayNumber, state: BedState) => boolean | void,
): void {
  const plan = runPlan(input, lowerDepthFor(input));
  const state = startingState(input, plan.lowerDepth, plan, false);
  const flows = new Float64Array(flowKinds.length);
  // nobody knows yet that a bed will be watered: from tomorrow on it is left to the sky
  const unwatered: BedSeason = { ...input, keptMoist: false };
  const last = Math.min(until, input.lastDay) - input.firstDay;
  for (let index = 0; index <= last; index++) {
    flows.fill(0);
    const day = input.firstDay + index;
    stepDay(day > input.today ? unwatered : input, state, flows, index);
    if (look(day, state) === true) return;
  }
}

const roomInCover = ({ day, water }: BedState): number =>
  Math.max(0, day.coverCapacity - water.cover);

/** First evening from a day on which a planted bed has used up more than its roots find easily. */
function dueFrom(input: BedSeason, from: DayNumber): WaterDue | null {
  let due: WaterDue | null = null;
  goThrough(input, input.today + daysAhead, (day, state) => {
    const { depletion, readily } = state.report;
    if (day < from || !state.canopy.isPlanted || depletion <= readily) return false;
    due = { day, pour: depletion - readily / 2 + roomInCover(state) };
    return true;
  });
  return due;
}

interface GivenOff {
  fromSoil: number;
  fromCover: number;
  /** gone from the root zone today */
  depletion: number;
}

function givenOff(input: BedSeason, from: DayNumber): GivenOff {
  const sum: GivenOff = { fromSoil: 0, fromCover: 0, depletion: 0 };
  goThrough(input, input.today, (day, { report }) => {
    if (day < from) return;
    sum.fromSoil += report.fromSoil;
    sum.fromCover += report.fromCover;
    sum.depletion = report.depletion;
  });
  return sum;
}

function savedBy({ input, savedFrom, saving }: WaterQuestion): CoverSaved | null {
  const isLaid = input.layers.some(({ day }) => day >= savedFrom && day <= input.today);
  if (!isLaid) return null;
  const layers = input.layers.filter(({ day }) => day < savedFrom);
  const bare = givenOff({ ...input, layers }, savedFrom);
  const under = (coverEvaporationSaving: number): GivenOff =>
    givenOff(
      { ...input, coefficients: { ...input.coefficients, coverEvaporationSaving } },
      savedFrom,
    );
  const typical = under(input.coefficients.coverEvaporationSaving);
  return {
    soil: {
      low: bare.fromSoil - under(saving.low).fromSoil,
      typical: bare.fromSoil - typical.fromSoil,
      high: bare.fromSoil - under(saving.high).fromSoil,
    },
    caught: typical.fromCover - bare.fromCover,
    atHand: bare.depletion - typical.depletion,
  };
}

function awayFrom({ input, straw }: WaterQuestion): Away {
  const { today } = input;
  let pour = 0;
  goThrough(input, today, (day, state) => {
    if (day === today) pour = state.report.depletion + roomInCover(state);
  });
  // poured tomorrow morning: the evening of today is where the sums stand
  const tomorrow = today + 1;
  const watered: BedSeason = {
    ...input,
    events: [...input.events, { kind: 'water', day: tomorrow, depth: pour }],
  };
  const covered: BedSeason = {
    ...watered,
    layers: [...input.layers, { ...straw, day: tomorrow }],
  };
  return {
    pour,
    dueWatered: dueFrom(watered, tomorrow)?.day ?? null,
    dueCovered: dueFrom(covered, tomorrow)?.day ?? null,
  };
}

/**
 * When a bed's watering is due by the likely course, how much it takes, and what its cover saved.
 *
 * Due is the first evening, today's included, on which more is gone from the root zone than its
 * plants find easily: depletion > RAW (Allen et al. 1998, FAO-56, chapter 8). The days ahead are the
 * imagined ones of the likely course, unwatered. What is poured brings the soil to half of RAW, so
 * that a shower after it is not lost, and fills the cover, which drinks first.
 *
 * Saved is what the bed's soil would have given off without this season's layers, less what it gave
 * off under them, to today; its range is that of the share by which a cover slows evaporation, and
 * of nothing else. What the layers caught and gave back themselves is told apart: in a wet season it
 * is more than they saved, of rain that would mostly have drained away.
 *
 * @returns depths in mm of water, which are L on each m2
 * @validity needs the run to reach today; a season's end within the days ahead cuts them short
 * @throws as `runSeason`, on a broken promise of ours only
 */
export function waterNeeds(question: WaterQuestion): WaterAnswer {
  const { input } = question;
  const due = dueFrom(input, input.today);
  return {
    bedId: input.bedId,
    due,
    saved: savedBy(question),
    away: due !== null && due.day <= input.today + daysAway ? awayFrom(question) : null,
  };
}
