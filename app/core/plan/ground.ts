/**
 * Bare ground by dry matter lying, exp(-k D), as a chain of straight pieces between points of the
 * curve. The curve is convex, so the chain lies on or above it and the first kilogram buys most.
 */
export interface GroundPiece {
  /** [kg/m2] */
  readonly width: number;
  /** share of ground hidden by each kg/m2 */
  readonly slope: number;
}

/** Shares of bare ground between which the curve is taken as straight; the last is as good as none. */
const bareShares = [1, 0.85, 0.7, 0.55, 0.4, 0.28, 0.18, 0.1, 0.05, 0.02, 0.005] as const;

/**
 * The pieces from what lies already upwards.
 *
 * @param dryKgPerM2 lying without the plan
 * @param perKilogram k of the curve [m2/kg]
 * @returns `bare` now, exactly, and pieces of falling slope
 * @source the engine's own curve of ground hidden (`coverFraction`)
 */
export function groundPieces(
  dryKgPerM2: number,
  perKilogram: number,
): { readonly bare: number; readonly pieces: readonly GroundPiece[] } {
  const bare = Math.exp(-perKilogram * dryKgPerM2);
  const points = [bare, ...bareShares.filter((share) => share < bare - 1e-9)];
  const pieces = points.slice(1).map((share, at): GroundPiece => {
    const above = points[at]!;
    const width = Math.log(above / share) / perKilogram;
    return { width, slope: (above - share) / width };
  });
  return { bare, pieces };
}

/** Share of bare ground by the chain, so much dry matter more. */
export function bareAfter(
  { bare, pieces }: ReturnType<typeof groundPieces>,
  moreKgPerM2: number,
): number {
  let left = Math.max(0, moreKgPerM2);
  let share = bare;
  for (const { width, slope } of pieces) {
    const used = Math.min(left, width);
    share -= used * slope;
    left -= used;
  }
  return share;
}
