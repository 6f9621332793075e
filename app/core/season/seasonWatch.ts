import { listOf } from '../listOf';
import { availableShare } from '../soil/water';
import type { BedState } from './bedState';
import { demandMetOf, takenSoFar, type GrowingPlanting } from './growingPlanting';
import { poolIndex } from './ways';
import { stepDay } from './day';
import { flowIndex } from './flows';
import type { BedSeason } from './input';
import { seasonFirstDay } from './seasonAccount';
import { watchedFlows, type WatchedSeason } from './watchedSeason';

const { mineralLower: lower, mineralTop: top } = poolIndex;

const washedOut = flowIndex('mineralLower', 'leached', 'washed out');

/** What of a planting falls into the season that holds today, g N per m2 of bed. */
interface SeasonShare {
  need: number;
  /** taken up and fixed, luxury apart: what is paid of arrears from before is in it */
  met: number;
  fixed: number;
  /** which of its seasons a plant that stays for years was in on the evening before */
  before: number;
}

interface PlantingWatch {
  readonly id: string;
  /** days of the run on which it can stand */
  readonly first: number;
  readonly last: number;
  takenBefore: number;
  demand: number;
  demandMet: number;
  fixed: number;
  readonly thisSeason: SeasonShare;
  readonly dailyNeed: Float64Array;
  readonly dailyUptake: Float64Array;
  readonly dailyFixed: Float64Array;
}

/**
 * What of a day is kept where somebody looked at the bed: the water of that evening, and what hid the
 * ground while the day's water was reckoned, before that day's rotting.
 */
export interface LookWatch {
  /** day of the run */
  readonly index: number;
  availableWater: number;
  hidden: number;
  coverFill: number;
  lyingDry: number;
}

/**
 * What a draw keeps of a run: what a bed's state of `today` is judged by, and no more. One watch
 * serves all draws of a bed, each run writes it anew. Released, tied up and luxury are kept for the
 * days after today, the lower layer and the roots for today; on other days they hold no number, so
 * that nothing can be judged by them unnoticed.
 */
export interface SeasonWatch extends WatchedSeason {
  readonly plantings: readonly PlantingWatch[];
  /** earliest first */
  readonly looks: readonly LookWatch[];
  /** days of the run after today of which the lower layer and the roots are kept as well */
  readonly alsoOn: readonly number[];
  /** first day of the run in the season that holds today: from its morning on outcomes count */
  readonly seasonFrom: number;
  /** washed out from that morning to the run's end [g N/m2] */
  leached: number;
  /** days that were stepped by all runs together */
  steps: number;
}

/**
 * @param lookDays days of the run on which somebody looked at the bed, in any order, each once
 * @param alsoOn later days than today that the run is judged on
 */
export function newWatch(
  input: BedSeason,
  lookDays: readonly number[] = [],
  alsoOn: readonly number[] = [],
): SeasonWatch {
  const days = input.lastDay - input.firstDay + 1;
  const series = (): Float64Array => new Float64Array(days);
  const unknown = (): Float64Array => series().fill(Number.NaN);
  return {
    firstDay: input.firstDay,
    days,
    pools: { mineralTop: series(), mineralLower: unknown() },
    rootReach: unknown(),
    released: unknown(),
    tiedUp: unknown(),
    luxury: unknown(),
    plantings: listOf(input.plantings, ({ id, startDay, clearingDay }) => ({
      id,
      first: startDay - input.firstDay,
      last: (clearingDay ?? input.lastDay) - input.firstDay,
      takenBefore: 0,
      demand: 0,
      demandMet: 0,
      fixed: 0,
      thisSeason: { need: 0, met: 0, fixed: 0, before: 0 },
      dailyNeed: series(),
      dailyUptake: series(),
      dailyFixed: series(),
    })),
    looks: listOf(
      [...lookDays].sort((one, other) => one - other),
      (index) => ({ index, availableWater: 0, hidden: 0, coverFill: 0, lyingDry: 0 }),
    ),
    alsoOn,
    seasonFrom: seasonFirstDay(input, input.today) - input.firstDay,
    leached: 0,
    steps: 0,
  };
}

/**
 * Steps a bed through all days of its run and keeps what a watch does.
 *
 * @param state of the first morning; changed in place
 * @param flows scratch of one place per flow kind
 */
export function watchDays(
  input: BedSeason,
  state: BedState,
  watch: SeasonWatch,
  flows: Float64Array,
): void {
  const { mineralTop } = watch.pools;
  const today = input.today - input.firstDay;
  // Only what is read is set back, and that where it is read: the other flows pile up unseen, and
  // what was washed out in the season of today is to.
  flows.fill(0);
  for (let at = 0; at < watch.plantings.length; at++)
    watch.plantings[at]!.takenBefore = takenSoFar(state.plantings[at]!);
  let nextLook = 0;
  for (let index = 0; index < watch.days; index++) {
    if (index === watch.seasonFrom) openSeason(watch, state, flows);
    stepDay(input, state, flows, index);
    mineralTop[index] = state.nitrogen[top]!;
    keepPlants(watch.plantings, state, index);
    if (nextLook < watch.looks.length && watch.looks[nextLook]!.index === index)
      keepLook(watch.looks[nextLook++]!, state);
    if (index < today) continue;
    keepFlows(watch, flows, index);
    if (index === today) keepToday(watch, state, index);
    else if (watch.alsoOn.includes(index)) keepReach(watch, state, index);
  }
  watch.leached = flows[washedOut]!;
  watch.steps += watch.days;
  for (let at = 0; at < watch.plantings.length; at++)
    keepTotals(watch.plantings[at]!, state.plantings[at]!);
}

/** Notes what had come together before the first morning of the season that holds today. */
function openSeason(watch: SeasonWatch, { plantings }: BedState, flows: Float64Array): void {
  flows[washedOut] = 0;
  for (let at = 0; at < plantings.length; at++) {
    const { thisSeason } = watch.plantings[at]!;
    const { needSoFar, metSoFar, fixed, season } = plantings[at]!;
    thisSeason.need = needSoFar;
    thisSeason.met = metSoFar;
    thisSeason.fixed = fixed;
    thisSeason.before = season;
  }
}

/** Days on which a planting is not there stay 0, in every draw. */
function keepPlants(
  watches: readonly PlantingWatch[],
  { plantings, day }: BedState,
  index: number,
): void {
  for (let at = day.plantsFrom; at < day.plantsTo; at++) {
    const kept = watches[at]!;
    if (index < kept.first || index > kept.last) continue;
    const plant = plantings[at]!;
    kept.dailyNeed[index] = plant.needToday;
    kept.dailyUptake[index] = plant.uptakeToday;
    kept.dailyFixed[index] = plant.fixedToday;
  }
}

function keepLook(look: LookWatch, { water, plan, day, report }: BedState): void {
  look.availableWater = availableShare(water, plan.sizes);
  look.hidden = day.coverFraction;
  look.coverFill = report.coverFill;
  look.lyingDry = day.dry;
}

function keepReach(watch: SeasonWatch, { nitrogen, plantings }: BedState, index: number): void {
  watch.pools.mineralLower[index] = nitrogen[lower]!;
  let reach = 0;
  for (const plant of plantings) if (plant.standing) reach = Math.max(reach, plant.fullReach);
  watch.rootReach[index] = reach;
}

function keepToday(watch: SeasonWatch, state: BedState, index: number): void {
  keepReach(watch, state, index);
  // so far they held what had piled up since the first day
  watch.released[index] = Number.NaN;
  watch.tiedUp[index] = Number.NaN;
  watch.luxury[index] = Number.NaN;
}

const [bySoil, byYoung, byDug, bySlow, washedIn, dugIn] = watchedFlows.released;
const [heldBelow, heldOnTop] = watchedFlows.tiedUp;
const [luxuryTop, luxuryLower] = watchedFlows.luxury;

// written out: on every day of every draw these ten are read and set back
function keepFlows(watch: SeasonWatch, flows: Float64Array, index: number): void {
  watch.released[index] =
    flows[bySoil]! +
    flows[byYoung]! +
    flows[byDug]! +
    flows[bySlow]! +
    flows[washedIn]! +
    flows[dugIn]!;
  watch.tiedUp[index] = flows[heldBelow]! + flows[heldOnTop]!;
  watch.luxury[index] = flows[luxuryTop]! + flows[luxuryLower]!;
  flows[bySoil] = 0;
  flows[byYoung] = 0;
  flows[byDug] = 0;
  flows[bySlow] = 0;
  flows[washedIn] = 0;
  flows[dugIn] = 0;
  flows[heldBelow] = 0;
  flows[heldOnTop] = 0;
  flows[luxuryTop] = 0;
  flows[luxuryLower] = 0;
}

function keepTotals(kept: PlantingWatch, plant: GrowingPlanting): void {
  kept.demand = plant.needSoFar;
  kept.demandMet = demandMetOf(plant);
  kept.fixed = plant.fixed;
  const { thisSeason } = kept;
  // one that grew again has counted from nothing since
  const isOn = plant.season === thisSeason.before;
  thisSeason.need = plant.needSoFar - (isOn ? thisSeason.need : 0);
  thisSeason.met = plant.metSoFar - (isOn ? thisSeason.met : 0);
  thisSeason.fixed = plant.fixed - (isOn ? thisSeason.fixed : 0);
}
