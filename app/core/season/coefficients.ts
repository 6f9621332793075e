/**
 * The typical value of every coefficient the day needs. The rows they come from, with range,
 * source and standing, are in `app/tables/coefficients.ts`, which is checked key by key against
 * this list.
 */
export interface Coefficients {
  // decomposition (model 3)
  readonly decayBase: number;
  readonly decayPerCarbonToNitrogen: number;
  readonly woodDecay: number;
  readonly assimilation: number;
  readonly humusCarbonToNitrogen: number;
  readonly greenMicrobeBase: number;
  readonly greenMicrobeSlope: number;
  readonly greenMicrobeFactor: number;
  readonly greenHumusSlope: number;
  readonly greenHumusHalf: number;
  readonly greenHumusFactor: number;
  readonly greenTurnover: number;
  readonly matureMicrobeBase: number;
  readonly matureMicrobeSlope: number;
  readonly matureHumusSlope: number;
  readonly matureHumusHalf: number;
  readonly matureTurnover: number;
  readonly microbeMinimum: number;
  readonly humusShareLimit: number;
  readonly humusTurnoverLimit: number;
  readonly leastDecayWhenStarved: number;
  readonly hoedRate: number;
  readonly surfaceRateGreen: number;
  readonly surfaceRateMatureShare: number;
  readonly coverFreeShareForTieUp: number;
  readonly soilShareForCoverTieUp: number;
  readonly slowRate: number;
  readonly mealRate: number;
  readonly youngHumusRate: number;
  readonly rootCarbonToNitrogen: number;
  // cover (model 2)
  readonly lyingShareOfMicrobesAndHumus: number;
  readonly coverWaterPerDryMatter: number;
  readonly coverWaterLimit: number;
  readonly coverDryWetness: number;
  readonly coverFractionPerKilogram: number;
  // ammonia (model 4)
  readonly ammoniaSlope: number;
  readonly ammoniaIntercept: number;
  readonly ammoniaLimit: number;
  readonly ammoniaRipening: number;
  readonly ammoniaLeaving: number;
  readonly ammoniaDryShare: number;
  readonly ammoniaWetSlope: number;
  readonly ammoniaLimp: number;
  readonly ammoniaCrisp: number;
  readonly ammoniaFreeShare: number;
  readonly ammoniaFactor: number;
  readonly manureAmmoniaShare: number;
  readonly manureAmmoniaRate: number;
  // soil organic matter (model 5)
  readonly soilCarbonToNitrogen: number;
  readonly organicMatterPerCarbon: number;
  readonly soilReleaseRate: number;
  // water and washing out (model 6)
  readonly bareCropCoefficient: number;
  readonly canopyLimit: number;
  readonly lateCanopyLeast: number;
  readonly evaporationUnderCanopy: number;
  readonly coverEvaporationSaving: number;
  readonly evaporationDepth: number;
  readonly readilyEvaporableShare: number;
  readonly lowerLayerUptakeWeight: number;
  readonly soilWarmingRate: number;
  readonly coverDamping: number;
  readonly coverCooling: number;
  readonly washBase: number;
  readonly washDepth: number;
  readonly washLeastMass: number;
  readonly denitrifiedShare: number;
  readonly denitrificationDrainage: number;
  readonly rainNitrogenPerYear: number;
  readonly startingMineralTop: number;
  readonly startingMineralPer30: number;
  // crop (model 7, 8)
  readonly arrearsDays: number;
  readonly uptakeShare: number;
  readonly uptakeFloor: number;
  readonly luxuryShare: number;
  readonly luxuryStart: number;
  readonly luxuryFull: number;
  readonly harvestLimit: number;
}

/**
 * A copy of one build, whoever made the original. Field by field: a run asks for thousands of these
 * numbers, and what is spread, parsed or sent from elsewhere keeps them in slower places.
 */
export const ownCoefficients = (c: Coefficients): Coefficients => ({
  decayBase: c.decayBase,
  decayPerCarbonToNitrogen: c.decayPerCarbonToNitrogen,
  woodDecay: c.woodDecay,
  assimilation: c.assimilation,
  humusCarbonToNitrogen: c.humusCarbonToNitrogen,
  greenMicrobeBase: c.greenMicrobeBase,
  greenMicrobeSlope: c.greenMicrobeSlope,
  greenMicrobeFactor: c.greenMicrobeFactor,
  greenHumusSlope: c.greenHumusSlope,
  greenHumusHalf: c.greenHumusHalf,
  greenHumusFactor: c.greenHumusFactor,
  greenTurnover: c.greenTurnover,
  matureMicrobeBase: c.matureMicrobeBase,
  matureMicrobeSlope: c.matureMicrobeSlope,
  matureHumusSlope: c.matureHumusSlope,
  matureHumusHalf: c.matureHumusHalf,
  matureTurnover: c.matureTurnover,
  microbeMinimum: c.microbeMinimum,
  humusShareLimit: c.humusShareLimit,
  humusTurnoverLimit: c.humusTurnoverLimit,
  leastDecayWhenStarved: c.leastDecayWhenStarved,
  hoedRate: c.hoedRate,
  surfaceRateGreen: c.surfaceRateGreen,
  surfaceRateMatureShare: c.surfaceRateMatureShare,
  coverFreeShareForTieUp: c.coverFreeShareForTieUp,
  soilShareForCoverTieUp: c.soilShareForCoverTieUp,
  slowRate: c.slowRate,
  mealRate: c.mealRate,
  youngHumusRate: c.youngHumusRate,
  rootCarbonToNitrogen: c.rootCarbonToNitrogen,
  lyingShareOfMicrobesAndHumus: c.lyingShareOfMicrobesAndHumus,
  coverWaterPerDryMatter: c.coverWaterPerDryMatter,
  coverWaterLimit: c.coverWaterLimit,
  coverDryWetness: c.coverDryWetness,
  coverFractionPerKilogram: c.coverFractionPerKilogram,
  ammoniaSlope: c.ammoniaSlope,
  ammoniaIntercept: c.ammoniaIntercept,
  ammoniaLimit: c.ammoniaLimit,
  ammoniaRipening: c.ammoniaRipening,
  ammoniaLeaving: c.ammoniaLeaving,
  ammoniaDryShare: c.ammoniaDryShare,
  ammoniaWetSlope: c.ammoniaWetSlope,
  ammoniaLimp: c.ammoniaLimp,
  ammoniaCrisp: c.ammoniaCrisp,
  ammoniaFreeShare: c.ammoniaFreeShare,
  ammoniaFactor: c.ammoniaFactor,
  manureAmmoniaShare: c.manureAmmoniaShare,
  manureAmmoniaRate: c.manureAmmoniaRate,
  soilCarbonToNitrogen: c.soilCarbonToNitrogen,
  organicMatterPerCarbon: c.organicMatterPerCarbon,
  soilReleaseRate: c.soilReleaseRate,
  bareCropCoefficient: c.bareCropCoefficient,
  canopyLimit: c.canopyLimit,
  lateCanopyLeast: c.lateCanopyLeast,
  evaporationUnderCanopy: c.evaporationUnderCanopy,
  coverEvaporationSaving: c.coverEvaporationSaving,
  evaporationDepth: c.evaporationDepth,
  readilyEvaporableShare: c.readilyEvaporableShare,
  lowerLayerUptakeWeight: c.lowerLayerUptakeWeight,
  soilWarmingRate: c.soilWarmingRate,
  coverDamping: c.coverDamping,
  coverCooling: c.coverCooling,
  washBase: c.washBase,
  washDepth: c.washDepth,
  washLeastMass: c.washLeastMass,
  denitrifiedShare: c.denitrifiedShare,
  denitrificationDrainage: c.denitrificationDrainage,
  rainNitrogenPerYear: c.rainNitrogenPerYear,
  startingMineralTop: c.startingMineralTop,
  startingMineralPer30: c.startingMineralPer30,
  arrearsDays: c.arrearsDays,
  uptakeShare: c.uptakeShare,
  uptakeFloor: c.uptakeFloor,
  luxuryShare: c.luxuryShare,
  luxuryStart: c.luxuryStart,
  luxuryFull: c.luxuryFull,
  harvestLimit: c.harvestLimit,
});
