import type { Coefficients } from '../coefficients';
import type { BedSeason, LayerInput, SeasonWeather } from '../input';
import { stratifiedShares } from './hypercube';
import { valueAt, type Drawn, type SeasonSpread } from './spread';

/** Draws of one garden: columns by name, made when first asked for. */
export interface Draws {
  readonly seed: number;
  readonly count: number;
  /** value of a quantity in one draw, 0 - count-1 */
  value(drawn: Drawn, draw: number): number;
}

/** A pure function of seed and count: the same quantity gets the same value in the same draw, on every bed. */
export function makeDraws(seed: number, count: number): Draws {
  const columns = new Map<string, Float64Array>();
  return {
    seed,
    count,
    value(drawn, draw) {
      let column = columns.get(drawn.name);
      if (!column) {
        column = stratifiedShares(drawn.name, seed, count);
        columns.set(drawn.name, column);
      }
      return valueAt(drawn, column[draw]!);
    },
  };
}

/** Carbon of a material stays; its nitrogen and so its C:N are drawn together (model 1). */
function drawnLayer(
  layer: LayerInput,
  spread: SeasonSpread,
  draws: Draws,
  draw: number,
): LayerInput {
  const own = spread.layers[layer.id];
  if (!own) return layer;
  const mass = draws.value(own.mass, draw);
  const nitrogen = draws.value(own.nitrogen, draw) / own.nitrogen.typical;
  return {
    ...layer,
    freshKgPerM2: layer.freshKgPerM2 * mass,
    dryKgPerM2: layer.dryKgPerM2 * mass,
    nitrogen: layer.nitrogen * mass * nitrogen,
    carbon: layer.carbon * mass,
  };
}

/**
 * A bed's season in one draw.
 *
 * @param weather an imagined season of its own for this draw; measured days are the same in all
 * @returns an input for `runSeason`, balanced like any other
 */
export function drawnSeason(
  input: BedSeason,
  spread: SeasonSpread,
  weather: SeasonWeather,
  draws: Draws,
  draw: number,
): BedSeason {
  const coefficients: Record<string, number> = { ...input.coefficients };
  for (const drawn of spread.coefficients) coefficients[drawn.key] = draws.value(drawn, draw);
  const matter = spread.organicMatter ? draws.value(spread.organicMatter, draw) : 1;
  return {
    ...input,
    weather,
    coefficients: coefficients as unknown as Coefficients,
    soil: {
      ...input.soil,
      organicMatterPercent: input.soil.organicMatterPercent * matter,
    },
    layers: input.layers.map((layer) => drawnLayer(layer, spread, draws, draw)),
    plantings: input.plantings.map((planting) => {
      const own = spread.needs[planting.id];
      if (!own) return planting;
      const factor = draws.value(own, draw);
      return {
        ...planting,
        crop: {
          ...planting.crop,
          need: planting.crop.need * factor,
          harvestNitrogen: planting.crop.harvestNitrogen * factor,
        },
      };
    }),
  };
}
