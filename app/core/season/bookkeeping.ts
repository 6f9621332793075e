import { humusNitrogen, microbeNitrogen, residueNitrogen } from '../cover/residueClass';
import type { BedState, SlowMaterial } from './bedState';
import { poolIndex } from './ways';

/** Nitrogen of compost and the like that is neither free nor part of the soil, g N/m2. */
const slowNitrogen = (slow: SlowMaterial): number =>
  slow.topActive + slow.topInert + slow.dugActive + slow.topQuick + slow.dugQuick;

/**
 * Sum of all pools with those held as carbon recomputed **from the carbon**, g N/m2. Comparing it
 * with start + in - out shows a leak in either bookkeeping.
 */
export function nitrogenOnHand(state: BedState): number {
  let sum = 0;
  for (const item of state.classes)
    sum += residueNitrogen(item) + microbeNitrogen(item) + humusNitrogen(item);
  sum += slowNitrogen(state.slow);
  for (const planting of state.plantings) sum += planting.nitrogen;
  for (const pool of [
    'coverFree',
    'soilOrganic',
    'youngHumus',
    'mineralTop',
    'mineralLower',
  ] as const)
    sum += state.nitrogen[poolIndex[pool]]!;
  return sum;
}

/** Largest difference between a pool kept by flows and the same pool from carbon or plants, g N/m2. */
export function bookkeepingDifference(state: BedState): number {
  let cover = 0;
  let dug = 0;
  const carbonPools = { R: [0, 0], B: [0, 0], H: [0, 0] };
  for (const item of state.classes) {
    const side = item.placement === 'laid' ? 0 : 1;
    carbonPools.R[side]! += residueNitrogen(item);
    carbonPools.B[side]! += microbeNitrogen(item);
    carbonPools.H[side]! += humusNitrogen(item);
  }
  const n = state.nitrogen;
  cover = Math.max(
    Math.abs(n[poolIndex.coverResidue]! - carbonPools.R[0]!),
    Math.abs(n[poolIndex.coverMicrobes]! - carbonPools.B[0]!),
    Math.abs(n[poolIndex.coverHumus]! - carbonPools.H[0]!),
  );
  dug = Math.max(
    Math.abs(n[poolIndex.dugResidue]! - carbonPools.R[1]!),
    Math.abs(n[poolIndex.dugMicrobes]! - carbonPools.B[1]!),
    Math.abs(n[poolIndex.dugHumus]! - carbonPools.H[1]!),
  );
  const slow = slowNitrogen(state.slow);
  const plants = state.plantings.reduce((sum, planting) => sum + planting.nitrogen, 0);
  return Math.max(
    cover,
    dug,
    Math.abs(n[poolIndex.slow]! - slow),
    Math.abs(n[poolIndex.crop]! - plants),
  );
}
