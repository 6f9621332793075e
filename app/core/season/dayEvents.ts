import { ammoniaPotential } from '../cover/ammonia';
import {
  classFor,
  humusNitrogen,
  microbeNitrogen,
  residueNitrogen,
  type ResidueClass,
} from '../cover/residueClass';
import { classBelow, joinLeftOvers } from '../cover/leftOver';
import { coverWaterCapacity } from '../cover/wetness';
import { lyingDry, type BedState } from './bedState';
import { move, poolIndex, wayOf } from './ways';
import type { LayerInput } from './input';

const { coverFree } = poolIndex;

const flow = {
  laid: wayOf('applied', 'coverResidue', 'laid on'),
  laidReady: wayOf('applied', 'coverFree', 'ready at laying'),
  dug: wayOf('applied', 'dugResidue', 'dug in'),
  dugReady: wayOf('applied', 'mineralTop', 'ready when dug in'),
  slow: wayOf('applied', 'slow', 'slow material'),
  slowDug: wayOf('applied', 'soilOrganic', 'slow material dug in'),
  digResidue: wayOf('coverResidue', 'dugResidue', 'cover dug in'),
  digMicrobes: wayOf('coverMicrobes', 'dugMicrobes', 'cover dug in'),
  digHumus: wayOf('coverHumus', 'dugHumus', 'cover dug in'),
  digFree: wayOf('coverFree', 'mineralTop', 'cover dug in'),
  digSlow: wayOf('slow', 'soilOrganic', 'compost becomes soil'),
  rakeResidue: wayOf('coverResidue', 'removed', 'raked off'),
  rakeMicrobes: wayOf('coverMicrobes', 'removed', 'raked off'),
  rakeHumus: wayOf('coverHumus', 'removed', 'raked off'),
  rakeFree: wayOf('coverFree', 'removed', 'raked off'),
  rakeSlow: wayOf('slow', 'removed', 'raked off'),
  humusCover: wayOf('coverHumus', 'youngHumus', 'season end'),
  humusDug: wayOf('dugHumus', 'youngHumus', 'season end'),
} as const;

/** Decay class of plant material; chips on top stay `inert` until they are dug in. */
const residueKind = (
  materialClass: ResidueClass['materialClass'],
  placement: LayerInput['placement'],
): ResidueClass['materialClass'] =>
  materialClass === 'inert' && placement !== 'laid' ? 'wood' : materialClass;

/**
 * Compost, manure or meal: a share of its nitrogen is ready, a share comes slowly, and the rest
 * is soil once it is dug in. Of manure left on top, part of what is ready may go to the air.
 */
function laySlow(state: BedState, flows: Float64Array, layer: LayerInput): void {
  const c = state.coefficients;
  const isMeal = layer.slowKind === 'meal';
  const ready = layer.nitrogen * layer.mineralShare;
  const active = layer.nitrogen * layer.slowShare;
  const rest = layer.nitrogen - ready - active;
  if (layer.placement === 'laid') {
    move(state, flows, flow.laidReady, ready);
    move(state, flows, flow.slow, active + rest);
    if (isMeal) state.slow.topQuick += active;
    else state.slow.topActive += active;
    state.slow.topInert += rest;
    if (layer.slowKind === 'manure') state.ammonia.manure += c.manureAmmoniaShare * ready;
  } else {
    move(state, flows, flow.dugReady, ready);
    move(state, flows, flow.slow, active);
    if (isMeal) state.slow.dugQuick += active;
    else state.slow.dugActive += active;
    move(state, flows, flow.slowDug, rest);
  }
}

/** Depth as laid of all of one material of a day [mm]. */
function depthLaid(ordered: readonly LayerInput[], materialId: string): number {
  let depth = 0;
  for (const layer of ordered)
    if (layer.placement === 'laid' && layer.materialId === materialId) depth += layer.laidDepth;
  return depth;
}

/** Lays a day's layers; layers of one material count as one for ammonia. */
export function layLayers(
  state: BedState,
  flows: Float64Array,
  ordered: readonly LayerInput[],
): void {
  const c = state.coefficients;
  let water = 0;
  for (const layer of ordered) {
    let item: ResidueClass | null = null;
    if (layer.materialClass === 'slow') laySlow(state, flows, layer);
    else if (layer.nitrogen > 0) {
      item = classFor(
        state.classes,
        layer.placement,
        residueKind(layer.materialClass, layer.placement),
        layer.carbon / layer.nitrogen,
        c,
      );
      item.residue += layer.nitrogen * item.parameters.carbonToNitrogen;
      move(state, flows, layer.placement === 'laid' ? flow.laid : flow.dug, layer.nitrogen);
    }
    if (layer.placement !== 'laid') continue;
    if (layer.condition === 'just cut') water += Math.max(0, layer.freshKgPerM2 - layer.dryKgPerM2);
    if (layer.materialClass !== 'slow')
      state.ammonia.unripe +=
        layer.nitrogen *
        ammoniaPotential(
          layer.dryKgPerM2 > 0 ? layer.nitrogen / layer.dryKgPerM2 : 0,
          layer.condition,
          depthLaid(ordered, layer.materialId),
          c,
        );
    if (item) item.lyingDry += layer.dryKgPerM2;
    else state.slow.lyingDry += layer.dryKgPerM2;
    if (!state.keepsLayers) continue;
    const laidDensity = layer.laidDepth > 0 ? (1000 * layer.dryKgPerM2) / layer.laidDepth : 0;
    state.layers.push({
      id: layer.id,
      item,
      dryKgPerM2: layer.dryKgPerM2,
      laidDensity,
      settledDensity: Math.max(layer.settledDensityKgPerM3, laidDensity),
      left: 1,
      settled: 0,
    });
  }
  const capacity = coverWaterCapacity(lyingDry(state), c);
  state.water.cover += Math.min(water, Math.max(0, capacity - state.water.cover));
}

/** Digs a share of the cover in: residue, microbes, humus and free nitrogen go with it. */
export function digCoverIn(state: BedState, flows: Float64Array, share: number): void {
  for (const item of state.classes.filter((one) => one.placement === 'laid')) {
    const below = classBelow(state.classes, item, state.coefficients);
    // Wood that starts to rot below gets the microbe ratio of its new class only for what is eaten
    // from now on; lying inert it has no microbes yet, so nothing changes hands at another ratio.
    move(state, flows, flow.digResidue, share * residueNitrogen(item));
    move(state, flows, flow.digMicrobes, share * microbeNitrogen(item));
    move(state, flows, flow.digHumus, share * humusNitrogen(item));
    below.residue += share * item.residue;
    below.microbes += share * item.microbes;
    below.humus += share * item.humus;
    item.residue *= 1 - share;
    item.microbes *= 1 - share;
    item.humus *= 1 - share;
  }
  move(state, flows, flow.digFree, share * Math.max(0, state.nitrogen[coverFree]!));
  const inert = share * state.slow.topInert;
  move(state, flows, flow.digSlow, inert);
  state.slow.topInert -= inert;
  state.slow.dugActive += share * state.slow.topActive;
  state.slow.topActive *= 1 - share;
  state.slow.dugQuick += share * state.slow.topQuick;
  state.slow.topQuick *= 1 - share;
  shrinkCover(state, 1 - share);
}

/** Takes off a share of what is lying, with the same share of free nitrogen and ammonia promises. */
export function rakeOff(state: BedState, flows: Float64Array, share: number): void {
  const small = state.coefficients.lyingShareOfMicrobesAndHumus;
  for (const item of state.classes.filter((one) => one.placement === 'laid')) {
    move(state, flows, flow.rakeResidue, share * residueNitrogen(item));
    move(state, flows, flow.rakeMicrobes, share * small * microbeNitrogen(item));
    move(state, flows, flow.rakeHumus, share * small * humusNitrogen(item));
    item.residue *= 1 - share;
    item.microbes *= 1 - share * small;
    item.humus *= 1 - share * small;
  }
  move(state, flows, flow.rakeFree, share * Math.max(0, state.nitrogen[coverFree]!));
  const { topActive, topInert, topQuick } = state.slow;
  move(state, flows, flow.rakeSlow, share * (topActive + topInert + topQuick));
  state.slow.topActive *= 1 - share;
  state.slow.topQuick *= 1 - share;
  state.slow.topInert *= 1 - share;
  // Microbes and humus that stay were on the soil, not in what was lying: of that, 1 - share is left.
  shrinkCover(state, 1 - share);
}

function shrinkCover(state: BedState, factor: number): void {
  state.ammonia.unripe *= factor;
  state.ammonia.ripe *= factor;
  state.ammonia.manure *= factor;
  state.water.cover *= factor;
  for (const item of state.classes) item.lyingDry *= factor;
  state.slow.lyingDry *= factor;
  for (const layer of state.layers) layer.left *= factor;
}

/**
 * At a season's first morning humus becomes last year's humus, and spent compost becomes soil (model
 * 3); what is left of the classes goes on as one of each placement and kind.
 */
export function turnSeason(state: BedState, flows: Float64Array): void {
  for (const item of state.classes) {
    move(
      state,
      flows,
      item.placement === 'laid' ? flow.humusCover : flow.humusDug,
      humusNitrogen(item),
    );
    item.humus = 0;
  }
  const now = joinLeftOvers(state.classes, state.coefficients);
  for (const layer of state.layers) if (layer.item) layer.item = now.get(layer.item) ?? layer.item;
  move(state, flows, flow.digSlow, state.slow.topInert);
  state.slow.topInert = 0;
}
