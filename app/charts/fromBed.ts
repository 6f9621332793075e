import type { BedSeason, LayerInput, PlantingInput } from '../core/season/input';
import type { SeasonResult } from '../core/season/result';
import type { CoverLayerShown, Stuff } from './cover/data';
import type { LayerOnChart, PlantingOnChart, SeasonChartData } from './season/data';

/** What the drawings cannot know of a bed: names, by the ids of its plantings and layers. */
export interface BedNames {
  readonly planting: (id: string) => string;
  readonly layer: (id: string) => string;
}

const isLaid = (layer: LayerInput): boolean => layer.placement === 'laid';

/** How a layer is drawn: by its class, and among browns by what its row is called. */
export function stuffOf(layer: LayerInput): Stuff {
  if (layer.materialClass === 'green') return 'greens';
  if (layer.materialClass === 'slow') return 'compost';
  if (/straw|hay|stalk/.test(layer.materialId)) return 'straw';
  return /lea[fv]/.test(layer.materialId) ? 'leaves' : 'other';
}

/** First flower, from the crop's usual days; null when its row has none, or it is cleared before. */
function flowerDayOf(planting: PlantingInput): number | null {
  if (planting.crop.flowerDays === null) return null;
  const day = planting.startDay + planting.crop.flowerDays;
  return planting.clearingDay !== null && day >= planting.clearingDay ? null : day;
}

/** The band of the planting that stands today, else of the next to come; of several the largest share. */
function bandOf(input: BedSeason): SeasonChartData['cropBand'] {
  const open = input.plantings.filter(
    ({ clearingDay }) => clearingDay === null || clearingDay > input.today,
  );
  const standing = open.filter(({ startDay }) => startDay <= input.today);
  const next = open.reduce((day, { startDay }) => Math.min(day, startDay), Infinity);
  const chosen = standing.length > 0 ? standing : open.filter(({ startDay }) => startDay === next);
  const crop = chosen.toSorted((a, b) => b.share - a.share)[0]?.crop;
  return crop ? { lowMgPerKg: crop.enoughNitrateLow, highMgPerKg: crop.enoughNitrateHigh } : null;
}

/** Plantings in the order they start; those that do not stand within the run are left out. */
function plantingsOf(input: BedSeason, result: SeasonResult, names: BedNames): PlantingOnChart[] {
  return input.plantings
    .filter(({ id }) => result.plantings.some((run) => run.id === id))
    .toSorted((a, b) => a.startDay - b.startDay)
    .map((planting) => ({
      id: planting.id,
      name: names.planting(planting.id),
      sown: planting.sown,
      flowerDay: flowerDayOf(planting),
      firstHarvestDay: planting.firstHarvestDay,
    }));
}

const layersOf = (input: BedSeason, names: BedNames): LayerOnChart[] =>
  input.layers.map((layer) => ({
    id: layer.id,
    name: names.layer(layer.id),
    day: layer.day,
    laidDepth: layer.laidDepth,
    inSoil: !isLaid(layer),
    stuff: stuffOf(layer),
  }));

/** The parts of the season chart's data that lie in the engine's own input. */
export const seasonDataOf = (
  input: BedSeason,
  result: SeasonResult,
  names: BedNames,
): Pick<SeasonChartData, 'result' | 'cropBand' | 'bulkDensityKgPerL' | 'plantings' | 'layers'> => ({
  result,
  cropBand: bandOf(input),
  bulkDensityKgPerL: input.soil.bulkDensityKgPerL,
  plantings: plantingsOf(input, result, names),
  layers: layersOf(input, names),
});

/** The layers for the drawing of the cover: laid ones only. */
export const coverLayersOf = (input: BedSeason, names: BedNames): CoverLayerShown[] =>
  input.layers.filter(isLaid).map((layer) => ({
    id: layer.id,
    name: names.layer(layer.id),
    stuff: stuffOf(layer),
    day: layer.day,
    laidDepth: layer.laidDepth,
  }));
