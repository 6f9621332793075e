import type { Cited } from '../core/reference';
import type { ExcessClass, MaterialClass, SlowKind } from '../core/season/input';
import type { SourceKey } from './sources';

export type Row = Cited<SourceKey>;

/** One material of the tables. Contents are of dry matter unless said otherwise. */
export interface MaterialRow {
  readonly id: string;
  /** as a gardener says it, e.g. "Grass clippings" */
  readonly name: string;
  readonly materialClass: MaterialClass;
  readonly isGreens: boolean;
  readonly isBrowns: boolean;
  /** per cent of dry matter */
  readonly nitrogenPercent: Row;
  readonly carbonToNitrogen: Row;
  /** per cent of fresh mass */
  readonly moisturePercent: Row;
  /** kg fresh per m3 as it is handled (mower bag, sack, heap) */
  readonly densityKgPerM3: Row;
  /** kg dry matter per m3 once settled on a bed */
  readonly settledDensityKgPerM3: Row;
  /** share of nitrogen that is mineral at once; absent for plant material */
  readonly mineralShare?: Row;
  /** share of nitrogen in the slow pool; absent for plant material */
  readonly slowShare?: Row;
  /** which pace its slow share has, and whether it loses ammonia on top; absent: as compost */
  readonly slowKind?: SlowKind;
  readonly mayCarryWeedkiller: boolean;
  readonly note?: string;
}

export interface CropRow {
  readonly id: string;
  readonly name: string;
  readonly family: string;
  readonly excessClass: ExcessClass;
  readonly clock: 'sowing' | 'planting';
  /** g N per m2 in the harvested and above-ground plant at the good yield */
  readonly uptake: Row;
  /** kg fresh harvest per m2 at the good yield */
  readonly goodYield: Row;
  /** g N per kg fresh harvest */
  readonly removedPerKilogram: Row;
  readonly firstHarvestDays: Row;
  readonly usualDays: Row;
  readonly flowerDays: Row | null;
  readonly baseCelsius: Row;
  readonly rootDepthCentimetres: Row;
  readonly residueCarbonToNitrogen: Row;
  readonly residueIsGreen: boolean;
  readonly curveMiddle: Row;
  readonly curveSteepness: Row;
  /** the curve is borrowed from a relative */
  readonly familyCurve: boolean;
  readonly cropCoefficients: { readonly start: Row; readonly middle: Row; readonly end: Row };
  readonly stageShares: readonly [number, number, number, number];
  readonly stageSharesSource: Row | null;
  readonly depletionShare: Row;
  readonly legume: null | {
    readonly usualPercentFixed: Row;
    readonly highPercentFixed: Row;
    readonly nodulationDays: Row;
    readonly leafyLimit: Row;
    readonly poddingLimit: Row;
  };
  /** nitrate-N mg/kg in 0-30 cm that is enough; the general 20-25 where the crop has none */
  readonly enoughNitrate: Row;
  readonly warmSoilCelsius: Row | null;
  readonly frostTender: boolean;
  readonly eatenFromSoil: boolean;
  readonly seedFlyRisk: boolean;
  /** never mulched with material of unknown or treated origin this season */
  readonly weedkillerSensitive: boolean;
}
