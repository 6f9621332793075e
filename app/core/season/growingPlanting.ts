import type { DayNumber } from '../days';
import { needCurve, type Arrears, type NeedCurve } from '../crop/need';
import { reachShare } from '../crop/stages';
import { topDepth } from '../soil/water';
import { ownClock, ownCrop } from './ownCrop';
import type { CropInput, GrowthClock, GrowthSeason, LegumeInput, PlantingInput } from './input';
import type { PlantingSeason } from './result';
import { seasonName, type RunPlan } from './runPlan';

export interface GrowingPlanting {
  readonly input: PlantingInput;
  readonly crop: CropInput;
  readonly share: number;
  /** day from which it stands, and on which it is cleared; infinite where nobody says so */
  readonly startsOn: DayNumber;
  readonly clearsOn: number;
  /** what it fixes by; null for what is no legume, or one without nodules */
  readonly nodules: LegumeInput | null;
  readonly staysForYears: boolean;
  readonly curve: NeedCurve;
  /** the season it grows by now; of most plants the only one */
  clock: GrowthClock;
  /** place of `clock` among the planting's seasons, 0 where it has none */
  season: number;
  /** need of that season [g per m2 of planted ground]: without roots where the crown is there already */
  need: number;
  /** share of the lower layer that its roots will reach 0-1 */
  fullReach: number;
  /** logged picks replace the spread ones up to today */
  logsHarvest: boolean;
  standing: boolean;
  done: boolean;
  degreeDays: number;
  progress: number;
  /** share of its need wanted by that progress 0-1 */
  wanted: number;
  rootDepth: number;
  /** g N per m2 of bed in the plants */
  nitrogen: number;
  /** of it in the crown that outlasts the season; only of plants that stay for years */
  crown: number;
  needSoFar: number;
  metSoFar: number;
  harvested: number;
  removed: number;
  left: number;
  fixed: number;
  uptake: number;
  luxury: number;
  clearedOn: number | null;
  /** what the seasons before this one came to; empty where a run keeps no layers */
  readonly earlier: PlantingSeason[];
  readonly arrears: Arrears;
  needToday: number;
  uptakeToday: number;
  fixedToday: number;
}

/** Share of what a planting wanted so far that it got, luxury apart, 0-1. */
export const demandMetOf = ({ needSoFar, metSoFar }: GrowingPlanting): number =>
  needSoFar > 0 ? Math.min(1, metSoFar / needSoFar) : 0;

/** Taken up, luxury included, and fixed so far; g N per m2 of bed. */
export const takenSoFar = ({ uptake, fixed }: GrowingPlanting): number => uptake + fixed;

/** What a planting wants in a season [g per m2 of planted ground]. */
export const needOfSeason = (crop: CropInput, season: GrowthSeason | undefined): number =>
  season?.isRegrowth === true ? crop.need * (1 - crop.rootShare) : crop.need;

/** Stood before the season that the run begins in: with roots and a crown. */
const isEstablished = (planting: PlantingInput): boolean =>
  planting.seasons?.[0]?.isRegrowth === true;

/** A planting on the morning of the run's first day; one of earlier years holds its crown's nitrogen. */
export function startingPlanting(
  planting: PlantingInput,
  plan: RunPlan,
  lowerDepth: number,
): GrowingPlanting {
  const { share, seasons, clearingDay, nodulesSeen } = planting;
  const crop = ownCrop(planting.crop);
  const first = seasons?.[0];
  const crown = isEstablished(planting) ? crop.rootShare * crop.need * share : 0;
  return {
    input: planting,
    crop,
    share,
    startsOn: planting.standsSince ?? planting.startDay,
    clearsOn: clearingDay ?? Infinity,
    nodules: nodulesSeen === false ? null : crop.legume,
    staysForYears: seasons !== undefined,
    curve: needCurve(crop),
    clock: ownClock(first ?? planting),
    season: 0,
    need: needOfSeason(crop, first),
    fullReach: reachShare(crop.fullRootDepth, topDepth, lowerDepth),
    logsHarvest: seasons
      ? plan.pickedSeasons.has(seasonName(planting.id, 0))
      : plan.pickedPlantings.has(planting.id),
    standing: false,
    done: false,
    degreeDays: 0,
    progress: 0,
    wanted: 0,
    rootDepth: isEstablished(planting) ? crop.fullRootDepth : 0,
    nitrogen: crown,
    crown,
    needSoFar: 0,
    metSoFar: 0,
    harvested: 0,
    removed: 0,
    left: 0,
    fixed: 0,
    uptake: 0,
    luxury: 0,
    clearedOn: null,
    earlier: [],
    arrears: [],
    needToday: 0,
    uptakeToday: 0,
    fixedToday: 0,
  };
}
