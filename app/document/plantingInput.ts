import { dayOf, seasonEnd, seasonStart, type DayNumber } from '../core/days';
import type { RecordedDay } from '../core/season/ahead';
import { regrowthDay } from '../core/crop/regrowth';
import type {
  CropInput,
  GrowthClock,
  GrowthSeason,
  LegumeInput,
  MonthlyNormals,
  PlantingInput,
  SoilProperties,
} from '../core/season/input';
import { gramsPerM2FromMgPerKg } from '../core/units';
import { staysForYears } from '../tables/crops';
import { sowingTrialsOf } from '../tables/emergence';
import { comesThrough } from '../tables/pushesThrough';
import { nurseryDays } from '../tables/nursery';
import type { CropRow } from '../tables/shapes';
import { needAboveGoodYield, rootShares, wantedShares } from '../tables/wanted';
import type { Garden, Planting } from './schema';
import { cropById } from './cropValues';
import { usualDegreeDaysKept } from './keptDegreeDays';

/** What a crop's clock and need are reckoned with. */
export interface PlantingSurroundings {
  readonly today: DayNumber;
  /** first day of the run, where it begins before the season that holds today */
  readonly firstDay?: DayNumber;
  /** last day of the run, where it ends after the season that holds today */
  readonly lastDay?: DayNumber;
  readonly seasonStartMonth: number;
  readonly record: readonly RecordedDay[];
  readonly normals: MonthlyNormals;
  readonly soil: SoilProperties;
  /** the garden's own crops */
  readonly crops?: Garden['crops'];
}

/** The pick that is wanted as a share of the table's good yield. */
export const wantedShareOfGood = (row: CropRow, wanted: Planting['wanted']): number =>
  typeof wanted === 'string'
    ? wantedShares[wanted].typical
    : wanted.kilogramsPerM2 / row.goodYield.typical;

/**
 * Need against pick: in proportion up to the good yield, above it by a power below 1, because
 * heavy crops take less nitrogen for each further kilogram.
 */
const needFactor = (share: number): number =>
  share <= 1 ? share : Math.pow(share, needAboveGoodYield.typical);

function legumeInput(row: CropRow, soil: SoilProperties): LegumeInput | null {
  if (!row.legume) return null;
  const { usualPercentFixed, highPercentFixed, nodulationDays, leafyLimit, poddingLimit } =
    row.legume;
  const limit = (value: CropRow['enoughNitrate']): number =>
    value.unit.startsWith('mg')
      ? gramsPerM2FromMgPerKg(value.typical, soil.bulkDensityKgPerL, 30)
      : value.typical;
  return {
    usualShareFixed: usualPercentFixed.typical / 100,
    highShareFixed: highPercentFixed.typical / 100,
    nodulationDays: nodulationDays.typical,
    leafyLimit: limit(leafyLimit),
    poddingLimit: limit(poddingLimit),
  };
}

/**
 * A crop row at its likely values for one planting.
 *
 *     need = uptake / (1 - root share) x (wanted / good yield), less than in proportion above good
 *
 * @returns nitrogen in g per m2 of planted ground
 */
export function cropInput(
  row: CropRow & { readonly tableId?: string },
  planting: Pick<Planting, 'wanted' | 'how'>,
  soil: SoilProperties,
): CropInput {
  const rootShare = (row.legume ? rootShares.legume : rootShares.usual).typical;
  const share = wantedShareOfGood(row, planting.wanted);
  const shift = clockShift(row, planting.how);
  const later = (days: number): number => Math.max(1, Math.round(days + shift));
  const stages = row.stageShares;
  const trials = planting.how === 'sown' ? sowingTrialsOf(row.tableId ?? row.id) : undefined;
  return {
    id: row.id,
    excessClass: row.excessClass,
    need: (row.uptake.typical / (1 - rootShare)) * needFactor(share),
    // a cover crop's yield is what is dug in: nothing of it is picked
    harvestNitrogen:
      row.excessClass === 'cover'
        ? 0
        : share * row.goodYield.typical * row.removedPerKilogram.typical,
    harvestGramsPerKilogram: row.removedPerKilogram.typical,
    rootShare,
    curveMiddle: row.curveMiddle.typical,
    curveSteepness: row.curveSteepness.typical,
    baseCelsius: row.baseCelsius.typical,
    usualDays: later(row.usualDays.typical),
    firstHarvestDays: later(row.firstHarvestDays.typical),
    flowerDays: row.flowerDays === null ? null : later(row.flowerDays.typical),
    fullRootDepth: row.rootDepthCentimetres.typical * 10,
    cropCoefficientStart: row.cropCoefficients.start.typical,
    cropCoefficientMiddle: row.cropCoefficients.middle.typical,
    cropCoefficientEnd: row.cropCoefficients.end.typical,
    stageShares: stages,
    depletionShare: row.depletionShare.typical,
    residueCarbonToNitrogen: row.residueCarbonToNitrogen.typical,
    residueIsGreen: row.residueIsGreen,
    legume: legumeInput(row, soil),
    enoughNitrateLow: row.enoughNitrate.typical,
    enoughNitrateHigh: Math.max(row.enoughNitrate.typical, row.enoughNitrate.high),
    warmSoilCelsius: row.warmSoilCelsius?.typical ?? null,
    eatenFromSoil: row.eatenFromSoil,
    seedFlyRisk: row.seedFlyRisk,
    pushesThrough: comesThrough(row.tableId ?? row.id),
    frostTender: row.frostTender,
    ...(trials && { emergence: trials }),
  };
}

/** Days to add to a row's days for a planting that began the other way than the row counts. */
function clockShift(row: CropRow, how: Planting['how']): number {
  if (row.clock === 'sowing' && how === 'planted') return -nurseryDays.typical;
  if (row.clock === 'planting' && how === 'sown') return nurseryDays.typical;
  return 0;
}

const dayOrNull = (text: string | null): DayNumber | null => (text === null ? null : dayOf(text));

/** A clock from one day to the row's usual end, no later than `last`. */
function growthClock(
  crop: CropInput,
  startDay: DayNumber,
  last: DayNumber,
  { today, record, normals }: PlantingSurroundings,
): GrowthClock {
  const usualEndDay = Math.min(startDay + crop.usualDays, last);
  const days = usualEndDay - startDay;
  return {
    startDay,
    firstHarvestDay: startDay + crop.firstHarvestDays,
    usualEndDay,
    normalDegreeDays: usualDegreeDaysKept(record, normals, today, startDay, days, crop.baseCelsius),
  };
}

/**
 * The seasons of a plant that stays for years, from the run's first to its last: in
 * its first it grows from the day it was planted, in each later one from `regrowthDay`. A first
 * harvest that was typed holds for its own season.
 */
function growthSeasons(
  planting: Planting,
  crop: CropInput,
  around: PlantingSurroundings,
): readonly GrowthSeason[] {
  const { today, seasonStartMonth, normals } = around;
  const begun = dayOf(planting.started);
  const typedPick = dayOrNull(planting.firstHarvest);
  const typedEnd = dayOrNull(planting.cleared);
  const first = seasonStart(Math.max(begun, around.firstDay ?? today), seasonStartMonth);
  const until = around.lastDay ?? today;
  const stands = Math.max(begun, Math.min(until, typedEnd ?? until));
  const last = Math.max(first, seasonStart(stands, seasonStartMonth));
  const seasons: GrowthSeason[] = [];
  for (let day = first; day <= last; day = seasonEnd(day, seasonStartMonth) + 1) {
    const end = seasonEnd(day, seasonStartMonth);
    const isRegrowth = begun < day;
    const startDay = isRegrowth ? regrowthDay(normals, day, crop.baseCelsius) : begun;
    const clock = growthClock(crop, startDay, end, around);
    const isTyped = typedPick !== null && typedPick >= day && typedPick <= end;
    const firstHarvestDay = isTyped ? typedPick : clock.firstHarvestDay;
    seasons.push({
      ...clock,
      firstHarvestDay: Math.min(firstHarvestDay, clock.usualEndDay),
      seasonDay: day,
      isRegrowth,
    });
  }
  return seasons;
}

/**
 * A planting as the engine takes it. Typed days win over the crop row's.
 *
 * The clearing day is the typed one; without one the usual end while that lies ahead; past it
 * null: still standing, nobody has said otherwise. A plant that stays for years stands until it is
 * cleared, and has a clock for each season of the run.
 */
export function plantingInput(planting: Planting, around: PlantingSurroundings): PlantingInput {
  const row = cropById(around, planting.cropId);
  if (!row) throw new Error(`No crop ${planting.cropId} in the tables`);
  const { today, soil } = around;
  const crop = cropInput(row, planting, soil);
  const begun = dayOf(planting.started);
  const typedEnd = dayOrNull(planting.cleared);
  const common = {
    id: planting.id,
    crop,
    share: planting.share,
    sown: planting.how === 'sown',
    cleared: typedEnd !== null && typedEnd <= today,
    topsFate: planting.tops,
    nodulesSeen: planting.nodules === 'not looked' ? null : planting.nodules === 'pink',
  };
  if (staysForYears(row.tableId)) {
    const seasons = growthSeasons(planting, crop, around);
    const current = seasons.at(-1);
    if (!current) throw new Error(`No season of ${planting.id}`);
    const { seasonDay, isRegrowth: _isRegrowth, ...clock } = current;
    return {
      ...common,
      ...clock,
      startDay: Math.max(begun, seasonDay),
      standsSince: begun,
      seasons,
      clearingDay: typedEnd,
    };
  }
  const clock = growthClock(crop, begun, Infinity, around);
  const clearingDay = typedEnd ?? (clock.usualEndDay > today ? clock.usualEndDay : null);
  const firstHarvestDay = dayOrNull(planting.firstHarvest) ?? clock.firstHarvestDay;
  return {
    ...common,
    ...clock,
    firstHarvestDay: Math.min(firstHarvestDay, clearingDay ?? clock.usualEndDay),
    clearingDay,
  };
}
