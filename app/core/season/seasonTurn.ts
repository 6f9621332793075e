import type { DayNumber } from '../days';
import { classFor } from '../cover/residueClass';
import { reachShare } from '../crop/stages';
import { topDepth } from '../soil/water';
import type { BedState } from './bedState';
import { demandMetOf, needOfSeason, type GrowingPlanting } from './growingPlanting';
import { move, poolIndex, wayOf } from './ways';
import { crownOf } from './crown';
import { ownClock } from './ownCrop';
import { layTops } from './dayPlants';
import { seasonName, type LowerLayer } from './runPlan';

const flow = {
  deeper: wayOf('deeperSoil', 'mineralLower', 'roots reach deeper'),
  lessDeep: wayOf('mineralLower', 'belowRoots', 'roots reach less deep'),
  topsLeft: wayOf('crop', 'coverResidue', 'tops left'),
  clearedAway: wayOf('crop', 'removed', 'cleared away'),
} as const;

/**
 * The lower layer as deep as the new season's roots: nitrate and water change with its depth, so
 * that what stands in a litre of it stays the same (model 6). What it gains or gives up is the soil
 * below, which is no part of the bed's account.
 */
export function turnLowerLayer(state: BedState, flows: Float64Array, layer: LowerLayer): void {
  const { depth, sizes } = layer;
  const grows = depth / state.lowerDepth - 1;
  if (grows === 0) return;
  const held = Math.max(0, state.nitrogen[poolIndex.mineralLower]!);
  if (grows > 0) move(state, flows, flow.deeper, held * grows);
  else move(state, flows, flow.lessDeep, held * -grows);
  // by how full it is: a full layer stays full to the last digit, and drains nothing
  state.water.lower = (state.water.lower / state.sizes.lowerFull) * sizes.lowerFull;
  state.lowerDepth = depth;
  state.sizes = sizes;
  for (const plant of state.plantings)
    plant.fullReach = reachShare(plant.crop.fullRootDepth, topDepth, depth);
}

/**
 * Plants that stay for years die down on a season's first morning, and their clock starts anew. The
 * crown keeps its share of the whole plant's nitrogen, and never less than it had; the tops lie
 * where they stood, or are gone where tops are taken away. What tops draw back into the crown before
 * they die is not reckoned.
 *
 * @param day first day of a season
 */
export function growAgain(state: BedState, flows: Float64Array, day: DayNumber): void {
  for (const plant of state.plantings) {
    const { seasons } = plant.input;
    if (!seasons || plant.done) continue;
    const at = seasons.findIndex((season) => season.seasonDay === day);
    if (at <= plant.season) continue;
    if (plant.standing) dieDown(state, flows, plant, day);
    plant.season = at;
    plant.clock = ownClock(seasons[at]!);
    plant.need = needOfSeason(plant.crop, seasons[at]);
    plant.logsHarvest = state.plan.pickedSeasons.has(seasonName(plant.input.id, at));
    plant.degreeDays = 0;
    plant.progress = 0;
    plant.wanted = 0;
    plant.arrears.length = 0;
  }
}

function dieDown(
  state: BedState,
  flows: Float64Array,
  plant: GrowingPlanting,
  day: DayNumber,
): void {
  const { crop, topsFate, startDay, standsSince } = plant.input;
  const kept = crownOf(plant);
  const tops = plant.nitrogen - kept;
  if (topsFate === 'taken away' || topsFate === 'pulled with roots') {
    move(state, flows, flow.clearedAway, tops);
    plant.removed += tops;
  } else {
    const kind = crop.residueIsGreen ? 'green' : 'mature';
    const cn = crop.residueCarbonToNitrogen;
    const item = classFor(state.classes, 'laid', kind, cn, state.coefficients);
    item.residue += tops * item.parameters.carbonToNitrogen;
    move(state, flows, flow.topsLeft, tops);
    plant.left += tops;
    layTops(state, plant, item, tops, `${plant.input.id} ${day}`);
  }
  plant.nitrogen = kept;
  plant.crown = kept;
  if (state.keepsLayers)
    plant.earlier.push({
      firstDay: Math.max(plant.input.seasons![plant.season]!.seasonDay, standsSince ?? startDay),
      lastDay: day - 1,
      demand: plant.needSoFar,
      uptake: plant.uptake,
      luxury: plant.luxury,
      fixed: plant.fixed,
      demandMet: demandMetOf(plant),
      harvested: plant.harvested,
      removed: plant.harvested + plant.removed,
      left: plant.left,
      kept,
    });
  plant.needSoFar = 0;
  plant.metSoFar = 0;
  plant.harvested = 0;
  plant.removed = 0;
  plant.left = 0;
  plant.fixed = 0;
  plant.uptake = 0;
  plant.luxury = 0;
}
