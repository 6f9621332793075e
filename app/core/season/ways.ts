import { flowIndex, flowKinds, pools, type FlowIndex, type Place, type Pool } from './flows';

export const poolIndex: Readonly<Record<Pool, number>> = Object.fromEntries(
  pools.map((pool, index) => [pool, index]),
) as Record<Pool, number>;

/** Place beside the pools for what comes from and goes to outside; what is in it means nothing. */
const outside = pools.length;
export const isOutside = (pool: number): boolean => pool === outside;

/** A flow and the places of the pools it leaves and enters. */
export interface Way {
  readonly flow: FlowIndex;
  readonly from: number;
  readonly to: number;
}

const poolByName: Readonly<Record<string, number>> = poolIndex;
/** by index of `flowKinds`; a pool that is `isOutside` is none */
export const ways: readonly Way[] = flowKinds.map(({ from, to }, flow) => ({
  flow,
  from: poolByName[from] ?? outside,
  to: poolByName[to] ?? outside,
}));

/** Throws for a flow that is not in the list. */
export const wayOf = (from: Place, to: Place, why: string): Way => ways[flowIndex(from, to, why)]!;

/**
 * A pool that was emptied to the last gram can stand a few rounding errors below nothing, and a
 * share of it then flows backwards by as much: with kilograms of nitrogen on a square metre by some
 * 1e-11. Anything over the line that the balance itself is held to is a mistake of ours.
 */
const roundingGrams = 1e-9;

/**
 * Moves nitrogen: the only way a pool changes. Throws on a negative or unreal amount, because a
 * flow that runs backwards is a mistake of ours, not of the gardener.
 */
export function move(
  { nitrogen }: { readonly nitrogen: Float64Array },
  flows: Float64Array,
  { flow, from, to }: Way,
  gramsPerM2: number,
): void {
  if (!(gramsPerM2 >= -roundingGrams)) runsBackwards(flow, gramsPerM2);
  flows[flow]! += gramsPerM2;
  nitrogen[from]! -= gramsPerM2;
  nitrogen[to]! += gramsPerM2;
}

// by itself, so that `move` stays small enough to be compiled into those who move
function runsBackwards(flow: number, gramsPerM2: number): never {
  throw new Error(`Flow ${flow} of ${gramsPerM2} g/m2`);
}
