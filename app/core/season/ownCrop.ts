import type { CropInput, GrowthClock, LegumeInput } from './input';

/**
 * Copies of one build, whoever made the original; as `ownCoefficients`. What a table made, what was
 * sent from elsewhere and what a draw was written into are unlike inside, and the day would look up
 * each number anew.
 */
export const ownClock = (clock: GrowthClock): GrowthClock => ({
  startDay: clock.startDay,
  firstHarvestDay: clock.firstHarvestDay,
  usualEndDay: clock.usualEndDay,
  normalDegreeDays: clock.normalDegreeDays,
});

const ownLegume = (legume: LegumeInput): LegumeInput => ({
  usualShareFixed: legume.usualShareFixed,
  highShareFixed: legume.highShareFixed,
  nodulationDays: legume.nodulationDays,
  leafyLimit: legume.leafyLimit,
  poddingLimit: legume.poddingLimit,
});

/** The same of a crop. */
export const ownCrop = (crop: CropInput): CropInput => ({
  id: crop.id,
  excessClass: crop.excessClass,
  need: crop.need,
  harvestNitrogen: crop.harvestNitrogen,
  harvestGramsPerKilogram: crop.harvestGramsPerKilogram,
  rootShare: crop.rootShare,
  curveMiddle: crop.curveMiddle,
  curveSteepness: crop.curveSteepness,
  baseCelsius: crop.baseCelsius,
  usualDays: crop.usualDays,
  firstHarvestDays: crop.firstHarvestDays,
  flowerDays: crop.flowerDays,
  fullRootDepth: crop.fullRootDepth,
  cropCoefficientStart: crop.cropCoefficientStart,
  cropCoefficientMiddle: crop.cropCoefficientMiddle,
  cropCoefficientEnd: crop.cropCoefficientEnd,
  stageShares: crop.stageShares,
  depletionShare: crop.depletionShare,
  residueCarbonToNitrogen: crop.residueCarbonToNitrogen,
  residueIsGreen: crop.residueIsGreen,
  legume: crop.legume && ownLegume(crop.legume),
  enoughNitrateLow: crop.enoughNitrateLow,
  enoughNitrateHigh: crop.enoughNitrateHigh,
  warmSoilCelsius: crop.warmSoilCelsius,
  eatenFromSoil: crop.eatenFromSoil,
  seedFlyRisk: crop.seedFlyRisk,
  pushesThrough: crop.pushesThrough,
  emergence: crop.emergence,
  frostTender: crop.frostTender,
});
