import { dayOf, seasonEnd, seasonStart, type DayNumber } from '../core/days';
import { usualDegreeDays, type RecordedDay } from '../core/season/ahead';
import type {
  CropInput,
  LegumeInput,
  MonthlyNormals,
  PlantingInput,
  SoilProperties,
} from '../core/season/input';
import { gramsPerM2FromMgPerKg } from '../core/units';
import { cropOf } from '../tables/crops';
import { sowingTrialsOf } from '../tables/emergence';
import { nurseryDays } from '../tables/nursery';
import type { CropRow } from '../tables/shapes';
import { needAboveGoodYield, rootShares, wantedShares } from '../tables/wanted';
import type { Planting } from './schema';

/** What a crop's clock and need are reckoned with. */
export interface PlantingSurroundings {
  readonly today: DayNumber;
  readonly seasonStartMonth: number;
  readonly record: readonly RecordedDay[];
  readonly normals: MonthlyNormals;
  readonly soil: SoilProperties;
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
  row: CropRow,
  planting: Pick<Planting, 'wanted' | 'how'>,
  soil: SoilProperties,
): CropInput {
  const rootShare = (row.legume ? rootShares.legume : rootShares.usual).typical;
  const share = wantedShareOfGood(row, planting.wanted);
  const shift = clockShift(row, planting.how);
  const later = (days: number): number => Math.max(1, Math.round(days + shift));
  const stages = row.stageShares;
  const trials = planting.how === 'sown' ? sowingTrialsOf(row.id) : undefined;
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

/**
 * A planting as the engine takes it. Typed days win over the crop row's. Perennials grow anew each
 * season: their clock starts on the first day of the season that holds today.
 *
 * The clearing day is the typed one; without one the usual end while that lies ahead; past it
 * null: still standing, nobody has said otherwise.
 */
export function plantingInput(
  planting: Planting,
  { today, seasonStartMonth, record, normals, soil }: PlantingSurroundings,
): PlantingInput {
  const row = cropOf(planting.cropId);
  if (!row) throw new Error(`No crop ${planting.cropId} in the tables`);
  const crop = cropInput(row, planting, soil);
  const begun = dayOf(planting.started);
  const isPerennial = row.excessClass === 'perennial';
  const startDay = isPerennial ? Math.max(begun, seasonStart(today, seasonStartMonth)) : begun;
  const usualEndDay = isPerennial
    ? Math.min(startDay + crop.usualDays, seasonEnd(today, seasonStartMonth))
    : startDay + crop.usualDays;
  const typedEnd = dayOrNull(planting.cleared);
  const clearingDay = typedEnd ?? (usualEndDay > today ? usualEndDay : null);
  const firstHarvestDay = dayOrNull(planting.firstHarvest) ?? startDay + crop.firstHarvestDays;
  return {
    id: planting.id,
    crop,
    share: planting.share,
    startDay,
    sown: planting.how === 'sown',
    firstHarvestDay: Math.min(firstHarvestDay, clearingDay ?? usualEndDay),
    usualEndDay,
    clearingDay,
    cleared: typedEnd !== null && typedEnd <= today,
    topsFate: planting.tops,
    normalDegreeDays: usualDegreeDays(
      record,
      normals,
      today,
      startDay,
      usualEndDay - startDay,
      crop.baseCelsius,
    ),
    nodulesSeen: planting.nodules === 'not looked' ? null : planting.nodules === 'pink',
  };
}
