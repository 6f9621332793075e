import type { Coefficients } from '../season/coefficients';
import type { SoilProperties } from '../season/input';
import { adjustedDepletionShare, waterStress } from './evapotranspiration';

/** Depth of the upper layer [mm]; every nitrate number of the program is of this layer. */
export const topDepth = 300;

/** Water held by the two layers and the cover [mm]; changed in place by the day. */
export interface WaterStore {
  top: number;
  lower: number;
  cover: number;
}

/** What the plants on the bed ask of the water today, shares already weighted. */
export interface CanopyDay {
  /** transpiration coefficient, Kc less its evaporation part, summed by share */
  readonly transpiration: number;
  /** evaporation coefficient of the bed */
  readonly evaporation: number;
  /** something grows here: only then is a bed kept moist */
  readonly isPlanted: boolean;
  /** share of the ground shaded by leaves 0-1 */
  readonly canopy: number;
  /** share of the lower layer that roots reach 0-1 */
  readonly reach: number;
  /** FAO-56 p of the plants, weighted; 0.5 on bare ground */
  readonly depletionShare: number;
}

/** What of a day's water the soil does not decide. */
export interface WaterAsked {
  /** [mm], as is all below */
  rain: number;
  /** watering the gardener wrote down */
  logged: number;
  /** ET0 */
  evapotranspiration: number;
  coverCapacity: number;
  /** share of the ground hidden by a cover 0-1 */
  coverFraction: number;
}

export interface WaterDay {
  watered: number;
  throughfall: number;
  /** water in the cover, mean over the day [mm] */
  coverMean: number;
  drainageTop: number;
  drainageLower: number;
  /** root-zone depletion / readily available water, after the day */
  dryness: number;
  /** what the soil gave to the air, and what the cover did; plants left out */
  fromSoil: number;
  fromCover: number;
  /** root-zone depletion and readily available water, after the day */
  depletion: number;
  readily: number;
}

const newWaterDay = (): WaterDay => ({
  watered: 0,
  throughfall: 0,
  coverMean: 0,
  drainageTop: 0,
  drainageLower: 0,
  dryness: 0,
  fromSoil: 0,
  fromCover: 0,
  depletion: 0,
  readily: 0,
});

export interface WaterSizes {
  readonly topFull: number;
  readonly topWilt: number;
  readonly lowerFull: number;
  readonly lowerWilt: number;
}

export function waterSizes(soil: SoilProperties, lowerDepth: number): WaterSizes {
  return {
    topFull: soil.fieldCapacity * topDepth,
    topWilt: soil.wiltingPoint * topDepth,
    lowerFull: soil.fieldCapacity * lowerDepth,
    lowerWilt: soil.wiltingPoint * lowerDepth,
  };
}

/** Plant-available water of the top layer as a share of the most it holds, 0-1. */
export const availableShare = (water: WaterStore, sizes: WaterSizes): number =>
  Math.min(1, Math.max(0, (water.top - sizes.topWilt) / (sizes.topFull - sizes.topWilt)));

/** The same of the lower layer. */
export const availableLowerShare = (water: WaterStore, sizes: WaterSizes): number =>
  Math.min(1, Math.max(0, (water.lower - sizes.lowerWilt) / (sizes.lowerFull - sizes.lowerWilt)));

/**
 * Mean over a day of a bucket that is soaked in the morning and dries evenly, to its end or until it
 * is empty: most covers are dry in the evening of a summer's day, and were not all day.
 *
 *     e <= w: w - e/2       e > w: w^2 / (2 e)
 *
 * @param water w, with the day's rain and watering [mm]
 * @param drying e, what the air asks of it in the day [mm]
 * @source ours (derived): the integral of max(0, w - e t) over t from 0 to 1
 */
export const meanOfDrying = (water: number, drying: number): number =>
  drying > water ? (water * water) / (2 * drying) : water - drying / 2;

/**
 * One day of water. Rain and watering fill the cover before the soil; evaporation and
 * transpiration are taken before the surplus drains (FAO-56 eq. 88; its Example 38 drains first).
 *
 * Soil evaporation slows and stops as the surface dries (FAO-56 eq. 71-74 with Ze 0.10 m); its
 * depletion is taken as that of the whole top layer, which is assumed. Transpiration is shared by
 * the water each layer holds, the lower one at half weight.
 *
 * @param keptMoist refill to half of the readily available water when more than that is gone and
 *   the day brought less than 5 mm of rain
 * @param into where the day is written; a new place unless given
 */
export function waterDay(
  water: WaterStore,
  sizes: WaterSizes,
  soil: SoilProperties,
  plants: CanopyDay,
  asked: WaterAsked,
  keptMoist: boolean,
  c: Coefficients,
  into: WaterDay = newWaterDay(),
): WaterDay {
  const { rain, logged, evapotranspiration, coverCapacity, coverFraction } = asked;
  const { reach } = plants;
  const { topFull, topWilt, lowerFull, lowerWilt } = sizes;
  let { top, lower, cover } = water;
  const demand = plants.transpiration * evapotranspiration;
  const share = adjustedDepletionShare(
    plants.depletionShare,
    demand + plants.evaporation * evapotranspiration,
  );
  const zone = topFull - topWilt + reach * (lowerFull - lowerWilt);
  const readily = share * zone;
  // What the gardener wrote down counts first: nobody waters twice.
  const missing = topFull - top + reach * (lowerFull - lower) - logged;
  const refill =
    keptMoist && plants.isPlanted && rain < 5 && missing > readily ? missing - readily / 2 : 0;
  const watered = logged + refill;

  // The cover drinks first, then gives to the air.
  const caught = Math.min(Math.max(0, coverCapacity - cover), rain + watered);
  cover += caught;
  const throughfall = rain + watered - caught;
  const coverDrying = evapotranspiration * coverFraction * (1 - plants.canopy);
  const coverEvaporation = Math.min(cover, coverDrying);
  into.coverMean = meanOfDrying(cover, coverDrying);
  cover -= coverEvaporation;
  // A cover that shrank holds less than it did: what is over runs into the soil.
  const spilled = Math.max(0, cover - coverCapacity);
  cover -= spilled;
  const intoSoil = throughfall + spilled;

  const evaporable = 1000 * (soil.fieldCapacity - 0.5 * soil.wiltingPoint) * c.evaporationDepth;
  const readilyEvaporable = c.readilyEvaporableShare * evaporable;
  const surfaceDepletion = Math.max(0, topFull - top - intoSoil);
  const drying = Math.min(
    1,
    Math.max(0, (evaporable - surfaceDepletion) / (evaporable - readilyEvaporable)),
  );
  const evaporation =
    drying *
    Math.max(
      0,
      plants.evaporation * evapotranspiration * (1 - c.coverEvaporationSaving * coverFraction) -
        coverEvaporation,
    );
  const fromSoil = Math.min(evaporation, Math.max(0, top + intoSoil - topWilt));
  top += intoSoil - fromSoil;

  const stress = waterStress(Math.max(0, topFull - top + reach * (lowerFull - lower)), zone, share);
  const topHeld = Math.max(0, top - topWilt);
  const lowerHeld = Math.max(0, lower - lowerWilt) * reach;
  const weighted = topHeld + c.lowerLayerUptakeWeight * lowerHeld;
  if (weighted > 0) {
    const transpiration = demand * stress;
    top -= Math.min(topHeld, (transpiration * topHeld) / weighted);
    lower -= Math.min(lowerHeld, (transpiration * c.lowerLayerUptakeWeight * lowerHeld) / weighted);
  }

  const drainageTop = Math.max(0, top - topFull);
  top -= drainageTop;
  lower += drainageTop;
  const drainageLower = Math.max(0, lower - lowerFull);
  lower -= drainageLower;
  water.top = top;
  water.lower = lower;
  water.cover = cover;
  into.watered = watered;
  into.throughfall = intoSoil;
  into.drainageTop = drainageTop;
  into.drainageLower = drainageLower;
  into.fromSoil = fromSoil;
  into.fromCover = coverEvaporation;
  into.depletion = Math.max(0, topFull - top + reach * (lowerFull - lower));
  into.readily = readily;
  into.dryness = readily > 0 ? into.depletion / readily : 0;
  return into;
}
