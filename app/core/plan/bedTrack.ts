import type { DayNumber } from '../days';
import { lyingDry, type BedState } from '../season/bedState';
import { startingState } from '../season/startingState';
import { demandMetOf } from '../season/growingPlanting';
import { poolIndex } from '../season/ways';
import { stepDay } from '../season/day';
import { flowKinds, type FlowIndex } from '../season/flows';
import type { BedSeason, LayerInput } from '../season/input';
import { plantingAccounts } from '../season/plantingAccount';
import { lowerDepthFor, runPlan, type RunPlan } from '../season/runPlan';
import { sameDayOrder } from '../season/sameDay';
import { watchedFlows, type WatchedSeason } from '../season/watchedSeason';
import { copyState } from './copyState';
import { judgedDay } from './spells';

/** What a plan wants to know of a bed's run; nitrogen in g per m2 of bed. */
export interface TrackOutcome {
  /** on hand and to come, to the clearing of what stands on the judged day; 0 with nothing planted */
  readonly supply: number;
  readonly need: number;
  /** the same supply by every day on which the bed is judged */
  readonly supplies: readonly number[];
  /** fixed over the run */
  readonly fixed: number;
  /** highest nitrogen in reach of an empty bed, from the plan's first day to its next planting */
  readonly idlePeak: number;
  /** dry matter lying on the evening of each day looked at [kg/m2] */
  readonly dry: Float64Array;
  /** how full of water the cover is on those evenings 0-1 */
  readonly fill: Float64Array;
}

type Writable = { -readonly [Key in keyof WatchedSeason]: WatchedSeason[Key] };

/**
 * A bed's run that can be gone through again from the morning of any day of a plan, with one layer
 * more. The days are those of the engine itself (`stepDay`); the sums are those of the bed's state
 * (`plantingAccounts`).
 */
export class BedTrack {
  readonly base: TrackOutcome;
  /** days whose plantings are judged, the first today or the next start on an empty bed */
  readonly judgedOn: readonly DayNumber[];
  private readonly input: BedSeason;
  private readonly looks: readonly number[];
  private readonly planDays: ReadonlySet<number>;
  private readonly plan: RunPlan;
  private readonly mornings = new Map<number, BedState>();
  private readonly run: Writable;
  private readonly dailies: readonly Dailies[];
  private readonly known: readonly Float64Array[];
  private readonly flows = new Float64Array(flowKinds.length);
  private readonly idleTo: number;
  private readonly lastIndex: number;

  /**
   * @param days of the plan, rising, within the run
   * @param later days looked at besides, rising, after those
   * @param judgedOn days whose plantings are judged
   */
  constructor(
    input: BedSeason,
    days: readonly DayNumber[],
    later: readonly DayNumber[] = [],
    judgedOn: readonly DayNumber[] = [judgedDay(input)].filter((day) => day !== null),
  ) {
    this.judgedOn = judgedOn;
    this.input = input;
    this.looks = [...days, ...later].map((day) => day - input.firstDay);
    this.planDays = new Set(days.map((day) => day - input.firstDay));
    this.plan = runPlan(this.input, lowerDepthFor(this.input));
    const length = input.lastDay - input.firstDay + 1;
    const series = (): Float64Array => new Float64Array(length);
    this.dailies = input.plantings.map(({ id }) => ({
      id,
      demand: 0,
      demandMet: 0,
      fixed: 0,
      dailyNeed: series(),
      dailyUptake: series(),
      dailyFixed: series(),
    }));
    this.run = {
      firstDay: input.firstDay,
      days: length,
      pools: { mineralTop: series(), mineralLower: series() },
      rootReach: series(),
      released: series(),
      tiedUp: series(),
      luxury: series(),
      plantings: this.dailies,
    };
    const nextStart = input.plantings
      .map(({ startDay }) => startDay)
      .filter((day) => day > input.today)
      .reduce((first, day) => Math.min(first, day), Infinity);
    const isEmpty = !((judgedOn[0] ?? Infinity) <= input.today);
    this.idleTo = isEmpty ? Math.min(nextStart - input.firstDay, length - 1) : -1;
    this.lastIndex = length - 1;
    const state = startingState(this.input, this.plan.lowerDepth, this.plan, false);
    this.base = this.goThrough(state, 0, true);
    this.known = this.allSeries().map((one) => one.slice());
  }

  /** The same run with one layer more, laid on a day of the plan. */
  with(layer: LayerInput): TrackOutcome {
    const index = layer.day - this.input.firstDay;
    const morning = this.mornings.get(index);
    if (!morning) throw new Error(`Day ${layer.day} is no day of the plan`);
    const layers = new Map(this.plan.layers);
    layers.set(index, [...(layers.get(index) ?? []), layer].sort(sameDayOrder));
    const isBusy = this.plan.isBusy.slice();
    isBusy[index] = 1;
    const plan: RunPlan = { ...this.plan, layers, isBusy };
    this.allSeries().forEach((one, at) => one.set(this.known[at]!));
    return this.goThrough(copyState(morning, plan), index, false);
  }

  private allSeries(): readonly Float64Array[] {
    const { pools, rootReach, released, tiedUp, luxury } = this.run;
    return [
      pools.mineralTop,
      pools.mineralLower,
      rootReach,
      released,
      tiedUp,
      luxury,
      ...this.dailies.flatMap((one) => [one.dailyNeed, one.dailyUptake, one.dailyFixed]),
    ];
  }

  private goThrough(state: BedState, from: number, keepsMornings: boolean): TrackOutcome {
    const { run, flows, looks, dailies } = this;
    const first = looks[0] ?? 0;
    // days gone by are as they were
    const known = keepsMornings ? null : this.base;
    const dry = known?.dry.slice() ?? new Float64Array(looks.length);
    const fill = known?.fill.slice() ?? new Float64Array(looks.length);
    let idlePeak = 0;
    for (let index = first; index < from && index <= this.idleTo; index++)
      idlePeak = Math.max(idlePeak, run.pools.mineralTop[index]!);
    let next = looks.findIndex((day) => day >= from);
    if (next < 0) next = looks.length;
    for (let index = from; index <= this.lastIndex; index++) {
      const isLooked = next < looks.length && looks[next] === index;
      if (keepsMornings && isLooked && this.planDays.has(index))
        this.mornings.set(index, copyState(state, state.plan));
      flows.fill(0);
      const report = stepDay(this.input, state, flows, index);
      run.pools.mineralTop[index] = state.nitrogen[poolIndex.mineralTop]!;
      run.pools.mineralLower[index] = state.nitrogen[poolIndex.mineralLower]!;
      run.released[index] = sumOf(flows, watchedFlows.released);
      run.tiedUp[index] = sumOf(flows, watchedFlows.tiedUp);
      run.luxury[index] = sumOf(flows, watchedFlows.luxury);
      let reach = 0;
      for (let at = 0; at < dailies.length; at++) {
        const plant = state.plantings[at]!;
        const kept = dailies[at]!;
        kept.dailyNeed[index] = plant.needToday;
        kept.dailyUptake[index] = plant.uptakeToday;
        kept.dailyFixed[index] = plant.fixedToday;
        if (plant.standing) reach = Math.max(reach, plant.fullReach);
      }
      run.rootReach[index] = reach;
      if (index >= first && index <= this.idleTo)
        idlePeak = Math.max(idlePeak, run.pools.mineralTop[index]!);
      if (!isLooked) continue;
      dry[next] = lyingDry(state);
      fill[next] = report.coverFill;
      next += 1;
    }
    let fixed = 0;
    for (let at = 0; at < dailies.length; at++) {
      const plant = state.plantings[at]!;
      const kept = dailies[at]!;
      kept.demand = plant.needSoFar;
      kept.demandMet = demandMetOf(plant);
      kept.fixed = plant.fixed;
      fixed += plant.fixed;
    }
    return { ...this.balance(), fixed, idlePeak, dry, fill };
  }

  private balance(): Pick<TrackOutcome, 'supply' | 'need' | 'supplies'> {
    let need = 0;
    const supplies = this.judgedOn.map((day, spell) => {
      let supply = 0;
      for (const account of plantingAccounts(this.input, this.run, day)) {
        supply += account.inCrop + account.inReach + account.release - account.tieUp;
        if (spell === 0) need += account.needOfRun;
      }
      return supply;
    });
    return { supply: supplies[0] ?? 0, need, supplies };
  }
}

interface Dailies {
  readonly id: string;
  demand: number;
  demandMet: number;
  fixed: number;
  readonly dailyNeed: Float64Array;
  readonly dailyUptake: Float64Array;
  readonly dailyFixed: Float64Array;
}

function sumOf(flows: Float64Array, which: readonly FlowIndex[]): number {
  let sum = 0;
  for (const flow of which) sum += flows[flow]!;
  return sum;
}
