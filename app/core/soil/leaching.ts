/**
 * Share of a well-mixed layer's nitrate that a day's drainage carries out of it.
 *
 *     1 - exp(-D / (theta_FC Z))
 *
 * @param drainage D [mm]
 * @param waterAtFieldCapacity theta_FC Z, all the water the layer holds once drained [mm]
 * @returns 0-1, exactly 0 without drainage
 * @source form after Scotter, White & Dyson 1993; `burnsShare` checks it by Burns 1975
 */
export const leachedShare = (drainage: number, waterAtFieldCapacity: number): number =>
  drainage > 0 ? -Math.expm1(-drainage / waterAtFieldCapacity) : 0;

/**
 * Burns' leached share of nitrate lying at the top of a depth, (P/(P + Vm/100))^h.
 *
 * @param drainageCentimetres P
 * @param fieldCapacityPercent Vm, per cent by volume
 * @param depthCentimetres h; half the layer for nitrogen spread through it
 * @source Burns 1975 (form recalled, definitions read)
 */
export const burnsShare = (
  drainageCentimetres: number,
  fieldCapacityPercent: number,
  depthCentimetres: number,
): number =>
  Math.pow(
    drainageCentimetres / (drainageCentimetres + fieldCapacityPercent / 100),
    depthCentimetres,
  );
