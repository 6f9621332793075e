import { dayOf } from '../../app/core/days';
import { seasonWeather, usualDegreeDays } from '../../app/core/season/ahead';
import { flowKinds, type Place } from '../../app/core/season/flows';
import type { BedSeason, LayerInput, PlantingInput } from '../../app/core/season/input';
import type { SeasonResult } from '../../app/core/season/result';
import { runSeason } from '../../app/core/season/season';
import { cropInput } from '../../app/document/plantingInput';
import { actingRatio } from '../../app/tables/actingRatio';
import { climateOf } from '../../app/tables/climates';
import { crops, type CropId } from '../../app/tables/crops';
import { typicalWeatherSpread } from '../../app/tables/imaginedWeather';
import { materials, type MaterialId } from '../../app/tables/materials';
import type { MaterialRow } from '../../app/tables/shapes';
import { organicMatterByMulchYears, soils } from '../../app/tables/soils';
import type { Values } from './drawn';

export interface Site {
  /** station whose normals stand for the place */
  readonly station: string;
  readonly first: string;
  readonly last: string;
  readonly keptMoist?: boolean;
  readonly roofed?: boolean;
}

/**
 * A bed of loam that never had compost or mulch, under imagined weather of a station's normals.
 * The year of the trials is not known: 2014 stands for all of them.
 */
export function bedAt(
  site: Site,
  values: Values,
  content: Pick<Partial<BedSeason>, 'layers' | 'plantings'>,
): BedSeason {
  const climate = climateOf(site.station);
  if (!climate) throw new Error(`No station ${site.station}`);
  const [firstDay, lastDay] = [dayOf(site.first), dayOf(site.last)];
  const weather = seasonWeather(
    [],
    climate,
    firstDay,
    lastDay,
    firstDay - 1,
    values.weatherSeed,
    typicalWeatherSpread(climate.latitudeDegrees),
    climate.latitudeDegrees < 0,
  );
  if (site.roofed) weather.rainMillimetres.fill(0);
  const { fieldCapacity, wiltingPoint } = soils.loam;
  return {
    bedId: 'bed',
    areaM2: 1,
    latitudeDegrees: climate.latitudeDegrees,
    firstDay,
    lastDay,
    today: firstDay - 1,
    seasonStarts: [],
    weather,
    normals: climate,
    soil: {
      fieldCapacity: fieldCapacity.typical,
      wiltingPoint: wiltingPoint.typical,
      bulkDensityKgPerL: 1.3,
      organicMatterPercent: values.of('organic matter', organicMatterByMulchYears.none),
      startingMineralTop: null,
    },
    keptMoist: site.keptMoist ?? false,
    plantings: [],
    layers: [],
    events: [],
    coefficients: values.coefficients,
    ...content,
  };
}

const hundred = (row: MaterialRow): number =>
  (row.nitrogenPercent.typical * row.carbonToNitrogen.typical) / 100;

/** C:N a material of our tables rots by: its carbon stays when its nitrogen is drawn. */
export const carbonToNitrogenOf = (id: MaterialId, values: Values): number => {
  const row: MaterialRow = materials[id];
  return (
    (100 * hundred(row) * actingOf(id, values)) /
    values.of(`nitrogen of ${id}`, row.nitrogenPercent)
  );
};

/** Factor on the C:N a material rots by. */
export const actingOf = (id: string, values: Values): number =>
  values.of(`acting ratio of ${id}`, actingRatio);

/** A material of our tables by its nitrogen per m2, at a given %N or that of its row. */
export function layerOf(
  id: MaterialId,
  date: string,
  nitrogen: number,
  values: Values,
  over: Partial<LayerInput> & { readonly nitrogenPercent?: number } = {},
): LayerInput {
  const row: MaterialRow = materials[id];
  const { nitrogenPercent = values.of(`nitrogen of ${id}`, row.nitrogenPercent), ...rest } = over;
  const dryKgPerM2 = nitrogen / (10 * nitrogenPercent);
  const { low, typical, high } = row.moisturePercent;
  const water = { low: low / 100, typical: typical / 100, high: high / 100 };
  const wet = 1 - values.of(`moisture of ${id}`, water, true);
  const freshKgPerM2 = dryKgPerM2 / wet;
  const density = values.of(`density of ${id}`, row.densityKgPerM3);
  const shareOf = (share: MaterialRow['slowShare']): number =>
    share ? values.of(`${share.place} of ${id}`, share, true) : 0;
  return {
    id: `${id} ${date}`,
    day: dayOf(date),
    materialId: id,
    materialClass: row.materialClass,
    isGreens: row.isGreens,
    placement: 'laid',
    condition: row.isGreens ? 'just cut' : 'crisp',
    freshKgPerM2,
    dryKgPerM2,
    nitrogen,
    carbon: dryKgPerM2 * 1000 * hundred(row) * actingOf(id, values),
    laidDepth: (1000 * freshKgPerM2) / density,
    settledDensityKgPerM3: row.settledDensityKgPerM3.typical,
    mineralShare: shareOf(row.mineralShare),
    slowShare: shareOf(row.slowShare),
    slowKind: row.slowKind ?? 'compost',
    ...rest,
  };
}

/** A crop of our tables at its good yield over the whole bed, tops taken away. */
export function plantingOf(id: CropId, date: string, site: Site, values: Values): PlantingInput {
  const row = crops[id];
  const bed = bedAt(site, values, {});
  const how = row.clock === 'sowing' ? 'sown' : 'planted';
  const usual = cropInput(
    row,
    { wanted: { kilogramsPerM2: row.goodYield.typical }, how },
    bed.soil,
  );
  const need = (usual.need * values.of(`uptake of ${id}`, row.uptake)) / row.uptake.typical;
  const crop = { ...usual, need };
  const startDay = dayOf(date);
  const usualEndDay = startDay + crop.usualDays;
  return {
    id,
    crop,
    share: 1,
    startDay,
    sown: how === 'sown',
    firstHarvestDay: startDay + crop.firstHarvestDays,
    usualEndDay,
    clearingDay: usualEndDay,
    cleared: true,
    topsFate: 'taken away',
    normalDegreeDays: usualDegreeDays(
      [],
      bed.normals,
      startDay,
      startDay,
      crop.usualDays,
      crop.baseCelsius,
    ),
    nodulesSeen: null,
  };
}

/** g N/m2 that moved between two places over the run; `why` narrows it. */
export function movedIn(result: SeasonResult, from: Place, to: Place): number {
  let sum = 0;
  flowKinds.forEach((kind, index) => {
    if (kind.from === from && kind.to === to)
      for (const grams of result.flows[index]!) sum += grams;
  });
  return sum;
}

/** Mineral nitrogen of both layers and all that left them below or to the air, last day [g/m2]. */
const mineralAndLost = (result: SeasonResult): number =>
  result.pools.mineralTop.at(-1)! +
  result.pools.mineralLower.at(-1)! +
  movedIn(result, 'mineralLower', 'leached') +
  movedIn(result, 'mineralTop', 'denitrified');

/** Nitrogen that layers brought into the mineral soil by the last day over a bed without, % of theirs. */
export function releasedPercent(site: Site, layers: readonly LayerInput[], values: Values): number {
  const fed = runSeason(bedAt(site, values, { layers }));
  const without = runSeason(bedAt(site, values, {}));
  const laid = layers.reduce((sum, layer) => sum + layer.nitrogen, 0);
  return (100 * (mineralAndLost(fed) - mineralAndLost(without))) / laid;
}

const takenUp = (result: SeasonResult): number =>
  result.plantings.reduce((sum, one) => sum + one.uptake, 0);

/** What a crop took up with the layers over what it took without, % of their nitrogen. */
export function recoveredPercent(
  site: Site,
  layers: readonly LayerInput[],
  planting: PlantingInput,
  values: Values,
): number {
  const plantings = [planting];
  const fed = takenUp(runSeason(bedAt(site, values, { layers, plantings })));
  const without = takenUp(runSeason(bedAt(site, values, { plantings })));
  return (100 * (fed - without)) / layers.reduce((sum, layer) => sum + layer.nitrogen, 0);
}

/** Nitrogen of the plants of a bed with these layers, g/m2. */
export const cropNitrogen = (
  site: Site,
  layers: readonly LayerInput[],
  planting: PlantingInput,
  values: Values,
): number => takenUp(runSeason(bedAt(site, values, { layers, plantings: [planting] })));
