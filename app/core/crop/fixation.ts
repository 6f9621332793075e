import type { CropInput, LegumeInput } from '../season/input';

/**
 * How much of its usual fixation a legume's age allows, 0 before the nodules work, 1 to mid pod
 * fill, then falling to 0 at the usual end. Crops picked over weeks always hold pods that fill, so
 * "mid pod fill" is taken as half of the picking left.
 *
 * @param age days since sowing
 * @param progress 0-1 of the crop's clock
 * @source onset Nebraska extension (up to six weeks); the fall is model section 8, its shape assumed
 */
export function fixationStage(
  legume: LegumeInput,
  crop: CropInput,
  age: number,
  progress: number,
): number {
  if (age < legume.nodulationDays) return 0;
  const firstPick = Math.min(0.95, crop.firstHarvestDays / crop.usualDays);
  const middle = (1 + firstPick) / 2;
  if (progress <= middle) return 1;
  return Math.max(0, (1 - progress) / (1 - middle));
}

/** Days to the first pods: midway from first flower to first pick (assumed). */
const podsBegin = (crop: CropInput): number =>
  crop.flowerDays === null ? crop.firstHarvestDays : (crop.flowerDays + crop.firstHarvestDays) / 2;

/**
 * Factor on fixation by nitrate in the top 30 cm, 1 - nitrate/limit, not below 0.
 *
 * @param mineralTop nitrate-N [g/m2]
 * @source Voisin et al. 2002 (pea); for beans x 1.2 (0.8-2.3), borrowed
 */
export function nitrateSuppression(
  legume: LegumeInput,
  crop: CropInput,
  mineralTop: number,
  progress: number,
): number {
  const podding = progress >= podsBegin(crop) / crop.usualDays;
  const limit = podding ? legume.poddingLimit : legume.leafyLimit;
  return Math.max(0, 1 - mineralTop / limit);
}
