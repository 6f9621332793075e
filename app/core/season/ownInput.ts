import { listOf } from '../listOf';
import { ownCoefficients } from './coefficients';
import { ownCrop } from './ownCrop';
import type {
  BedEvent,
  BedSeason,
  GrowthSeason,
  LayerInput,
  PlantingInput,
  SeasonWeather,
  SoilProperties,
} from './input';

// Copies of one build, whoever made the original; as `ownCoefficients`. A bed that was read from a
// garden and one that was sent to a worker are unlike inside, even one field present and another
// absent make them so, and code made fast for the one would have to be made anew for the other.

const ownSoil = (soil: SoilProperties): SoilProperties => ({
  fieldCapacity: soil.fieldCapacity,
  wiltingPoint: soil.wiltingPoint,
  bulkDensityKgPerL: soil.bulkDensityKgPerL,
  organicMatterPercent: soil.organicMatterPercent,
  startingMineralTop: soil.startingMineralTop,
});

const ownLayer = (layer: LayerInput): LayerInput => ({
  id: layer.id,
  day: layer.day,
  materialId: layer.materialId,
  materialClass: layer.materialClass,
  isGreens: layer.isGreens,
  placement: layer.placement,
  condition: layer.condition,
  freshKgPerM2: layer.freshKgPerM2,
  dryKgPerM2: layer.dryKgPerM2,
  nitrogen: layer.nitrogen,
  carbon: layer.carbon,
  laidDepth: layer.laidDepth,
  settledDensityKgPerM3: layer.settledDensityKgPerM3,
  mineralShare: layer.mineralShare,
  slowShare: layer.slowShare,
  slowKind: layer.slowKind,
});

const ownGrowthSeason = (season: GrowthSeason): GrowthSeason => ({
  startDay: season.startDay,
  firstHarvestDay: season.firstHarvestDay,
  usualEndDay: season.usualEndDay,
  normalDegreeDays: season.normalDegreeDays,
  seasonDay: season.seasonDay,
  isRegrowth: season.isRegrowth,
});

const ownPlanting = (planting: PlantingInput): PlantingInput => ({
  startDay: planting.startDay,
  firstHarvestDay: planting.firstHarvestDay,
  usualEndDay: planting.usualEndDay,
  normalDegreeDays: planting.normalDegreeDays,
  id: planting.id,
  crop: ownCrop(planting.crop),
  share: planting.share,
  standsSince: planting.standsSince,
  seasons: planting.seasons && listOf(planting.seasons, ownGrowthSeason),
  sown: planting.sown,
  clearingDay: planting.clearingDay,
  cleared: planting.cleared,
  topsFate: planting.topsFate,
  nodulesSeen: planting.nodulesSeen,
});

const ownEvent = (event: BedEvent): BedEvent => {
  if (event.kind === 'harvest')
    return {
      kind: event.kind,
      day: event.day,
      plantingId: event.plantingId,
      kilogramsPerM2: event.kilogramsPerM2,
    };
  if (event.kind === 'water') return { kind: event.kind, day: event.day, depth: event.depth };
  return { kind: event.kind, day: event.day, share: event.share };
};

const ownWeather = (weather: SeasonWeather): SeasonWeather => ({
  minimumCelsius: weather.minimumCelsius,
  maximumCelsius: weather.maximumCelsius,
  rainMillimetres: weather.rainMillimetres,
  kind: weather.kind,
  referenceEvapotranspiration: weather.referenceEvapotranspiration,
});

/** A bed whose every part but its days of weather, its normals and its ground is its own. */
export const ownBed = (bed: BedSeason): BedSeason => ({
  bedId: bed.bedId,
  areaM2: bed.areaM2,
  latitudeDegrees: bed.latitudeDegrees,
  firstDay: bed.firstDay,
  lastDay: bed.lastDay,
  today: bed.today,
  seasonStarts: bed.seasonStarts,
  weather: ownWeather(bed.weather),
  normals: bed.normals,
  soil: ownSoil(bed.soil),
  keptMoist: bed.keptMoist,
  runoffCurveNumber: bed.runoffCurveNumber,
  plantings: listOf(bed.plantings, ownPlanting),
  layers: listOf(bed.layers, ownLayer),
  events: listOf(bed.events, ownEvent),
  coefficients: ownCoefficients(bed.coefficients),
  ground: bed.ground,
});
